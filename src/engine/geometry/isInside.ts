// Whether a point lies inside a closed ring.

import { isCrossedRightOf } from './chord';
import type { Point } from './point';

/**
 * True when a ray from the point to the right crosses the closed ring an odd number of times (even-odd rule). A point on the ring
 * itself may count either way.
 *
 * @param ring its end is not repeated; a repeated end does no harm
 */
export function isInside(ring: readonly Point[], point: Point): boolean {
  let inside = false;
  let from = ring[ring.length - 1];
  for (const to of ring) {
    if (from && isCrossedRightOf(from, to, point)) inside = !inside;
    from = to;
  }
  return inside;
}
