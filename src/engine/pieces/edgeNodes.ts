// The places of the nodes of top edge and hem on the edges of the finished panels, where a user pulls them.

import type { DraftedEdge } from '../edges/edgeLine';
import { at, first, last } from '../geometry/lists';
import { between, type Point } from '../geometry/point';
import { xAt } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import type { EdgeNodeName } from '../style/style';
import type { BlockName } from '../terms/names';
import { type EdgeRow, isDartLegs, type Outline } from './edgeRow';

/** A node of an edge on the flat block. */
export interface EdgeNodePlace {
  readonly edge: 'top' | 'hem';
  readonly name: EdgeNodeName;
  readonly block: BlockName;
  readonly at: Point;
}

/** A panel with the outline that was made of it. */
export interface OutlinedPanel {
  readonly panel: Panel;
  readonly outline: Outline;
}

/**
 * The nodes of an edge on the panels, from the centre line of each block; the underarm is given on the front. A node on a
 * panel that was not made, or taken out by a wedge, stands where it was drafted, wedges sewn up.
 */
export function nodesOf(
  edge: 'top' | 'hem',
  drafted: DraftedEdge,
  made: readonly OutlinedPanel[],
): EdgeNodePlace[] {
  return (['front', 'back'] as const).flatMap((block) =>
    drafted.nodes[block]
      .filter(({ name }) => block === 'front' || name !== 'underarm')
      .map(({ name, at, y }) => ({
        edge,
        name,
        block,
        at: placeOn(edge, block, at, drafted.whole, made) ?? { x: at, y },
      })),
  );
}

/** A node at a wedge stands between its two legs. */
function placeOn(
  edge: 'top' | 'hem',
  block: BlockName,
  at: number,
  whole: number,
  made: readonly OutlinedPanel[],
): Point | null {
  const places: Point[] = [];
  for (const { panel, outline } of made) {
    if (panel.block !== block && panel.kind !== 'sidePanel') continue;
    // A joined side panel lies on the front and counts from there.
    const counted = panel.block === block ? at : whole - at;
    for (const row of outline[edge]) {
      if (isDartLegs(row) || !row.sewnDistance) continue;
      const [from, to] = row.sewnDistance;
      if (counted < from - ROUNDING_MM || counted > to + ROUNDING_MM) continue;
      const place = to > from ? alongRow(row.points, (counted - from) / (to - from)) : metBy(row);
      places.push(onBlock(panel, block, place));
    }
  }
  const inner = places[0];
  const outer = places.at(-1);
  return inner && outer ? between(inner, outer, 0.5) : null;
}

const ROUNDING_MM = 1e-6;

/** A place of a panel on a block it was drafted on: a joined side panel was moved from both, each height by itself. */
function onBlock({ kind, inner, outer, drafted }: Panel, block: BlockName, { x, y }: Point): Point {
  if (kind !== 'sidePanel') return { x, y };
  return block === 'front'
    ? { x: xAt(drafted.inner.line, y) + x - xAt(inner, y), y }
    : { x: xAt(drafted.outer.line, y) + xAt(outer, y) - x, y };
}

/** Where a neckline or an armhole meets the edge as drafted: at the centre, at the underarm. */
const metBy = ({ role, points }: EdgeRow): Point => (role === 'armhole' ? last(points) : first(points));

/** The point of a row at a part of its width. */
function alongRow(points: readonly Point[], part: number): Point {
  const from = first(points);
  const to = last(points);
  const x = from.x + part * (to.x - from.x);
  for (let i = 1; i < points.length; i += 1) {
    const a = at(points, i - 1);
    const b = at(points, i);
    if (x <= b.x && b.x > a.x) return { x, y: a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) };
  }
  return to;
}
