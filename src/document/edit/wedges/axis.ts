// Bending the axis of a wedge, level by level, and slanting that of a closed dart, which is straight from point to point.

import {
  axisX,
  type Block,
  type DartEnd,
  type Draft,
  type DraftedWedge,
  halfOpenAt,
  type LevelName,
  type Style,
  stationOf,
  type Wedge,
  xAt,
} from '../../../engine';
import { changeWedge } from './wedgeLists';

/** Takes every bend out of an axis: one station for all levels again. */
export function straighten(style: Style, id: string): Style {
  return changeWedge(style, id, ({ fromCentre: _, ...wedge }) => ({ ...wedge, stationAt: {} }));
}

/** Takes the bend at one level out. */
export function straightenAt(style: Style, id: string, level: keyof Wedge['stationAt']): Style {
  return changeWedge(style, id, (wedge) => {
    const { [level]: _, ...stationAt } = wedge.stationAt;
    const { fromCentre: __, ...follows } = wedge;
    return { ...follows, stationAt };
  });
}

/**
 * Keeps the axis of a wedge where it was put by hand, whatever else changes: at each level its distance from the body's centre as
 * drafted, moved by `by`, mm. At a single level where one is given.
 *
 * @param drafted the wedge and the block as they were drafted before it was put there
 */
export function keepAxis(
  style: Style,
  {
    wedge,
    block,
    levels,
  }: { readonly wedge: DraftedWedge; readonly block: Block; readonly levels: Draft['levels'] },
  by: number,
  only: LevelName | null = null,
): Style {
  const open = halfOpenAt(block.name, style.closure);
  const places = levels.map(({ name, y }) => [
    name,
    open + xAt(wedge.axis, y) + (only === null || only === name ? by : 0),
  ]);
  return changeWedge(style, wedge.id, (asked) =>
    asked.station <= -1 ? asked : { ...asked, fromCentre: Object.fromEntries(places) },
  );
}

/** Nearer than this to where it was asked to be a point is there: below what a length field takes for another length. mm */
const THERE_MM = 1e-10;
const MOST_ROUNDS = 12;

/**
 * Moves one point of a closed dart across to `x`, mm from the centre line; the other one stays. The stations of the levels on
 * that point's half of the dart are shifted. How far the point follows hangs on the levels beside it, so the style is
 * drafted again a few times. Where the dart would then end at another height, nothing is moved.
 */
export function slantDart(
  style: Style,
  id: string,
  end: DartEnd,
  x: number,
  redraft: (style: Style) => Draft,
): Style {
  const before = redraft(style);
  const from = pointX(before, id, end);
  if (from === null) return style;
  let [by, slanted] = [x - from, style];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    slanted = shifted(style, id, end, by, before);
    const redrafted = redraft(slanted);
    // So far across the dart would have no room to its point, and end elsewhere.
    if (pointY(redrafted, id, end) !== pointY(before, id, end)) return style;
    const now = pointX(redrafted, id, end);
    if (now === null || Math.abs(x - now) < THERE_MM || Math.abs(now - from) < THERE_MM) break;
    by *= (x - from) / (now - from);
  }
  return slanted;
}

const pointY = ({ blocks }: Draft, id: string, end: DartEnd): number | null =>
  draftedWedges(blocks).find((wedge) => wedge.id === id)?.extent[end] ?? null;

/** Where a dart's point stands, mm from its block's centre line; null where it has none. */
export function pointX({ blocks }: Draft, id: string, end: DartEnd): number | null {
  const drafted = draftedWedges(blocks).find((wedge) => wedge.id === id);
  const y = drafted?.extent[end] ?? null;
  return drafted && y !== null ? xAt(drafted.axis, y) : null;
}

/** An axis stays this far off the centre line and the side seam, mm. */
const CLEAR_MM = 10;

function shifted(style: Style, id: string, end: DartEnd, by: number, { blocks, levels }: Draft): Style {
  return changeWedge(style, id, (wedge) => {
    const block = blocks?.[wedge.block];
    const drafted = block?.wedges.find((each) => each.id === id);
    const { upper, lower } = drafted?.extent ?? {};
    if (!block || !drafted || typeof upper !== 'number' || typeof lower !== 'number') return wedge;
    const middle = (upper + lower) / 2;
    const own = levels.filter(({ y }) => (end === 'upper' ? y <= middle : y > middle));
    const moved = own.map(({ name }) => {
      const width = block.width.get(name) ?? 0;
      const isPut = wedge.stationAt[name] !== undefined || wedge.fromCentre?.[name] !== undefined;
      const put = axisX(wedge, name, block.bustLine, width, halfOpenAt(block.name, style.closure));
      const x = (isPut ? put : (drafted.unbent.get(name) ?? put)) + by;
      const kept = Math.min(width - CLEAR_MM, Math.max(CLEAR_MM, x));
      return [name, stationOf(kept, block.bustLine, width)];
    });
    const { fromCentre: _, ...follows } = wedge;
    return { ...follows, stationAt: { ...wedge.stationAt, ...Object.fromEntries(moved) } };
  });
}

const draftedWedges = (blocks: Draft['blocks']): Block['wedges'] =>
  blocks ? [...blocks.front.wedges, ...blocks.back.wedges] : [];
