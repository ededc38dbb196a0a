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
    for (let j = i + 2; j < count; j += 1) {
      if (i === 0 && j === count - 1) continue;
      if (haveCommonPoint(a, b, at(ring, j), at(ring, (j + 1) % count))) return true;
    }
  }
  return false;
}

/** Bounding boxes first, then the signs of four orientations. */
function haveCommonPoint(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  return orientation(a, b, c) * orientation(a, b, d) <= 0 && orientation(c, d, a) * orientation(c, d, b) <= 0;
}

/** The side of the line from `p` to `q` on which `r` lies: −1, 1, or 0 for on it. */
const orientation = (p: Point, q: Point, r: Point): number =>
  Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
