// The mitre join of two offset edges at a corner of the outline.

import { at, first, last } from '../lists';
import type { Point } from '../point';
import type { OffsetEdge } from './offsetPolyline';

export interface Corner {
  /** What replaces the ends of both edges, in order. */
  readonly points: readonly Point[];
  /** How many points at the end of the edge before it the corner replaces. */
  readonly fromEnd: number;
  /** How many points at the start of the edge after it the corner replaces. */
  readonly fromStart: number;
  /** True where the corner leaves a loop in the ring. */
  readonly selfIntersects: boolean;
}

/** Mitre limit: the tip of a corner stands at most this many allowances away from it; a sharper one is squared off. */
export const MITRE_LIMIT = 4;

/** Tolerance of rounding: mm, and for cross products of unit vectors, rad. */
const ROUNDING = 1e-9;

/**
 * The join of an edge and the next one. An outward corner is a mitre, squared off one allowance past the corner where the mitre
 * would exceed {@link MITRE_LIMIT}; an inward one goes through the corner of the sew line and leaves a loop. Where one edge's
 * allowance reaches past the other's line, it is cut off along that line.
 *
 * @param atFold true where one of the two lies on a fold: there the other's allowance is always cut off along the fold, because
 *   the other half of the piece continues it, however far that is from the corner
 */
export function joinCorner(edge: OffsetEdge, next: OffsetEdge, atFold = false): Corner {
  const from = last(edge.points);
  const to = first(next.points);
  const a = edge.endDirection;
  const b = next.startDirection;
  const inward = corner([from, edge.end, to], true);
  // Counter-clockwise as seen on paper, an outward corner turns left: a × b < 0 with y down.
  const cross = a.x * b.y - a.y * b.x;
  const dot = a.x * b.x + a.y * b.y;
  if (dot > 0 && Math.abs(cross) < ROUNDING && edge.allowance === next.allowance)
    return corner([from], false);
  if (cross >= -ROUNDING) return inward;
  const along = ((to.x - from.x) * b.y - (to.y - from.y) * b.x) / cross;
  const tip = { x: from.x + a.x * along, y: from.y + a.y * along };
  const reach = Math.max(edge.allowance, next.allowance);
  if (
    (atFold && dot > 0) ||
    Math.hypot(tip.x - edge.end.x, tip.y - edge.end.y) <= MITRE_LIMIT * reach ||
    reach === 0
  ) {
    // At a blunt corner the wider allowance reaches past the narrower one's line, and is cut off along it.
    if (along < -ROUNDING) {
      const met = rayIntersection([...edge.points].reverse(), to, { x: -b.x, y: -b.y });
      return met ? { ...corner([met.at], false), fromEnd: met.index } : inward;
    }
    if ((tip.x - to.x) * b.x + (tip.y - to.y) * b.y > ROUNDING) {
      const met = rayIntersection(next.points, from, a);
      return met ? { ...corner([met.at], false), fromStart: met.index } : inward;
    }
    return corner([tip], false);
  }
  // Two different allowances along nearly straight edges meet in a step, not in a spike.
  if (dot > 0) return corner([from, to], true);
  return corner(
    [
      { x: from.x + a.x * reach, y: from.y + a.y * reach },
      { x: to.x - b.x * reach, y: to.y - b.y * reach },
    ],
    false,
  );
}

/** A corner that replaces the end point of one edge and the start point of the next. */
const corner = (points: readonly Point[], selfIntersects: boolean): Corner => ({
  points,
  fromEnd: 1,
  fromStart: 1,
  selfIntersects,
});

/** The first intersection of a polyline with a ray, and the index of the point after it; null where there is none. */
function rayIntersection(
  points: readonly Point[],
  from: Point,
  direction: Point,
): { at: Point; index: number } | null {
  const offAxis = (point: Point): number =>
    direction.x * (point.y - from.y) - direction.y * (point.x - from.x);
  for (let index = 1; index < points.length; index += 1) {
    const p = at(points, index - 1);
    const q = at(points, index);
    const before = offAxis(p);
    const after = offAxis(q);
    if (before > 0 === after > 0 && after !== 0) continue;
    const t = before === after ? 1 : before / (before - after);
    const met = { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
    if ((met.x - from.x) * direction.x + (met.y - from.y) * direction.y >= 0) return { at: met, index };
  }
  return null;
}
