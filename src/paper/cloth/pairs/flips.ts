// Which shapes of a strip are others turned over or round, so that what holds of one holds of the other the same way turned.

import { type LayShape, layShape } from './layShape';
import { rowsHigh } from './noFit';

/** A shape as another one, its base, turned over along the cloth, across it, or both, which turns it round. */
export interface Flipped {
  /** The index of the base. */
  readonly base: number;
  readonly along: boolean;
  readonly across: boolean;
}

export interface FlippedShapes {
  /** The shapes, those turned over across the cloth set in so far that they lie in the rows of their base. */
  readonly shapes: readonly LayShape[];
  readonly flips: readonly Flipped[];
}

/** Corners that differ by less are one. mm */
const SAME_MM = 1e-9;

const FLIPS: readonly Omit<Flipped, 'base'>[] = [
  { along: false, across: false },
  { along: true, across: false },
  { along: true, across: true },
  { along: false, across: true },
];

/** @param rowHeight mm */
export function flippedShapes(given: readonly LayShape[], rowHeight: number): FlippedShapes {
  const bases: number[] = [];
  const flips = given.map((shape, i): Flipped => {
    for (const base of bases)
      for (const flip of FLIPS) if (isFlipped(given[base] as LayShape, shape, flip)) return { base, ...flip };
    bases.push(i);
    return { base: i, along: false, across: false };
  });
  const shapes = given.map((shape, i) => {
    if (!flips[i]?.across) return shape;
    return layShape(shape.outline, rowsHigh(shape, rowHeight) * rowHeight - shape.width);
  });
  return { shapes, flips };
}

/** Whether a shape is the base so turned, corner by corner. */
function isFlipped(base: LayShape, shape: LayShape, { along, across }: Omit<Flipped, 'base'>): boolean {
  if (base.outline.length !== shape.outline.length) return false;
  if (Math.abs(base.length - shape.length) > SAME_MM || Math.abs(base.width - shape.width) > SAME_MM)
    return false;
  return base.outline.every(({ x, y }, i) => {
    const { x: otherX, y: otherY } = shape.outline[i] as (typeof shape.outline)[number];
    return (
      Math.abs((along ? base.length - x : x) - otherX) < SAME_MM &&
      Math.abs((across ? base.width - y : y) - otherY) < SAME_MM
    );
  });
}
