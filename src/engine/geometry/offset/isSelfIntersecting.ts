// The last check on a cut line from which loops were removed: it does not cross or touch itself.

import { at } from '../lists';
import type { Point } from '../point';
import type { BandedRing, RingChord } from './bandedRing';

/**
 * True when two chords of a closed ring that are not neighbours have a point in common. Chords are compared with those that reach
 * into the same band.
 */
export function isSelfIntersecting({ ring, bands }: BandedRing): boolean {
  return bands.some((chords) => haveCommonPoint(chords, ring.length));
}

/** Whether two of these chords of a ring of `count` chords, in its order, have a point in common and are not neighbours. */
function haveCommonPoint(chords: readonly RingChord[], count: number): boolean {
  for (let i = 0; i < chords.length; i += 1) {
    const { index, from: a, to: b } = at(chords, i);
    const left = Math.min(a.x, b.x);
    const right = Math.max(a.x, b.x);
    const above = Math.min(a.y, b.y);
    const below = Math.max(a.y, b.y);
    for (let j = i + 1; j < chords.length; j += 1) {
      const { index: other, from: c, to: d } = at(chords, j);
      // Bounding boxes first: few pairs of chords are near each other.
      if ((c.x > right && d.x > right) || (c.x < left && d.x < left)) continue;
      if ((c.y > below && d.y > below) || (c.y < above && d.y < above)) continue;
      const apart = other - index;
      if (apart === 1 || apart === count - 1) continue;
      if (intersect(a, b, c, d)) return true;
    }
  }
  return false;
}

/** By the signs of four orientations, of two chords whose bounding boxes meet. */
function intersect(a: Point, b: Point, c: Point, d: Point): boolean {
  return orientation(a, b, c) * orientation(a, b, d) <= 0 && orientation(c, d, a) * orientation(c, d, b) <= 0;
}

/** The side of the line from `p` to `q` on which `r` lies: −1, 1, or 0 for on it. */
const orientation = (p: Point, q: Point, r: Point): number =>
  Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
