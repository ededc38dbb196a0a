// Smooth lines that bend as little as they may: C² where nothing forbids it, monotone always.

import { numberAt } from './lists';
import type { SmoothLine } from './smoothLine';

/** A knot of a fair line; a slope that is given is kept. */
export interface FairKnot {
  /** Height, mm. */
  readonly y: number;
  /** mm */
  readonly value: number;
  /** dx/dy, no unit. */
  readonly slope?: number;
}

/**
 * The cubic spline of least bending through knots, kept monotone between neighbouring knots. At a local extremum and at both ends
 * the slope is 0 unless it is given; the others make the second derivative continuous and are then held to three times the
 * smaller secant beside them (J. M. Hyman, "Accurate monotonicity preserving cubic interpolation", SIAM J. Sci. Stat. Comput. 4,
 * 1983, after the limit of Fritsch and Carlson 1980).
 *
 * @param knots at strictly increasing heights, at least one
 */
export function fairLine(knots: readonly FairKnot[]): SmoothLine {
  const count = knots.length;
  const ys: number[] = [];
  const xs: number[] = [];
  for (const { y, value } of knots) {
    ys.push(y);
    xs.push(value);
  }
  const steps: number[] = [];
  const secants: number[] = [];
  for (let i = 1; i < count; i += 1) {
    const step = numberAt(ys, i) - numberAt(ys, i - 1);
    steps.push(step);
    secants.push((numberAt(xs, i) - numberAt(xs, i - 1)) / step);
  }
  const isFree = (i: number): boolean =>
    i > 0 &&
    i < count - 1 &&
    knots[i]?.slope === undefined &&
    numberAt(secants, i - 1) * numberAt(secants, i) > 0;
  const slopes = knots.map(({ slope }) => slope ?? 0);
  // Thomas algorithm over each stretch of free knots; a fixed slope at its ends goes to the right-hand side.
  const upper = new Array<number>(count).fill(0);
  const right = slopes.slice();
  for (let i = 1; i < count - 1; i += 1) {
    if (!isFree(i)) continue;
    const a = 1 / numberAt(steps, i - 1);
    const c = 1 / numberAt(steps, i);
    const diagonal = 2 * (a + c) - a * numberAt(upper, i - 1);
    const sum = 3 * (a * numberAt(secants, i - 1) + c * numberAt(secants, i));
    upper[i] = c / diagonal;
    right[i] = (sum - a * numberAt(right, i - 1)) / diagonal;
  }
  for (let i = count - 2; i > 0; i -= 1)
    if (isFree(i)) slopes[i] = numberAt(right, i) - numberAt(upper, i) * numberAt(slopes, i + 1);
  for (let i = 1; i < count - 1; i += 1)
    if (isFree(i)) slopes[i] = held(numberAt(slopes, i), numberAt(secants, i - 1), numberAt(secants, i));
  for (let i = 1; i < count - 1; i += 1) {
    const nearest = Math.min(
      isFree(i - 1) ? NEAR_MM : numberAt(steps, i - 1),
      isFree(i + 1) ? NEAR_MM : numberAt(steps, i),
    );
    if (isFree(i) && nearest < NEAR_MM) slopes[i] = leastSharp(i, steps, secants, slopes);
  }
  return { ys, xs, slopes };
}

/** A free knot nearer than this to a fixed one has the slope of least sharpness instead of that of least bending. mm */
const NEAR_MM = 40;

/**
 * The slope at knot `i` with which the greatest second derivative on its two spans is least, within what keeps them monotone; the
 * slopes beside it stay. On a cubic it is greatest at an end, where it is linear in this slope.
 */
function leastSharp(
  i: number,
  steps: readonly number[],
  secants: readonly number[],
  slopes: readonly number[],
): number {
  const h = numberAt(steps, i - 1);
  const g = numberAt(steps, i);
  const before = numberAt(secants, i - 1);
  const after = numberAt(secants, i);
  const m = numberAt(slopes, i - 1);
  const n = numberAt(slopes, i + 1);
  // Second derivative = constant + factor · slope: at the knot before, here from above and from below, at the knot after.
  const constants = [
    (6 * before - 4 * m) / h,
    (-6 * before + 2 * m) / h,
    (6 * after - 2 * n) / g,
    (-6 * after + 4 * n) / g,
  ];
  const factors = [-2 / h, 4 / h, -4 / g, 2 / g];
  const sharpness = (slope: number): number => {
    let most = 0;
    for (let j = 0; j < constants.length; j += 1)
      most = Math.max(most, Math.abs(numberAt(constants, j) + numberAt(factors, j) * slope));
    return most;
  };
  let best = numberAt(slopes, i);
  let least = sharpness(best);
  const consider = (slope: number): void => {
    const within = held(slope, before, after);
    const most = sharpness(within);
    if (most < least) [best, least] = [within, most];
  };
  // The least of the greatest lies where two of them are alike, or where one is zero.
  for (let j = 0; j < constants.length; j += 1) {
    const a = numberAt(constants, j);
    const p = numberAt(factors, j);
    consider(-a / p);
    for (let k = j + 1; k < constants.length; k += 1) {
      const b = numberAt(constants, k);
      const q = numberAt(factors, k);
      if (p !== q) consider((b - a) / (p - q));
      if (p !== -q) consider(-(a + b) / (p + q));
    }
  }
  return best;
}

/** A slope held between 0 and three times the smaller of two secants of one sign. */
function held(slope: number, before: number, after: number): number {
  const most = 3 * Math.min(Math.abs(before), Math.abs(after));
  return Math.sign(before) * Math.min(most, Math.max(0, slope * Math.sign(before)));
}
