// Which sheets of a grid have anything on them; the others are not printed.

import type { Point } from '../../engine';
import { clipSegment } from './clip';
import { type Grid, ownPartOf, type SheetPlace, stepAcross, stepDown } from './grid';

/** Less than this inside a sheet is rounding, not ink. mm */
const LEAST_INK_MM = 0.01;

/**
 * The sheets whose own part a line runs through, by rows. What lies only in an overlap is on the neighbour whose own part
 * it is, so a sheet that has nothing else is not needed.
 */
export function inkedSheets(grid: Grid, lines: readonly (readonly Point[])[]): SheetPlace[] {
  const inked = new Set<number>();
  const clamp = (value: number, count: number): number => Math.min(count - 1, Math.max(0, Math.floor(value)));
  for (const line of lines) {
    for (let i = 1; i < line.length; i += 1) {
      const [a, b] = [line[i - 1] as Point, line[i] as Point];
      const columns = [a.x, b.x].map((x) => clamp(x / stepAcross(grid), grid.columns)).sort((m, n) => m - n);
      const rows = [a.y, b.y].map((y) => clamp(y / stepDown(grid), grid.rows)).sort((m, n) => m - n);
      for (let row = rows[0] as number; row <= (rows[1] as number); row += 1)
        for (let column = columns[0] as number; column <= (columns[1] as number); column += 1) {
          const inside = clipSegment(a, b, ownPartOf(grid, { row, column }));
          if (inside && (inside.end - inside.start) * Math.hypot(b.x - a.x, b.y - a.y) > LEAST_INK_MM)
            inked.add(row * grid.columns + column);
        }
    }
  }
  return [...inked]
    .sort((a, b) => a - b)
    .map((i) => ({ row: Math.floor(i / grid.columns), column: i % grid.columns }));
}
