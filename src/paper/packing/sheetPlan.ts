// A layout of outlines on the sheets of a grid, and what it costs.

import type { Point } from '../../engine';
import { type Grid, gridFor, stepAcross, stepDown } from '../sheets/grid';
import type { UprightPage } from '../sheets/uprightPage';
import { usedSheets } from '../sheets/usedSheets';
import type { Arrangement } from './arrange';
import { boxOfOutlines, movedPlacements, type OutlineTurns, outlineAt, type Placement } from './placements';

export interface SheetPlan {
  readonly grid: Grid;
  readonly placements: readonly Placement[];
}

/** Room between the outermost cut lines and the edge of the plan, where texts beside an edge may stand. mm */
export const RIM_MM = 5;

/** Sheets first, then how many panels each sheet has a part of: the fewer, the less is to be joined. */
export function costOfPlan({ grid, placements }: SheetPlan, outlines: readonly OutlineTurns[]): number {
  const sheets = new Set<number>();
  let parts = 0;
  for (const [i, turns] of outlines.entries()) {
    const placement = placements[i] as Placement;
    const on = usedSheets(grid, outlineAt(turns, placement).spanLines, placement.offset);
    parts += on.length;
    for (const { row, column } of on) sheets.add(row * grid.columns + column);
  }
  return sheets.size * COST_OF_SHEET + parts;
}

const COST_OF_SHEET = 10_000;

export const sheetsOfCost = (cost: number): number => Math.floor(cost / COST_OF_SHEET);

/** Rows with their corner at 0, 0, moved into the middle of the sheets that they take. */
export function onOwnGrid(
  { offsets, widthMm: width, heightMm: height }: Arrangement,
  page: UprightPage,
  orientation: Grid['orientation'],
): SheetPlan {
  const grid = gridFor(page, orientation, width + 2 * RIM_MM, height + 2 * RIM_MM);
  const { x, y } = roomOf(grid);
  const by = { x: RIM_MM + (x - width) / 2, y: RIM_MM + (y - height) / 2 };
  const placements = offsets.map((offset) => ({ turned: false, offset }));
  return { grid, placements: movedPlacements(placements, by) };
}

/** Within the room that the sheets leave, all panels are moved so that fewer of them lie across a joint. */
export function bestLayout(plan: SheetPlan, outlines: readonly OutlineTurns[]): SheetPlan {
  const box = boxOfOutlines(outlines, plan.placements);
  if (!box) return plan;
  const room = roomOf(plan.grid);
  const [spareX, spareY] = [room.x - (box.right - box.left), room.y - (box.bottom - box.top)];
  let best = plan;
  let least = costOfPlan(plan, outlines);
  for (const down of SHARES)
    for (const across of SHARES) {
      const by = { x: RIM_MM + spareX * across - box.left, y: RIM_MM + spareY * down - box.top };
      const moved = { grid: plan.grid, placements: movedPlacements(plan.placements, by) };
      const cost = costOfPlan(moved, outlines);
      if (cost < least) [best, least] = [moved, cost];
    }
  return best;
}

/** Which part of the room that is left lies to the left and above. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8, 0, 1];

/** What the rims of the plan leave. */
const roomOf = (grid: Grid): Point => ({
  x: grid.columns * stepAcross(grid) + grid.overlapMm - 2 * RIM_MM,
  y: grid.rows * stepDown(grid) + grid.overlapMm - 2 * RIM_MM,
});
