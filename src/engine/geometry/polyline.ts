// Polylines: curves as lists of points, as they are drawn, cut and measured on paper.

import { type Cubic, evenSteps, flatten, pointOn } from './cubic';
import { at } from './lists';
import { distance, type Point } from './point';
import { type SmoothLine, slopeAt, spanOf, xAt, xInSpan } from './smoothLine';

/** Farthest a chord may leave its curve, mm: a fifth of a fine pencil line. */
const FLATNESS_MM = 0.02;

/** Longest first and last chord of a curved edge, mm: short, so that its angle at a corner can be read from points. */
const END_CHORD_MM = 0.1;

/** A knot no farther from an end of a curve is at the end: a chord between the two would be of no length on paper. mm */
const AT_END_MM = 0.001;

/** Those chords are shortened further until they are within this angle of the tangent, a fifth of what edge continuity allows. */
const END_LEAN_RAD = (0.1 * Math.PI) / 180;

/** A curve that turns by less is straight: far above rounding, so that rounding never changes the number of points. */
const STRAIGHT_RAD = 1e-6;

/** Length of a polyline, mm; 0 for fewer than two points. */
export function polylineLength(points: readonly Point[]): number {
  let length = 0;
  let from = points[0];
  for (const to of points) {
    if (from) length += distance(from, to);
    from = to;
  }
  return length;
}

/** The least and the greatest height of points, mm; infinite, and the wrong way round, where there are none. */
export function heightSpan(points: readonly Point[]): { least: number; most: number } {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const { y } of points) {
    least = Math.min(least, y);
    most = Math.max(most, y);
  }
  return { least, most };
}

/** The closed ring of edges each of which ends where the next one starts; its end is not repeated. */
export function ringThrough(edges: readonly { readonly points: readonly Point[] }[]): Point[] {
  const ring: Point[] = [];
  // Point by point: Array.flatMap is twenty times slower, and every outline of a draft is such a ring.
  for (const { points } of edges) for (let i = 1; i < points.length; i += 1) ring.push(at(points, i - 1));
  return ring;
}

/** Points nearer to each other than this are one point. mm */
const SAME_POINT_MM = 5e-5;

export const isSamePoint = (a: Point, b: Point): boolean => distance(a, b) < SAME_POINT_MM;

/** The points of a polyline without those that repeat the one before; the last one stays. */
export function withoutRepeats(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const [i, point] of points.entries()) {
    const before = kept.at(-1);
    if (!before || !isSamePoint(before, point)) kept.push(point);
    else if (i === points.length - 1 && kept.length > 1) kept[kept.length - 1] = point;
  }
  return kept;
}

/** The points of a closed ring, its end not repeated, without those that repeat the one before or, at the end, the first one. */
export function ringWithoutRepeats(ring: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (let i = 0; i < ring.length; i += 1)
    if (i === 0 || !isSamePoint(at(ring, i - 1), at(ring, i))) kept.push(at(ring, i));
  const start = kept[0];
  const end = kept.at(-1);
  return start && end && kept.length > 1 && isSamePoint(start, end) ? kept.slice(0, -1) : kept;
}

/**
 * The x, mm, of each crossing of a polyline with height `y`, in the polyline's order. A ring is given with its start repeated at its
 * end. A chord that only touches the height from below does not count, so a closed ring is crossed an even number of times.
 */
export function crossingsAt(points: readonly Point[], y: number): number[] {
  const crossings: number[] = [];
  let a = points[0];
  for (const b of points) {
    if (a && a.y > y !== b.y > y) crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
    a = b;
  }
  return crossings;
}

/** Signed area of a closed ring by the shoelace formula, mm²; negative when it runs counter-clockwise as seen on paper (y down). */
export function signedArea(ring: readonly Point[]): number {
  let twice = 0;
  let from = ring[ring.length - 1];
  for (const to of ring) {
    if (from) twice += from.x * to.y - to.x * from.y;
    from = to;
  }
  return twice / 2;
}

/**
 * Points down a smooth line from height `from` to height `to` (`from` < `to`, mm), both ends included. Every knot between
 * is a point, so that widths at the levels are exact, but for one within {@link AT_END_MM} of an end. No chord is farther than
 * {@link FLATNESS_MM} from the line.
 */
