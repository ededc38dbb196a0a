// The straight chord between two neighbouring points of a polyline: how far a point is from it and from a ring,
// and whether a ray meets it.

import type { Point } from './point';

/**
 * The fraction of the way from `a` to `b` at which the chord is nearest to a point: the orthogonal projection of the point, held
 * to the ends. From 0 to 1; 0 on a chord of no length.
 */
export function nearestFraction(a: Point, b: Point, { x, y }: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  return square === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / square));
}

/** Square of the distance of a point from the chord from `a` to `b`, mm². */
export function squaredDistanceToChord(a: Point, b: Point, point: Point): number {
  const t = nearestFraction(a, b, point);
  const x = a.x + t * (b.x - a.x) - point.x;
  const y = a.y + t * (b.y - a.y) - point.y;
  return x * x + y * y;
}

/** Distance of a point from the chord from `a` to `b`, mm. */
export const distanceToChord = (a: Point, b: Point, point: Point): number =>
  Math.sqrt(squaredDistanceToChord(a, b, point));

/** Distance of a point from the nearest chord of a closed ring, whose end is not repeated, mm; infinite for an empty ring. */
export function distanceToRing(ring: readonly Point[], point: Point): number {
  let least = Number.POSITIVE_INFINITY;
  let from = ring[ring.length - 1];
  for (const to of ring) {
    if (from) least = Math.min(least, squaredDistanceToChord(from, to, point));
    from = to;
  }
  return Math.sqrt(least);
}

/** Whether a ray from the point to the right crosses a chord. One that ends at the point's height is crossed at one of its ends only. */
export const isCrossedRightOf = (from: Point, to: Point, { x, y }: Point): boolean =>
  from.y > y !== to.y > y && x < from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y);
