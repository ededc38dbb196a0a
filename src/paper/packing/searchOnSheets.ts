// Searches for a layout on fewer sheets: outlines are laid into a rectangle of sheets, turned by quarter turns where they may be,
// and moved until none overlaps another.

import { type Point, signedArea } from '../../engine';
import { layWithin } from '../cloth/layWithin';
import { layShape } from '../cloth/pairs/layShape';
import { roomAround } from '../cloth/roomAround';
import { type Place, type StripItem, shapeOf, strip } from '../cloth/strip';
import { ringAround } from '../geometry/box';
import { type Grid, gridFor, stepAcross, stepDown } from '../sheets/grid';
import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { GAP_MM } from './arrange';
import { type Outline, type OutlineWays, type Placement, placedAt } from './placements';
import { costOfPlan, RIM_MM, type SheetPlan, sheetsOfCost, trimmed } from './sheetPlan';

type Orientation = Exclude<PaperChoice['orientation'], 'fewest'>;

/** The layout with the fewest sheets that is found below `most`; null where none is found. Same input, same layout. */
export function searchOnSheets(
  outlines: readonly OutlineWays[],
  page: UprightPage,
  orientations: readonly Orientation[],
  most: number,
): SheetPlan | null {
  if (outlines.length < 2 || outlines.length > MOST_SEARCHED) return null;
  const rooms = roomsOf(outlines);
  let passes = MOST_PASSES;
  let best: SheetPlan | null = null;
  for (let sheets = most - 1; sheets > 0 && passes > 0; sheets -= 1) {
    let found: SheetPlan | null = null;
    for (const grid of gridsOf(sheets, page, orientations, rooms.areaMm2)) {
      if (passes <= 0) break;
      passes -= PASSES;
      const places = rooms.within(grid);
      if (!places) continue;
      const plan = trimmed({ grid, placements: places.map(rooms.placed) }, outlines);
      if (sheetsOfCost(costOfPlan(plan, outlines)) > sheets) continue;
      found = plan;
      break;
    }
    if (!found) break;
    best = found;
  }
  return best;
}

/** With more outlines than this the search takes too long. */
export const MOST_SEARCHED = 16;

/** Passes over the outlines for one rectangle of sheets, and for all of them. */
const [PASSES, MOST_PASSES] = [160, 1600];

/** Rows of places across the sheets lie so far apart. mm */
const ROW_MM = 3;

/** Depths are told apart by cells of so many rows. */
const ROWS_PER_CELL = 4;

/** The greatest share of a rectangle that the outlines with their gaps may fill. The most that was found was 0.87. */
const FULLEST = 0.87;

/** Rectangles of so many sheets that may hold the area, the squarest first: long rows of sheets are hard to join. */
function gridsOf(
  sheets: number,
  page: UprightPage,
  orientations: readonly Orientation[],
  areaMm2: number,
): Grid[] {
  const grids: Grid[] = [];
  for (const orientation of orientations)
    for (let columns = 1; columns <= sheets; columns += 1) {
      if (sheets % columns !== 0) continue;
      const grid = { ...gridFor(page, orientation, 1, 1), columns, rows: sheets / columns };
      const { width, height } = sizeOf(grid);
      if (areaMm2 <= FULLEST * width * height) grids.push(grid);
    }
  const longness = (grid: Grid): number => {
    const { width, height } = sizeOf(grid);
    return Math.max(width / height, height / width);
  };
  return grids.sort((a, b) => longness(a) - longness(b));
}

const sizeOf = (grid: Grid): { readonly width: number; readonly height: number } => ({
  width: grid.columns * stepAcross(grid) + grid.overlapMm,
  height: grid.rows * stepDown(grid) + grid.overlapMm,
});

/** The outlines with half of the gap around each, which may reach over the rim of the sheets. */
function roomsOf(outlines: readonly OutlineWays[]) {
  const room = GAP_MM / 2;
  const ways: { readonly outline: Outline; readonly ring: readonly Point[] }[] = [];
  const items = outlines.map((each): StripItem => {
    const first = ways.length;
    for (const outline of each)
      ways.push({ outline, ring: roomAround(outline.ring, room) ?? ringAround(outline.ring, room) });
    return { ways: each.map((_, n) => first + n), row: null };
  });
  // Along the strip is down the plan.
  const shapes = ways.map(({ ring }) => layShape(ring.map(({ x, y }) => ({ x: y, y: x }))));
  const laid = strip(shapes, items, 0, { height: ROW_MM, perCell: ROWS_PER_CELL });
  const edge = RIM_MM - room;
  return {
    areaMm2: items.reduce((sum, { ways: [way = 0] }) => sum + Math.abs(signedArea(ways[way]?.ring ?? [])), 0),
    within: (grid: Grid): readonly Place[] | null => {
      const { width, height } = sizeOf(grid);
      return layWithin({ ...laid, width: width - 2 * edge }, height - 2 * edge, PASSES);
    },
    placed: ({ shape, row, x }: Place): Placement =>
      placedAt((ways[shape] as { readonly outline: Outline }).outline, {
        x: edge + row * ROW_MM + shapeOf(laid, shape).inset + room,
        y: edge + x + room,
      }),
  };
}
