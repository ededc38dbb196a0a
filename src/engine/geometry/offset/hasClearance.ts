// The check on a cut line from which loops were removed: it lies round the sew line with enough allowance.

import { isCrossedRightOf, squaredDistanceToChord } from '../chord';
import { at } from '../lists';
import type { Point } from '../point';
import { type BandedRing, bandAt } from './bandedRing';

/**
 * True when every point lies inside the closed ring (even-odd rule) and no nearer to it than `least` mm. With a `least` of 0 or
 * less, a point may also lie outside, no farther from the ring than −`least` mm.
 */
export function hasClearance(banded: BandedRing, points: readonly Point[], least: number): boolean {
  return points.every((point) =>
    least > 0
      ? isInside(banded, point) && squaredDistanceWithin(banded, point, least) >= least * least
      : isInside(banded, point) || squaredDistanceWithin(banded, point, -least) <= least * least,
  );
}

/** Whether a ray from the point to the right crosses the ring an odd number of times; only the point's own band is met. */
function isInside(banded: BandedRing, point: Point): boolean {
  let inside = false;
  for (const { from, to } of at(banded.bands, bandAt(banded, point.y)))
    if (isCrossedRightOf(from, to, point)) inside = !inside;
  return inside;
}

/** Tolerance of rounding, mm. */
const ROUNDING_MM = 1e-6;

/** Square of the distance of a point from a closed ring, mm²; infinite where no chord comes as near as `reach` mm. */
function squaredDistanceWithin(banded: BandedRing, point: Point, reach: number): number {
  // Most chords lie wholly to one side, farther away than that, and are not measured.
  const left = point.x - reach - ROUNDING_MM;
  const right = point.x + reach + ROUNDING_MM;
  const above = point.y - reach - ROUNDING_MM;
  const below = point.y + reach + ROUNDING_MM;
  const end = bandAt(banded, below);
  let nearest = Number.POSITIVE_INFINITY;
  for (let band = bandAt(banded, above); band <= end; band += 1)
    for (const { from, to } of at(banded.bands, band)) {
      const isFar =
        (from.x < left && to.x < left) ||
        (from.x > right && to.x > right) ||
        (from.y < above && to.y < above) ||
        (from.y > below && to.y > below);
      if (!isFar) nearest = Math.min(nearest, squaredDistanceToChord(from, to, point));
    }
  return nearest;
}
