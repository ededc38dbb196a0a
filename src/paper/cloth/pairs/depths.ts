// How far one shape lies in another, in any direction: a table of distances to the nearest place that is free.

import { intervalsAt, type NoFit } from './noFit';

/** Distances by cells, a row of cells for so many rows of the strip. */
export interface Depths {
  readonly columns: number;
  /** Where the first column stands along the cloth, mm from A's zero to B's. */
  readonly left: number;
  readonly rowsPerCell: number;
  /** Side of a cell, mm. */
  readonly cell: number;
  /** In {@link PARTS}s of a cell, and no more than fits; 0 where a place is free. */
  readonly parts: Uint8Array;
}

/** A cell is so many parts wide. */
export const PARTS = 4;

const MOST_PARTS = 255;

/** @param rowsPerCell a cell is so many rows high, and as wide */
export function depthsOf(fit: NoFit, rowHeight: number, rowsPerCell: number): Depths {
  const { first, last } = fit;
  const cell = rowHeight * rowsPerCell;
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let across = first; across <= last; across += rowsPerCell) {
    const row = intervalsAt(fit, across);
    if (row.length === 0) continue;
    from = Math.min(from, row[0] as number);
    to = Math.max(to, row[row.length - 1] as number);
  }
  if (to < from) return { columns: 0, left: 0, rowsPerCell, cell, parts: new Uint8Array(0) };
  // A rim of free cells all round: every distance is finite, and no neighbour lies outside the table.
  const left = from - cell;
  const columns = Math.ceil((to - from) / cell) + 3;
  const rows = Math.floor((last - first) / rowsPerCell) + 3;
  const distances = new Float32Array(rows * columns);
  for (let r = 1; r + 1 < rows; r += 1) {
    const row = intervalsAt(fit, first + (r - 1) * rowsPerCell);
    for (let k = 0; k < row.length; k += 2) {
      const start = Math.max(1, Math.ceil(((row[k] as number) - left) / cell));
      const end = Math.min(columns - 2, Math.floor(((row[k + 1] as number) - left) / cell));
      if (end >= start) distances.fill(Number.POSITIVE_INFINITY, r * columns + start, r * columns + end + 1);
    }
  }
  spread(distances, rows, columns, PARTS);
  // In a loop of its own: `from` asks for each number by a call, which takes longer than to work them out.
  const parts = new Uint8Array(distances.length);
  for (let i = 0; i < parts.length; i += 1)
    parts[i] = Math.min(MOST_PARTS, Math.round(distances[i] as number));
  return { columns, left, rowsPerCell, cell, parts };
}

/** Distances by steps straight and slanting, once down and once up (Borgefors 1986). */
function spread(distances: Float32Array, rows: number, columns: number, cell: number): void {
  for (let r = 1; r + 1 < rows; r += 1)
    spreadAlong(distances, r * columns + 1, (r + 1) * columns - 1, 1, columns, cell);
  for (let r = rows - 2; r >= 1; r -= 1)
    spreadAlong(distances, (r + 1) * columns - 2, r * columns, -1, columns, cell);
}

/**
 * Gives the cells from `start` to before `end` the least that leads to them from the cell behind and from the three of the row behind.
 *
 * @param step 1 along the row, with the row behind above; -1 against it, with the row behind below
 */
function spreadAlong(
  distances: Float32Array,
  start: number,
  end: number,
  step: 1 | -1,
  columns: number,
  cell: number,
): void {
  const slanting = Math.SQRT2 * cell;
  const rowBehind = -step * columns;
  for (let i = start; i !== end; i += step) {
    const known = distances[i] as number;
    if (known === 0) continue;
    const straight = Math.min(distances[i - step] as number, distances[i + rowBehind] as number) + cell;
    const aslant =
      Math.min(distances[i + rowBehind - 1] as number, distances[i + rowBehind + 1] as number) + slanting;
    distances[i] = Math.min(known, straight, aslant);
  }
}

/**
 * The index in {@link Depths.parts} of the row of cells at a distance across.
 *
 * @param row rows of the strip from the first at which the shapes may overlap
 */
export const cellsOfRow = ({ columns, rowsPerCell }: Depths, row: number): number =>
  columns * (1 + (((row + rowsPerCell / 2) / rowsPerCell) | 0));

/**
 * The distance at a place inside, mm; at least one part of a cell.
 *
 * @param row rows from the first at which the shapes may overlap
 * @param along mm from A's zero to B's
 */
export function depthAt(depths: Depths, row: number, along: number): number {
  const { left, cell, parts } = depths;
  return ((parts[cellsOfRow(depths, row) + Math.round((along - left) / cell)] || 1) * cell) / PARTS;
}
