// A strip of cloth and the shapes to be laid on it.

import { type Depths, depthAt, depthsOf } from './depths';
import type { LayShape } from './layShape';
import { APART_MM, intervalsAt, type NoFit, noFit, rowsHigh, swappedNoFit } from './noFit';

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

export interface Strip {
  /** Across the cloth, mm. */
  readonly width: number;
  /** Shapes lie with their zero on a multiple of it across the cloth. mm */
  readonly rowHeight: number;
  readonly shapes: readonly LayShape[];
  /** By shape, how many rows it is high. */
  readonly heights: Int32Array;
  readonly items: readonly StripItem[];
  /** Where shape B must not lie beside shape A, by their indices. */
  readonly between: (a: number, b: number) => NoFit;
  /** The same, and how far B lies in A there. */
  readonly couple: (a: number, b: number) => Couple;
}

/** Two shapes: where the second must not lie beside the first, and how far it lies in it there. */
interface Couple {
  readonly fit: NoFit;
  readonly depths: Depths;
}

export function strip(
  shapes: readonly LayShape[],
  items: readonly StripItem[],
  width: number,
  rowHeight: number,
): Strip {
  const count = shapes.length;
  const fits: (NoFit | undefined)[] = new Array(count * count);
  const couples: (Couple | undefined)[] = new Array(count * count);
  const between = (a: number, b: number): NoFit => {
    const known = fits[a * count + b];
    if (known) return known;
    const made =
      a <= b ? noFit(shapes[a] as LayShape, shapes[b] as LayShape, rowHeight) : swappedNoFit(between(b, a));
    fits[a * count + b] = made;
    return made;
  };
  const couple = (a: number, b: number): Couple => {
    const known = couples[a * count + b];
    if (known) return known;
    const fit = between(a, b);
    const made: Couple = { fit, depths: depthsOf(fit, rowHeight) };
    couples[a * count + b] = made;
    return made;
  };
  const heights = Int32Array.from(shapes, (shape) => rowsHigh(shape, rowHeight));
  return { width, rowHeight, shapes, heights, items, between, couple };
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

/**
 * How far shape B lies in shape A, mm: the shortest way out along the cloth or, where it is known to be shorter, in any
 * direction; 0 where they do not overlap.
 *
 * @param across rows from A's zero to B's
 * @param along from A's zero to B's, mm
 */
export function depth(strip: Strip, a: number, b: number, across: number, along: number): number {
  const { fit, depths } = strip.couple(a, b);
  if (across < fit.first || across > fit.last) return 0;
  const intervals = intervalsAt(fit, across);
  for (let i = 0; i < intervals.length; i += 2) {
    const [from, to] = [intervals[i] as number, intervals[i + 1] as number];
    if (along <= from + ROUNDING_MM) return 0;
    if (along < to - ROUNDING_MM)
      return Math.min(along - from, to - along, depthAt(depths, across - fit.first, along));
  }
  return 0;
}

/** Shapes that touch may seem to overlap by less. mm */
const ROUNDING_MM = APART_MM / 2;
