// How tightly a line bends over a length that is sewn at one go, and how far it leans.

import { at, last } from './lists';
import { between, distance, type Point } from './point';

/** A bend or a lean is read over chords of this length. mm */
const CHORD_MM = 5;

/** Readings to a chord. */
const READINGS = 2;

/** A point whose turn is at least this and many times that of its neighbours is a corner, not part of a bend. rad */
const CORNER_RAD = (5 * Math.PI) / 180;
const CORNER_TIMES = 2.5;

/** Where a line is read, and what is read there. */
export interface Reading {
  readonly at: Point;
  /** A radius in mm, or an angle in rad. */
  readonly value: number;
}

/**
 * The tightest bend of a polyline, where it is tighter than `least` mm: its radius, mm, is a chord of {@link CHORD_MM} divided by
 * the turn to the next one. Corners are left out, and so is what lies nearer than a chord to a corner or an end. Null where
 * nothing bends so tightly.
 */
export function bendTighterThan(points: readonly Point[], least: number): Reading | null {
  if (!turnsBy(points, CHORD_MM / least)) return null;
  let tightest: Reading | null = null;
  for (const stretch of withoutCorners(points)) {
    const even = evenlySpaced(stretch, CHORD_MM / READINGS);
    for (let i = READINGS; i < even.length - READINGS; i += 1) {
      const a = at(even, i - READINGS);
      const b = at(even, i);
      const c = at(even, i + READINGS);
      const value = CHORD_MM / Math.max(turn(a, b, c), 1e-9);
      if (value < (tightest?.value ?? least)) tightest = { at: b, value };
    }
  }
  return tightest;
}

/**
 * The chord of a polyline that leans most from the vertical, where it leans by more than `most` rad, which is below a right angle.
 * Null where none does.
 */
export function leanOver(points: readonly Point[], most: number): Reading | null {
  if (!leansBy(points, Math.tan(most))) return null;
  let steepest: Reading | null = null;
  const even = evenlySpaced(points, CHORD_MM / READINGS);
  for (let i = READINGS; i < even.length; i += 1) {
    const a = at(even, i - READINGS);
    const b = at(even, i);
    const value = Math.atan2(Math.abs(b.x - a.x), Math.abs(b.y - a.y));
    if (value > (steepest?.value ?? most)) steepest = { at: b, value };
  }
  return steepest;
}

/**
 * Whether a polyline may turn by `angle` rad or more, its turns added up, within the length of two chords that are read. Two chords
 * over that length differ by no more, so that few lines need be read.
 */
function turnsBy(points: readonly Point[], angle: number): boolean {
  if (points.length < 3) return false;
  // The turns from point `start` to point `end` are added up; both lengths are measured from the first point.
  let sum = 0;
  let start = 1;
  let lengthAtStart = distance(at(points, 0), at(points, 1));
  let lengthAtEnd = 0;
  let [before, point] = [at(points, 0), at(points, 1)];
  for (let end = 1; end < points.length - 1; end += 1) {
    const after = at(points, end + 1);
    lengthAtEnd += distance(before, point);
    sum += turnAtMost(before, point, after);
    while (lengthAtEnd - lengthAtStart > 2 * CHORD_MM) {
      const [a, b, c] = [at(points, start - 1), at(points, start), at(points, start + 1)];
      sum -= turnAtMost(a, b, c);
      start += 1;
      lengthAtStart += distance(b, c);
    }
    if (sum >= angle - ROUNDING_RAD) return true;
    [before, point] = [point, after];
  }
  return false;
}

/** Whether a polyline turns back in height, or a chord of it has more than `slope` mm across to one mm of height. */
function leansBy(points: readonly Point[], slope: number): boolean {
  let way = 0;
  for (let i = 1; i < points.length; i += 1) {
    const a = at(points, i - 1);
    const b = at(points, i);
    const height = b.y - a.y;
    if (Math.abs(b.x - a.x) > slope * Math.abs(height) || height * way < 0) return true;
    way = height;
  }
  return false;
}

/** Tolerance of the sum of many small turns. rad */
const ROUNDING_RAD = 1e-9;

/** The point so far along a polyline from its start, mm; its end where it is shorter. */
export function pointAlong(points: readonly Point[], length: number): Point {
  let left = length;
  for (let i = 1; i < points.length; i += 1) {
    const a = at(points, i - 1);
    const b = at(points, i);
    const chord = distance(a, b);
    if (chord >= left && chord > 0) return between(a, b, left / chord);
    left -= chord;
  }
  return last(points);
}

/** How much a line turns at `b`, rad, not negative. */
function turn(a: Point, b: Point, c: Point): number {
  const px = b.x - a.x;
  const py = b.y - a.y;
  const qx = c.x - b.x;
  const qy = c.y - b.y;
  return Math.abs(Math.atan2(px * qy - py * qx, px * qx + py * qy));
}

/**
 * A bound of how much a line turns at `b`, rad: the tangent of the turn, which is quicker; half a turn where it is a right angle or
 * more.
 */
function turnAtMost(a: Point, b: Point, c: Point): number {
  const px = b.x - a.x;
  const py = b.y - a.y;
  const qx = c.x - b.x;
  const qy = c.y - b.y;
  const dot = px * qx + py * qy;
  return dot > 0 ? Math.abs(px * qy - py * qx) / dot : Math.PI;
}

/** Points along a polyline at even distances from its start. */
function evenlySpaced(points: readonly Point[], step: number): Point[] {
  const even: Point[] = [at(points, 0)];
  let ahead = step;
  for (let i = 1; i < points.length; i += 1) {
    const a = at(points, i - 1);
    const b = at(points, i);
    const chord = distance(a, b);
    while (ahead <= chord && chord > 0) {
      even.push(between(a, b, ahead / chord));
      ahead += step;
    }
    ahead -= chord;
  }
  return even;
}

function withoutCorners(points: readonly Point[]): Point[][] {
  const turns = points.map((point, i) => {
    const before = points[i - 1];
    const after = points[i + 1];
    return before && after ? turn(before, point, after) : 0;
  });
  const stretches: Point[][] = [];
  let start = 0;
  for (let i = 1; i < points.length - 1; i += 1) {
    const beside = Math.max(at(turns, i - 1), at(turns, i + 1));
    if (at(turns, i) < CORNER_RAD || at(turns, i) < CORNER_TIMES * beside) continue;
    stretches.push(points.slice(start, i + 1));
    start = i;
  }
  return [...stretches, points.slice(start)];
}
