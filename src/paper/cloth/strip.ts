// A strip of cloth and the shapes to be laid on it.

import { type Couple, couplesOf } from './pairs/couples';
import { flippedShapes } from './pairs/flips';
import type { LayShape } from './pairs/layShape';
import { APART_MM, rowsHigh } from './pairs/noFit';

/** A piece to be laid: the ways it may lie, and the row it is bound to, such as the fold. */
export interface StripItem {
  /** Indices of {@link Strip.shapes}, at least one; items of one shape share their ways, so that little is reckoned twice. */
  readonly ways: readonly number[];
  readonly row: number | null;
}

/** Where an item lies: its shape, the row of its zero, and its zero along the cloth, mm. */
export interface Place {
  readonly shape: number;
  readonly row: number;
  readonly x: number;
}

/** The rows of a strip. */
export interface Rows {
  /** mm */
  readonly height: number;
  /** So many rows are one row of cells in the tables of depths. */
  readonly perCell: number;
}

export interface Strip {
  /** Across the cloth, mm. */
  readonly width: number;
  /** Shapes lie with their zero on a multiple of it across the cloth. mm */
  readonly rowHeight: number;
  readonly shapes: readonly LayShape[];
  /** By shape, how many rows it is high. */
  readonly heights: Int32Array;
  /** By shape, how long it is, mm. */
  readonly lengths: Float64Array;
  readonly items: readonly StripItem[];
  /** Where shape B must not lie beside shape A, by their indices, and how far B lies in A there. */
  readonly couple: (a: number, b: number) => Couple;
}

/** @param given shapes with no inset; some of the strip's have one */
export function strip(
  given: readonly LayShape[],
  items: readonly StripItem[],
  width: number,
  { height: rowHeight, perCell }: Rows,
): Strip {
  const flipped = flippedShapes(given, rowHeight);
  const { shapes } = flipped;
  const heights = Int32Array.from(shapes, (shape) => rowsHigh(shape, rowHeight));
  const lengths = Float64Array.from(shapes, ({ length }) => length);
  const couple = couplesOf(flipped, rowHeight, perCell);
  return { width, rowHeight, shapes, heights, lengths, items, couple };
}

export function shapeOf({ shapes }: Pick<Strip, 'shapes'>, shape: number): LayShape {
  const found = shapes[shape];
  if (!found) throw new RangeError(`no shape ${shape} on the strip`);
  return found;
}

/** The last row in which a shape lies on the cloth. */
const lastRow = ({ width, rowHeight }: Strip, shape: LayShape): number =>
  Math.floor((width - shape.width) / rowHeight + APART_MM);

/** Rows from the first to the last in which an item may lie in one of its ways; the last is less where it may not. */
export const rowsFor = (
  strip: Strip,
  { row }: StripItem,
  shape: number,
): readonly [first: number, last: number] => {
  const last = lastRow(strip, shapeOf(strip, shape));
  return row === null ? [0, last] : [row, Math.min(row, last)];
};
