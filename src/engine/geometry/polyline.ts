// Points in a row: what is drawn, cut and measured on paper.

import { type Cubic, flatten, pointOn, stepsOver } from './cubic';
import { distance, type Point } from './point';
import { type SmoothLine, slopeAt, xAt } from './smoothLine';

/** Farthest a chord may leave its curve, mm: a fifth of a fine pencil line. */
const FLATNESS_MM = 0.02;

/** Longest first and last chord of a curved edge, mm: short, so that its angle at a corner can be read from points. */
const END_CHORD_MM = 0.1;

/** Those chords are shortened further until they leave the tangent by no more than this, a fifth of what an edge run may show. */
const END_LEAN_RAD = (0.1 * Math.PI) / 180;

/** An edge that bends less is straight: far above rounding, so that rounding never changes the number of points. */
const STRAIGHT_RAD = 1e-6;

/** Length of a row of points, mm. */
export function polylineLength(points: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < points.length; i += 1) length += distance(points[i - 1] as Point, points[i] as Point);
  return length;
}

/** Where a row of points crosses height `y`, x in mm in the row's order; a ring is given with its start repeated at its end. */
export function crossingsAt(points: readonly Point[], y: number): number[] {
  const crossings: number[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if (a.y > y !== b.y > y) crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
  }
  return crossings;
}

/** Signed area of a closed ring in mm² (shoelace); negative when it runs counter-clockwise as seen on paper, y down. */
export function signedArea(ring: readonly Point[]): number {
  let twice = 0;
  let last = ring[ring.length - 1];
  for (const point of ring) {
    if (last) twice += last.x * point.y - point.x * last.y;
    last = point;
  }
  return twice / 2;
}

/**
 * Points down a smooth line from height `from` to height `to` (`from` < `to`), both ends in. Every knot between
 * is a point, so that widths at the levels are exact; chords keep within {@link FLATNESS_MM}.
 */
export function pointsDown(line: SmoothLine, from: number, to: number): Point[] {
  const points: Point[] = [{ x: xAt(line, from), y: from }];
  let top = from;
  for (const knot of line.ys) {
    if (knot <= from + 1e-9) continue;
    if (knot >= to - 1e-9) break;
    addSpan(points, line, top, knot);
    top = knot;
  }
  addSpan(points, line, top, to);
  if (points.length === 2 && slopeAt(line, from) === 0 && slopeAt(line, to) === 0) return points;
  for (const [end, way] of [
    [from, 1],
    [to, -1],
  ] as const) {
    const at = (reach: number): Point => ({ x: xAt(line, end + way * reach), y: end + way * reach });
    const tangent = { x: way * slopeAt(line, end), y: way };
    insertByHeight(points, at(shortReach(END_CHORD_MM, at, tangent)));
  }
  return points;
}

/** Adds the points below `top`, down to `foot`, of a line that is one cubic between the two heights. */
function addSpan(points: Point[], line: SmoothLine, top: number, foot: number): void {
  const h = foot - top;
  const rise = xAt(line, foot) - xAt(line, top);
  const [leaving, arriving] = [slopeAt(line, top), slopeAt(line, foot)];
  // Second differences of its control points, which lie evenly down the span.
  const bend = Math.max(
    Math.abs(rise - ((2 * leaving + arriving) * h) / 3),
    Math.abs(rise - ((leaving + 2 * arriving) * h) / 3),
  );
  const steps = stepsOver(bend, FLATNESS_MM);
  for (let i = 1; i <= steps; i += 1) {
    const y = i === steps ? foot : top + (h * i) / steps;
    points.push({ x: xAt(line, y), y });
  }
}

/** Points along a cubic, both ends in, with short chords at both ends. */
export function pointsAlong(cubic: Cubic): Point[] {
  const { start, startHandle, endHandle, end } = cubic;
  const inner = flatten(cubic, FLATNESS_MM);
  const most = Math.min(END_CHORD_MM / distance(start, end), 0.5 / inner.length);
  const leaving = { x: startHandle.x - start.x, y: startHandle.y - start.y };
  const arriving = { x: endHandle.x - end.x, y: endHandle.y - end.y };
  const bend = Math.max(turnBetween(leaving, start, end), turnBetween(arriving, end, start));
  if (inner.length === 1 && bend < STRAIGHT_RAD) return [start, end];
  const first = shortReach(most, (t) => pointOn(cubic, t), leaving);
  const last = shortReach(most, (t) => pointOn(cubic, 1 - t), arriving);
  inner.pop();
  return [start, pointOn(cubic, first), ...inner, pointOn(cubic, 1 - last), end];
}

/** The longest reach of `most`, a half, a quarter … of it whose chord keeps to the tangent at reach 0. */
function shortReach(most: number, at: (reach: number) => Point, tangent: Point): number {
  let reach = most;
  for (let halving = 0; halving < 6 && turnBetween(tangent, at(0), at(reach)) > END_LEAN_RAD; halving += 1)
    reach /= 2;
  return reach;
}

/** Angle between a direction and the chord from `a` to `b`, rad, not negative. */
function turnBetween(way: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return Math.abs(Math.atan2(way.x * dy - way.y * dx, way.x * dx + way.y * dy));
}

function insertByHeight(points: Point[], point: Point): void {
  const i = points.findIndex((other) => other.y > point.y);
  const before = points[i - 1];
  const after = points[i];
  if (!before || !after || point.y - before.y < 1e-3 || after.y - point.y < 1e-3) return;
  points.splice(i, 0, point);
}
