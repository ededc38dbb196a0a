// The check on a cut line from which loops were removed: it lies round the sew line with enough allowance.

import { squaredDistanceToChord } from '../chord';
import { isInside } from '../isInside';
import type { Point } from '../point';

/**
 * True when every point lies inside the closed ring (even-odd rule) and no nearer to it than `least` mm. With a `least` of 0 or
 * less, a point may also lie outside, no farther from the ring than −`least` mm.
 *
 * @param ring its end is not repeated
 */
export function hasClearance(ring: readonly Point[], points: readonly Point[], least: number): boolean {
  return points.every((point) =>
    least > 0
      ? isInside(ring, point) && squaredDistanceWithin(ring, point, least) >= least * least
      : isInside(ring, point) || squaredDistanceWithin(ring, point, -least) <= least * least,
  );
}

/** Tolerance of rounding, mm. */
const ROUNDING_MM = 1e-6;

/** Square of the distance of a point from a closed ring, mm²; infinite where no chord comes as near as `reach` mm. */
function squaredDistanceWithin(ring: readonly Point[], point: Point, reach: number): number {
  // Most chords lie wholly to one side, farther away than that, and are not measured.
  const left = point.x - reach - ROUNDING_MM;
  const right = point.x + reach + ROUNDING_MM;
  const above = point.y - reach - ROUNDING_MM;
  const below = point.y + reach + ROUNDING_MM;
  let nearest = Number.POSITIVE_INFINITY;
  let from = ring[ring.length - 1];
  for (const to of ring) {
    const isFar =
      !from ||
      (from.x < left && to.x < left) ||
      (from.x > right && to.x > right) ||
      (from.y < above && to.y < above) ||
      (from.y > below && to.y > below);
    if (from && !isFar) nearest = Math.min(nearest, squaredDistanceToChord(from, to, point));
    from = to;
  }
  return nearest;
}
