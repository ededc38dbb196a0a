// The last check on a cut line from which loops were removed: it does not cross or touch itself.

import { at } from '../lists';
import type { Point } from '../point';

/**
 * True when two chords of a closed ring that are not neighbours have a point in common. Every pair of chords is compared, so the
 * time grows with the square of the number of points.
 *
 * @param ring its end is not repeated
 */
export function isSelfIntersecting(ring: readonly Point[]): boolean {
  const count = ring.length;
  for (let i = 0; i < count; i += 1) {
    const a = at(ring, i);
    const b = at(ring, (i + 1) % count);
    const left = Math.min(a.x, b.x);
    const right = Math.max(a.x, b.x);
    const above = Math.min(a.y, b.y);
    const below = Math.max(a.y, b.y);
    for (let j = i + 2; j < count; j += 1) {
      const c = at(ring, j);
      const d = at(ring, (j + 1) % count);
      // Bounding boxes first: few pairs of chords are near each other.
      if ((c.x > right && d.x > right) || (c.x < left && d.x < left)) continue;
      if ((c.y > below && d.y > below) || (c.y < above && d.y < above)) continue;
      if (i === 0 && j === count - 1) continue;
      if (haveCommonPoint(a, b, c, d)) return true;
    }
  }
  return false;
}

/** By the signs of four orientations, of two chords whose bounding boxes meet. */
function haveCommonPoint(a: Point, b: Point, c: Point, d: Point): boolean {
  return orientation(a, b, c) * orientation(a, b, d) <= 0 && orientation(c, d, a) * orientation(c, d, b) <= 0;
}

/** The side of the line from `p` to `q` on which `r` lies: −1, 1, or 0 for on it. */
const orientation = (p: Point, q: Point, r: Point): number =>
  Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
