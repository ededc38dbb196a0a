// The check on a hem allowance that is turned up: it covers the cloth it comes to lie on.

import { pairs, ringPairs } from '../lists';
import { distance, type Point } from '../point';

/**
 * The most by which the cloth below a hem, turned up square to it, falls short of the cloth it comes to lie on or of its
 * depth, whichever is less; mm, not negative. It is measured at the middle of each chord of the hem.
 *
 * @param ring the cut line, its end not repeated
 * @param hem the sew line, with the cloth on its right as seen on paper
 * @param depth the hem allowance, mm
 * @param onFold the chord along the fold the piece is cut on, where it ends at the hem: the cloth continues beyond it
 */
export function hemShortfall(
  ring: readonly Point[],
  hem: readonly Point[],
  depth: number,
  onFold: readonly [Point, Point] | null,
): number {
  const chords = ringPairs(ring).filter(([a, b]) => !onFold || !isOnLine(a, onFold) || !isOnLine(b, onFold));
  let most = 0;
  for (const [p, q] of pairs(hem)) {
    const length = distance(p, q);
    if (length === 0) continue;
    const middle = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
    const out = { x: (p.y - q.y) / length, y: (q.x - p.x) / length };
    const above = rayLength(chords, middle, { x: -out.x, y: -out.y });
    most = Math.max(most, Math.min(depth, above) - rayLength(chords, middle, out));
  }
  return most;
}

/** Tolerance: the union of polygons moves a point by less than this. mm */
const ROUNDING_MM = 1e-4;

/** Whether a point lies on the straight line through a chord. */
function isOnLine({ x, y }: Point, [a, b]: readonly [Point, Point]): boolean {
  const cross = (x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x);
  return Math.abs(cross) <= ROUNDING_MM * distance(a, b);
}

/** The length of a ray of unit direction up to the first chord it meets, mm; infinite where it meets none. */
function rayLength(chords: readonly (readonly [Point, Point])[], from: Point, direction: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const [p, q] of chords) {
    const before = offAxis(p, from, direction);
    const after = offAxis(q, from, direction);
    if (before > 0 === after > 0) continue;
    const t = before / (before - after);
    const ahead =
      (p.x + (q.x - p.x) * t - from.x) * direction.x + (p.y + (q.y - p.y) * t - from.y) * direction.y;
    if (ahead >= 0 && ahead < nearest) nearest = ahead;
  }
  return nearest;
}

/** Signed distance of a point from the line of a ray of unit direction, mm. */
const offAxis = (point: Point, from: Point, direction: Point): number =>
  direction.x * (point.y - from.y) - direction.y * (point.x - from.x);
