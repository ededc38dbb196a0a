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
 * The tightest bend of a polyline: its radius, mm, is a chord of {@link CHORD_MM} divided by the turn to the next one. Corners
 * are left out, and so is what lies nearer than a chord to a corner or an end. Null where nothing else is left.
 */
export function tightestBend(points: readonly Point[]): Reading | null {
  let tightest: Reading | null = null;
  for (const stretch of withoutCorners(points)) {
    const even = evenlySpaced(stretch, CHORD_MM / READINGS);
    for (let i = READINGS; i < even.length - READINGS; i += 1) {
      const [a, b, c] = [at(even, i - READINGS), at(even, i), at(even, i + READINGS)];
      const value = CHORD_MM / Math.max(turn(a, b, c), 1e-9);
      if (!tightest || value < tightest.value) tightest = { at: b, value };
    }
  }
  return tightest;
}

/** The most that a chord of a polyline leans from the vertical, rad, not negative. Null for a line shorter than a chord. */
export function steepestLean(points: readonly Point[]): Reading | null {
  let steepest: Reading | null = null;
  const even = evenlySpaced(points, CHORD_MM / READINGS);
  for (let i = READINGS; i < even.length; i += 1) {
    const [a, b] = [at(even, i - READINGS), at(even, i)];
    const value = Math.atan2(Math.abs(b.x - a.x), Math.abs(b.y - a.y));
    if (!steepest || value > steepest.value) steepest = { at: b, value };
  }
  return steepest;
}

/** The point so far along a polyline from its start, mm; its end where it is shorter. */
export function pointAlong(points: readonly Point[], length: number): Point {
  let left = length;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [at(points, i - 1), at(points, i)];
    const chord = distance(a, b);
    if (chord >= left && chord > 0) return between(a, b, left / chord);
    left -= chord;
  }
  return last(points);
}

/** How much a line turns at `b`, rad, not negative. */
function turn(a: Point, b: Point, c: Point): number {
  const [px, py, qx, qy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs(Math.atan2(px * qy - py * qx, px * qx + py * qy));
}

/** Points along a polyline at even distances from its start. */
function evenlySpaced(points: readonly Point[], step: number): Point[] {
  const even: Point[] = [at(points, 0)];
  let ahead = step;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [at(points, i - 1), at(points, i)];
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
    const [before, after] = [points[i - 1], points[i + 1]];
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
