// A grid of overlapping sheets over the plan.

import type { Box } from '../geometry/box';
import type { UprightPage } from './uprightPage';

/** Height of the strip under the pattern on each sheet, which has the sheet's name. mm */
export const STRIP_MM = 6;

export interface Grid {
  readonly orientation: 'portrait' | 'landscape';
  /** Size of the paper in its orientation, mm. */
  readonly pageWidthMm: number;
  readonly pageHeightMm: number;
  readonly marginMm: number;
  readonly overlapMm: number;
  /** Size of the window of the plan that one sheet shows, mm. */
  readonly windowWidthMm: number;
  readonly windowHeightMm: number;
  readonly columns: number;
  readonly rows: number;
}

export interface SheetPosition {
  readonly row: number;
  readonly column: number;
}

/** Distance from one sheet's window to the next, mm. */
export const stepAcross = (grid: Grid): number => grid.windowWidthMm - grid.overlapMm;
export const stepDown = (grid: Grid): number => grid.windowHeightMm - grid.overlapMm;

/** The grid of sheets that covers a plan of this size; a plan of no size takes none. */
export function gridFor(
  page: UprightPage,
  orientation: Grid['orientation'],
  planWidthMm: number,
  planHeightMm: number,
): Grid {
  const { widthMm, heightMm, marginMm, overlapMm } = page;
  const upright = orientation === 'portrait';
  const [pageWidthMm, pageHeightMm] = upright ? [widthMm, heightMm] : [heightMm, widthMm];
  const windowWidthMm = pageWidthMm - 2 * marginMm;
  const windowHeightMm = pageHeightMm - 2 * marginMm - STRIP_MM;
  const count = (plan: number, window: number): number =>
    plan <= 0 ? 0 : Math.max(1, Math.ceil((plan - overlapMm) / (window - overlapMm) - 1e-9));
  const [columns, rows] = [count(planWidthMm, windowWidthMm), count(planHeightMm, windowHeightMm)];
  return {
    orientation,
    pageWidthMm,
    pageHeightMm,
    marginMm,
    overlapMm,
    windowWidthMm,
    windowHeightMm,
    columns,
    rows,
  };
}

/** The window of the plan that a sheet shows, overlaps included. */
export function windowOf(grid: Grid, { row, column }: SheetPosition): Box {
  const [left, top] = [column * stepAcross(grid), row * stepDown(grid)];
  return { left, top, right: left + grid.windowWidthMm, bottom: top + grid.windowHeightMm };
}

/** The part of a sheet's window that belongs to it alone: each point of the plan is in one sheet's own part. */
export function ownPartOf(grid: Grid, position: SheetPosition): Box {
  const { left, top, right, bottom } = windowOf(grid, position);
  return {
    left,
    top,
    right: position.column === grid.columns - 1 ? right : left + stepAcross(grid),
    bottom: position.row === grid.rows - 1 ? bottom : top + stepDown(grid),
  };
}

/** The sheets of a grid that are not among those printed, by rows. */
export function blankSheets(grid: Grid, printed: readonly SheetPosition[]): SheetPosition[] {
  const names = new Set(printed.map(sheetName));
  return Array.from({ length: grid.rows * grid.columns }, (_, i) => ({
    row: Math.floor(i / grid.columns),
    column: i % grid.columns,
  })).filter((position) => !names.has(sheetName(position)));
}

/** The name of a sheet: row letter and column number, B3; AA follows Z. */
export function sheetName({ row, column }: SheetPosition): string {
  let rowLetters = '';
  for (let rest = row; rest >= 0; rest = Math.floor(rest / 26) - 1)
    rowLetters = String.fromCharCode(65 + (rest % 26)) + rowLetters;
  return `${rowLetters}${column + 1}`;
}
