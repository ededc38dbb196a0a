// Whether a ring crosses or touches itself: the last check on a cut line that had to be untangled.

import type { Point } from './point';

/** True when two chords of a closed ring that are not neighbours have a point in common. */
export function isSelfIntersecting(ring: readonly Point[]): boolean {
  const count = ring.length;
  const point = (i: number): Point => ring[i % count] as Point;
  for (let i = 0; i < count; i += 1)
    for (let j = i + 2; j < count; j += 1) {
      if (i === 0 && j === count - 1) continue;
      if (haveCommonPoint(point(i), point(i + 1), point(j), point(j + 1))) return true;
    }
  return false;
}

function haveCommonPoint(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  const side = (p: Point, q: Point, r: Point): number =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}