export function pointsDown(line: SmoothLine, from: number, to: number): Point[] {
  const points: Point[] = [{ x: xAt(line, from), y: from }];
  let top = from;
  for (const knot of line.ys) {
    if (knot <= from + AT_END_MM) continue;
    if (knot >= to - AT_END_MM) break;
    addSpan(points, line, top, knot);
    top = knot;
  }
  addSpan(points, line, top, to);
  if (points.length === 2 && slopeAt(line, from) === 0 && slopeAt(line, to) === 0) return points;
  for (const [end, sign] of [
    [from, 1],
    [to, -1],
  ] as const) {
    const pointFrom = (reach: number): Point => ({ x: xAt(line, end + sign * reach), y: end + sign * reach });
    const tangent = { x: sign * slopeAt(line, end), y: sign };
    insertByHeight(points, pointFrom(tangentReach(END_CHORD_MM, pointFrom, tangent)));
  }
  return points;
}

/** Adds the points of a line below height `top`, down to `foot`; the line is one cubic between the two. */
function addSpan(points: Point[], line: SmoothLine, top: number, foot: number): void {
  const h = foot - top;
  // Its ends may lie a little past a knot.
  const span = spanOf(line.ys, (top + foot) / 2);
  const rise = xAt(line, foot) - xAt(line, top);
  const leaving = slopeAt(line, top);
  const arriving = slopeAt(line, foot);
  // Second differences of its Bézier control points, whose heights are evenly spaced.
  const bend = Math.max(
    Math.abs(rise - ((2 * leaving + arriving) * h) / 3),
    Math.abs(rise - ((leaving + 2 * arriving) * h) / 3),
  );
  const steps = evenSteps(bend, FLATNESS_MM);
  for (let i = 1; i <= steps; i += 1) {
    const y = i === steps ? foot : top + (h * i) / steps;
    points.push({ x: i === steps ? xAt(line, y) : xInSpan(line, span, y), y });
  }
}

/** Points along a cubic, both ends included, with short chords at both ends; two points for a straight one. */
export function pointsAlong(cubic: Cubic): Point[] {
  const { start, startHandle, endHandle, end } = cubic;
  const inner = flatten(cubic, FLATNESS_MM);
  const most = Math.min(END_CHORD_MM / distance(start, end), 0.5 / inner.length);
  const leaving = { x: startHandle.x - start.x, y: startHandle.y - start.y };
  const arriving = { x: endHandle.x - end.x, y: endHandle.y - end.y };
  const bend = Math.max(angleTo(leaving, start, end), angleTo(arriving, end, start));
  if (inner.length === 1 && bend < STRAIGHT_RAD) return [start, end];
  const first = tangentReach(most, (t) => pointOn(cubic, t), leaving);
  const final = tangentReach(most, (t) => pointOn(cubic, 1 - t), arriving);
  inner.pop();
  return [start, pointOn(cubic, first), ...inner, pointOn(cubic, 1 - final), end];
}

/**
 * The longest of `most`, its half, its quarter … whose chord is within {@link END_LEAN_RAD} of the tangent at 0; six halvings at
 * most.
 */
function tangentReach(most: number, pointFrom: (reach: number) => Point, tangent: Point): number {
  let reach = most;
  for (let halving = 0; halving < 6; halving += 1) {
    if (angleTo(tangent, pointFrom(0), pointFrom(reach)) <= END_LEAN_RAD) break;
    reach /= 2;
  }
  return reach;
}

/** Angle between a direction and the chord from `a` to `b`, rad, not negative. */
function angleTo(direction: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return Math.abs(Math.atan2(direction.x * dy - direction.y * dx, direction.x * dx + direction.y * dy));
}

/** Inserts a point into points sorted by height, unless it would lie within 0.001 mm of the height of a neighbour. */
function insertByHeight(points: Point[], point: Point): void {
  const i = points.findIndex((other) => other.y > point.y);
  const before = points[i - 1];
  const after = points[i];
  if (!before || !after || point.y - before.y < 1e-3 || after.y - point.y < 1e-3) return;
  points.splice(i, 0, point);
}
