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
  return points.every((point) => {
    const inside = isInside(ring, point);
    if (least <= 0 && inside) return true;
    let nearest = Number.POSITIVE_INFINITY;
    let from = ring[ring.length - 1];
    for (const to of ring) {
      if (from) nearest = Math.min(nearest, squaredDistanceToChord(from, to, point));
      from = to;
    }
    return least > 0 ? inside && nearest >= least * least : nearest <= least * least;
  });
}
