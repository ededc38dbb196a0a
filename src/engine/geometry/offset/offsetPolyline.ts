// One edge of an outline offset by its allowance, before its corners are joined to its neighbours'.

import { at, first, last } from '../lists';
import type { Point } from '../point';

/** An edge of an outline, offset by its allowance. */
export interface OffsetEdge {
  readonly points: readonly Point[];
  /** Unit vector along the first chord. */
  readonly startDirection: Point;
  /** Unit vector along the last chord. */
  readonly endDirection: Point;
  /** mm, not negative. */
  readonly allowance: number;
  /** The end of the edge on the sew line. */
  readonly end: Point;
  /** True where part of the offset turns back on itself, for the edge bends in more tightly than its allowance. */
  readonly selfIntersects: boolean;
  /**
   * True where the first or the last chord runs back, for the edge bends in tightly near its end. It runs forward again from a
   * corner that lies far enough out.
   */
  readonly endRunsBack: boolean;
}

/**
 * A polyline offset to its right as seen on paper (y down), out of an outline that runs counter-clockwise. Each chord is moved by
 * the allowance, from its intersection with the chord before it to that with the chord after it. Where the polyline bends in
 * more tightly than the allowance, a chord shrinks to nothing; its neighbours then intersect each other. The first and the last
 * chord stay, and run back where they would shrink to nothing: a corner may reach past the ends of the polyline.
 *
 * @param points at least two, not all in one place
 * @param allowance mm, not negative
 */
export function offsetPolyline({
  points: all,
  allowance,
}: {
  readonly points: readonly Point[];
  readonly allowance: number;
}): OffsetEdge {
  const points = allowance > 0 ? withoutShortChords(all) : all;
  // The start of each offset chord and its direction, in two lists rather than one of objects: this is an inner loop.
  const starts: Point[] = [];
  const directions: Point[] = [];
  let selfIntersects = false;
  let endRunsBack = false;
  let from = first(points);
  for (let i = 1; i < points.length; i += 1) {
    const to = at(points, i);
    const direction = unitVector(from, to);
    const x = from.x - direction.y * allowance;
    const y = from.y + direction.x * allowance;
    let start: Point | null = null;
    while (starts.length > 0) {
      const previous = last(starts);
      const previousDirection = last(directions);
      const met = intersectionOfLines(previous, previousDirection, x, y, direction);
      const isFirst = starts.length === 1;
      const ahead = met !== null && isAhead(previous, previousDirection, met);
      if (met && (ahead || isFirst)) {
        endRunsBack ||= !ahead;
        start = met;
        break;
      }
      selfIntersects ||= isFirst;
      starts.pop();
      directions.pop();
    }
    starts.push(start ?? { x, y });
    directions.push(direction);
    from = to;
  }
  const endDirection = last(directions);
  const corner = last(points);
  const end = { x: corner.x - endDirection.y * allowance, y: corner.y + endDirection.x * allowance };
  const lastStart = last(starts);
  starts.push(end);
  return {
    points: starts,
    startDirection: first(directions),
    endDirection,
    allowance,
    end: corner,
    selfIntersects,
    endRunsBack: endRunsBack || !isAhead(lastStart, endDirection, end),
  };
}

const isAhead = (start: Point, direction: Point, point: Point): boolean =>
  (point.x - start.x) * direction.x + (point.y - start.y) * direction.y > 0;

/** Chords that turn by less than this are parallel: their intersection could not be computed any more. rad */
const PARALLEL_RAD = 1e-6;

/** Parallel lines no farther apart than this are one line. mm */
const SAME_LINE_MM = 1e-4;

/** Intersection of the line from `from` in direction `a` with that from (x, y) in direction `b`; null for parallel lines. */
function intersectionOfLines(from: Point, a: Point, x: number, y: number, b: Point): Point | null {
  const cross = a.x * b.y - a.y * b.x;
  const dx = x - from.x;
  const dy = y - from.y;
  if (Math.abs(cross) < PARALLEL_RAD) return Math.abs(a.x * dy - a.y * dx) < SAME_LINE_MM ? { x, y } : null;
  const along = (dx * b.y - dy * b.x) / cross;
  return { x: from.x + a.x * along, y: from.y + a.y * along };
}

/** Chords shorter than this add nothing to the shape, but their offsets could turn back on themselves. mm */
const SHORT_MM = 0.5;

const isNear = (a: Point, b: Point): boolean =>
  (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y) < SHORT_MM * SHORT_MM;

/** The points without those nearer than {@link SHORT_MM} to the one kept before them or to the end; both ends stay. */
function withoutShortChords(points: readonly Point[]): readonly Point[] {
  const end = last(points);
  let before = first(points);
  const kept = [before];
  for (let i = 1; i < points.length - 1; i += 1) {
    const point = at(points, i);
    if (isNear(before, point) || isNear(point, end)) continue;
    kept.push(point);
    before = point;
  }
  kept.push(end);
  return kept;
}

/** The unit vector from `a` to `b`; zero where they are one point. */
function unitVector(a: Point, b: Point): Point {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  // Many times quicker than Math.hypot, and no outline comes near its limits.
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  return { x: dx / length, y: dy / length };
}
