// From the coordinates of a piece to those of the cloth it lies on.

import type { Point } from '../../engine';

/** A point (x, y) comes to (a·x + b·y + left, c·x + d·y + top). mm */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly left: number;
  readonly top: number;
}

export const laidAt = ({ a, b, c, d, left, top }: Affine, { x, y }: Point): Point => ({
  x: a * x + b * y + left,
  y: c * x + d * y + top,
});

export const movedOnto = (affine: Affine, by: Point): Affine => ({
  ...affine,
  left: affine.left + by.x,
  top: affine.top + by.y,
});
