// Layouts of outlines on the sheets of a grid, and their costs.

import type { Point } from '../../engine';
import { simplified } from '../geometry/simplified';
import { type Grid, gridFor, stepAcross, stepDown } from '../sheets/grid';
import type { UprightPage } from '../sheets/uprightPage';
import { usedSheets } from '../sheets/usedSheets';
import type { Arrangement } from './arrange';
import {
  boxOfOutlines,
  movedPlacements,
  type Outline,
  type OutlineWays,
  outlineAt,
  type Placement,
} from './placements';

export interface SheetPlan {
  readonly grid: Grid;
  readonly placements: readonly Placement[];
}

/** Room between the outermost cut lines and the edge of the plan, where texts beside an edge may stand. mm */
export const RIM_MM = 5;

/** The cost of a layout: its sheets first, then the parts of panels on them, which have to be joined. */
export function costOfPlan({ grid, placements }: SheetPlan, outlines: readonly OutlineWays[]): number {
  const sheets = new Set<number>();
  let parts = 0;
  for (const [i, ways] of outlines.entries()) {
    const placement = placements[i] as Placement;
    const on = usedSheets(grid, outlineAt(ways, placement).spanLines, placement.offset);
    parts += on.length;
    for (const { row, column } of on) sheets.add(row * grid.columns + column);
  }
  return sheets.size * COST_OF_SHEET + parts;
}

const COST_OF_SHEET = 10_000;

/** The number of sheets in the cost of a layout. */
export const sheetsOfCost = (cost: number): number => Math.floor(cost / COST_OF_SHEET);

/** Moves rows of outlines, whose corner is at 0, 0, into the middle of the sheets that they take. */
export function onOwnGrid(
  { offsets, widthMm: width, heightMm: height }: Arrangement,
  page: UprightPage,
  orientation: Grid['orientation'],
): SheetPlan {
  const grid = gridFor(page, orientation, width + 2 * RIM_MM, height + 2 * RIM_MM);
  const { x, y } = roomOf(grid);
  const by = { x: RIM_MM + (x - width) / 2, y: RIM_MM + (y - height) / 2 };
  const placements = offsets.map((offset) => ({ turns: 0 as const, offset }));
  return { grid, placements: movedPlacements(placements, by) };
}

/** Moves all panels within the room that the sheets leave, so that fewer of them lie across a joint. */
export function bestLayout(plan: SheetPlan, outlines: readonly OutlineWays[]): SheetPlan {
  const box = boxOfOutlines(outlines, plan.placements);
  if (!box) return plan;
  const room = roomOf(plan.grid);
  const [spareX, spareY] = [room.x - (box.right - box.left), room.y - (box.bottom - box.top)];
  const plans = SHARES.flatMap((down) =>
    SHARES.map((across): SheetPlan => {
      const by = { x: RIM_MM + spareX * across - box.left, y: RIM_MM + spareY * down - box.top };
      return { grid: plan.grid, placements: movedPlacements(plan.placements, by) };
    }),
  );
  let best = plan;
  let least = costOfPlan(plan, outlines);
  for (const moved of likeliest(plans, outlines)) {
    const cost = costOfPlan(moved, outlines);
    if (cost < least) [best, least] = [moved, cost];
  }
  return best;
}

/** Shares of the spare room that are tried at the left and at the top. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8, 0, 1];

/** Of more outlines than this not every layout is counted exactly. */
const MOST_EXACT = 20;

/** So many layouts are counted exactly then. */
const LIKELIEST = 12;

/**
 * The layouts to be counted exactly, in their order: of few outlines all, of many those that seem to take the fewest sheets where
 * the outlines are drawn with few points.
 */
export function likeliest(
  plans: readonly SheetPlan[],
  outlines: readonly OutlineWays[],
): readonly SheetPlan[] {
  if (outlines.length <= MOST_EXACT) return plans;
  const coarsely = (way: Outline): Outline => ({
    ...way,
    spanLines: way.spanLines.map((line) => simplified(line, COARSE_MM)),
  });
  const coarse = outlines.map(([up, ...others]): OutlineWays => [coarsely(up), ...others.map(coarsely)]);
  return plans
    .map((plan, i) => ({ plan, i, cost: costOfPlan(plan, coarse) }))
    .sort((a, b) => a.cost - b.cost || a.i - b.i)
    .slice(0, LIKELIEST)
    .sort((a, b) => a.i - b.i)
    .map(({ plan }) => plan);
}

const COARSE_MM = 2;

/** Removes the rows and columns of unused sheets at the edges. */
export function trimmed({ grid, placements }: SheetPlan, outlines: readonly OutlineWays[]): SheetPlan {
  const on = outlines.flatMap((ways, i) => {
    const placement = placements[i] as Placement;
    return usedSheets(grid, outlineAt(ways, placement).spanLines, placement.offset);
  });
  const [rows, columns] = [on.map(({ row }) => row), on.map(({ column }) => column)];
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  const kept = { ...grid, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
  const by = { x: -column * stepAcross(grid), y: -row * stepDown(grid) };
  return { grid: kept, placements: movedPlacements(placements, by) };
}

/** Size of the plan inside its rims. */
const roomOf = (grid: Grid): Point => ({
  x: grid.columns * stepAcross(grid) + grid.overlapMm - 2 * RIM_MM,
  y: grid.rows * stepDown(grid) + grid.overlapMm - 2 * RIM_MM,
});
