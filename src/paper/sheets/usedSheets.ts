// Finds the sheets of a grid that lines run through; the others are not printed.

import type { Point } from '../../engine';
import { clipSegment } from '../geometry/clip';
import { type Grid, ownPartOf, type SheetPosition, stepAcross, stepDown } from './grid';

/** A shorter piece of line inside a sheet is a rounding error. mm */
const LEAST_LENGTH_MM = 0.01;

const NO_OFFSET: Point = { x: 0, y: 0 };

/**
 * The sheets whose own part a line runs through, by rows, with the lines moved by `offset`. A line that lies only in a sheet's
 * overlap is in the own part of the neighbour, so that the sheet is not needed for it.
 */
export function usedSheets(
  grid: Grid,
  lines: readonly (readonly Point[])[],
  offset: Point = NO_OFFSET,
): SheetPosition[] {
  const used = new Set<number>();
  const [across, down] = [stepAcross(grid), stepDown(grid)];
  for (const line of lines) {
    // Plain numbers are faster than points here: this runs over every point of every layout that is tried.
    let [lastX, lastY, lastRow, lastColumn] = [0, 0, -1, -1];
    for (const point of line) {
      const x = point.x + offset.x;
      const y = point.y + offset.y;
      const row = cell(y / down, grid.rows);
      const column = cell(x / across, grid.columns);
      // Nearly all segments are short and lie in one sheet's own part.
      if (row === lastRow && column === lastColumn) {
        if (Math.abs(x - lastX) + Math.abs(y - lastY) > LEAST_LENGTH_MM)
          used.add(row * grid.columns + column);
      } else if (lastRow >= 0)
        crossing(grid, { x: lastX, y: lastY, row: lastRow, column: lastColumn }, { x, y, row, column }, used);
      lastX = x;
      lastY = y;
      lastRow = row;
      lastColumn = column;
    }
  }
  return [...used]
    .sort((a, b) => a - b)
    .map((i) => ({ row: Math.floor(i / grid.columns), column: i % grid.columns }));
}

const cell = (steps: number, count: number): number => Math.min(count - 1, Math.max(0, Math.floor(steps)));

type LinePoint = Point & SheetPosition;

/** Adds the sheets that a segment between two sheets runs through. */
function crossing(grid: Grid, a: LinePoint, b: LinePoint, used: Set<number>): void {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  for (let row = Math.min(a.row, b.row); row <= Math.max(a.row, b.row); row += 1)
    for (let column = Math.min(a.column, b.column); column <= Math.max(a.column, b.column); column += 1) {
      const inside = clipSegment(a, b, ownPartOf(grid, { row, column }));
      if (inside && (inside.end - inside.start) * length > LEAST_LENGTH_MM)
        used.add(row * grid.columns + column);
    }
}
