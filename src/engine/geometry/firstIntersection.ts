// The place at which a chord first intersects a polyline.

import { between, type Point } from './point';

export interface Intersection {
  readonly at: Point;
  /** Fraction of the chord at which it lies, from 0 to 1. */
  readonly along: number;
  /** Index of the polyline's point after the intersection. */
  readonly index: number;
  /** Fraction of the polyline's own chord at which it lies, from 0 to 1. */
  readonly within: number;
}

/**
 * The intersection of the chord from `a` to `b` with a polyline that lies nearest to `a`. Both ends of all chords count; a chord
 * of the polyline parallel to that from `a` to `b` does not intersect it. Null where there is none.
 */
export function firstIntersection(a: Point, b: Point, polyline: readonly Point[]): Intersection | null {
  let nearest: Omit<Intersection, 'at'> | null = null;
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  for (const [index, q] of polyline.entries()) {
    const p = polyline[index - 1];
    if (!p) continue;
    const cross = dx * (q.y - p.y) - dy * (q.x - p.x);
    if (cross === 0) continue;
    const along = ((p.x - a.x) * (q.y - p.y) - (p.y - a.y) * (q.x - p.x)) / cross;
    const within = ((p.x - a.x) * dy - (p.y - a.y) * dx) / cross;
    if (along < 0 || along > 1 || within < 0 || within > 1 || (nearest && along >= nearest.along)) continue;
    nearest = { along, index, within };
  }
  return nearest && { at: between(a, b, nearest.along), ...nearest };
}
