// Makes the piece of a trued panel: its edges, cut line, grain and marks.

import type { Level } from '../block/lines/levels';
import { at, last } from '../geometry/lists';
import { cutLineTurnedUp } from '../geometry/offset/cutLine';
import type { Point } from '../geometry/point';
import { heightSpan, ringThrough } from '../geometry/polyline';
import { xAt } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import { type SeamEdge, seamEdgeOf } from '../panels/seamEdge';
import type { TruedEdge } from '../panels/truing';
import { dartLines, drillMarks } from './dartMarks';
import { edgeIndex } from './edgeLookup';
import { isDartLegs, type Outline } from './edgeRow';
import { grainOf } from './grain';
import type { TruedPanel } from './outline';
import type { Edge, Mark, Piece } from './piece';
import { type PanelEdges, placeOf } from './pieceEdges';

/**
 * Makes the piece of a trued panel. Null when its ends leave no closed, simple outline (a garment shorter than its
 * edges swing). `isValid` is false when the cut line had to be left on the sew line, `turnsUp` when a hem that is to be turned
 * up cannot lie on the seam allowances.
 *
 * @param edges of its outline, each with its mate
 * @param toCut null for a piece that is cut later: its sew line stands for its cut line
 */
export function makePiece(
  trued: TruedPanel,
  outline: Outline,
  edges: readonly Edge[],
  toCut: PanelEdges['toCut'] | null,
  levels: readonly Level[],
  waist: number,
  onFold: boolean,
): { piece: Piece; isValid: boolean; turnsUp: boolean } | null {
  const { panel, inner, outer } = trued;
  if (!isSimple(panel, inner.trued, outer.trued, pointsOf(outline.top), pointsOf(outline.hem))) return null;
  const ring = ringThrough(edges);
  const { line: cutLine, turnsUp } = toCut ? cutLineTurnedUp(toCut) : { line: ring, turnsUp: true };
  const piece: Piece = {
    id: panel.id,
    kind: panel.kind,
    block: panel.block,
    number: panel.number,
    side: panel.side,
    cut: { count: onFold ? 1 : 2, onFold },
    edges,
    darts: dartLines(panel, outline),
    cutLine: cutLine ?? ring,
    grain: grainOf(panel, inner.trued, outer.trued, waist, ring),
    marks: [
      ...(onFold ? [] : marksOn(seamEdgeOf(panel, 'inner'), inner.trued, edges)),
      ...marksOn(seamEdgeOf(panel, 'outer'), outer.trued, edges),
      ...trued.darts.flatMap(({ seam, a, b }) => [
        ...marksOn(seam.a, a, edges),
        ...(seam.b && b ? marksOn(seam.b, b, edges) : []),
      ]),
      ...partingMarks(edges),
      ...drillMarks(panel, levels),
    ],
  };
  return { piece, isValid: cutLine !== null, turnsUp };
}

function pointsOf(rows: Outline['top']): Point[] {
  const points: Point[] = [];
  for (const row of rows) if (!isDartLegs(row)) points.push(...row.points);
  return points;
}

function marksOn(seamEdge: SeamEdge, { marks }: TruedEdge, edges: readonly Edge[]): Mark[] {
  const edge = edgeIndex(edges, placeOf(seamEdge));
  return marks.map(({ level, y }) => ({ kind: 'balance', level, at: { x: xAt(seamEdge.line, y), y }, edge }));
}

/** A mark where two panels of the other block meet at this one's shoulder line. */
const partingMarks = (edges: readonly Edge[]): Mark[] =>
  edges.flatMap(({ role, points }, edge): Mark[] =>
    role === 'shoulder' && edges[edge + 1]?.role === 'shoulder'
      ? [{ kind: 'balance', level: null, at: last(points), edge }]
      : [],
  );

/** The legs never cross (the panel was made), so only a top edge or hem that swings too far can spoil the outline. */
function isSimple(
  panel: Panel,
  inner: TruedEdge,
  outer: TruedEdge,
  top: readonly Point[],
  hem: readonly Point[],
): boolean {
  if (!liesAbove(top, hem)) return false;
  const within = (
    points: readonly Point[],
    innerReached: (y: number) => boolean,
    outerReached: (y: number) => boolean,
  ) =>
    points
      .slice(1, -1)
      .every(
        ({ x, y }) =>
          (!innerReached(y) || x > xAt(panel.inner, y)) && (!outerReached(y) || x < xAt(panel.outer, y)),
      );
  return (
    within(
      top,
      (y) => y > inner.top.y,
      (y) => y > outer.top.y,
    ) &&
    within(
      hem,
      (y) => y < inner.hem.y,
      (y) => y < outer.hem.y,
    )
  );
}

/** Whether one row of points, from the inner to the outer leg, lies above another over the width that both have. */
function liesAbove(upper: readonly Point[], lower: readonly Point[]): boolean {
  if (heightSpan(upper).most < heightSpan(lower).least) return true;
  return (
    upper.every(({ x, y }) => y < (heightOver(lower, x) ?? Number.POSITIVE_INFINITY)) &&
    lower.every(({ x, y }) => y > (heightOver(upper, x) ?? Number.NEGATIVE_INFINITY))
  );
}

/** Height of a row of points at `x`; null beyond its ends. */
function heightOver(points: readonly Point[], x: number): number | null {
  for (let i = 1; i < points.length; i += 1) {
    const a = at(points, i - 1);
    const b = at(points, i);
    if (x >= a.x && x <= b.x) return b.x === a.x ? a.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
  }
  return null;
}
