// Cubic Bézier curves.

import type { Point } from './point';

/** The control points of a cubic Bézier curve, mm. */
export interface Cubic {
  readonly start: Point;
  readonly startHandle: Point;
  readonly endHandle: Point;
  readonly end: Point;
}

/**
 * The cubic from `start` to `end` that is a graph y(x) with the given slopes dy/dx at its ends (cubic Hermite interpolation:
 * the inner control points lie a third of the way across). `end` must not lie above or below `start`.
 */
export function cubicAcross(start: Point, startSlope: number, end: Point, endSlope: number): Cubic {
  const third = (end.x - start.x) / 3;
  return {
    start,
    startHandle: { x: start.x + third, y: start.y + third * startSlope },
    endHandle: { x: end.x - third, y: end.y - third * endSlope },
    end,
  };
}

/** The point at parameter `t`, 0 to 1 (Bernstein form). */
export function pointOn({ start, startHandle, endHandle, end }: Cubic, t: number): Point {
  const s = 1 - t;
  const a = s * s * s;
  const b = 3 * s * s * t;
  const c = 3 * s * t * t;
  const d = t * t * t;
  return {
    x: a * start.x + b * startHandle.x + c * endHandle.x + d * end.x,
    y: a * start.y + b * startHandle.y + c * endHandle.y + d * end.y,
  };
}

/**
 * Points along the cubic at even steps in t, without its start and with its exact end. No chord is farther than `toleranceMm`
 * from the curve.
 */
export function flatten(cubic: Cubic, toleranceMm: number): Point[] {
  const bend = Math.max(
    secondDifference(cubic.start, cubic.startHandle, cubic.endHandle),
    secondDifference(cubic.startHandle, cubic.endHandle, cubic.end),
  );
  const steps = evenSteps(bend, toleranceMm);
  const points: Point[] = [];
  for (let i = 1; i < steps; i += 1) points.push(pointOn(cubic, i / steps));
  points.push(cubic.end);
  return points;
}

/**
 * The number n of even steps in t, 1 to 512, that keeps the chords of a cubic within a tolerance. By the error bound of linear
 * interpolation, a chord is off by at most max|p″|/(8n²), and max|p″| is 6 × the larger second difference of the control points.
 *
 * @param bend that second difference, mm
 */
export function evenSteps(bend: number, toleranceMm: number): number {
  return Math.min(512, Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / toleranceMm))));
}

const secondDifference = (a: Point, b: Point, c: Point): number =>
  Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
