// Smooth lines x = f(y) by piecewise cubic Hermite interpolation: legs, axes and side seams are of this kind.

import { numberAt as at } from './lists';

/**
 * x as a function of height y: a cubic between each two knots, with a continuous first derivative (C¹). It is vertical beyond both
 * ends. Each span is exactly one cubic Bézier.
 */
export interface SmoothLine {
  /** Knot heights, mm, strictly increasing. */
  readonly ys: readonly number[];
  /** x at each knot, mm. */
  readonly xs: readonly number[];
  /** dx/dy at each knot, no unit. */
  readonly slopes: readonly number[];
}

/**
 * The monotone cubic interpolant of points: monotone between neighbouring knots, so it never overshoots.
 * At an end, `flat` has slope 0 (vertical); `free` has the slope of the three points nearest to it; `point` has that slope too, but
 * none greater than that of the straight line to the next knot, so that a dart comes to its point straight or hollow, never blunt.
 *
 * Inner slopes are the weighted harmonic mean of the neighbouring secants, zero at a local extremum:
 * F. N. Fritsch and J. Butland, "A method for constructing local monotone piecewise cubic interpolants",
 * SIAM J. Sci. Stat. Comput. 5 (1984), in the weighted form of Brodlie.
 *
 * @param ys heights in mm, strictly increasing, at least one
 * @param xs as many values in mm
 * @param ends both flat unless given
 */
export function smoothLine(
  ys: readonly number[],
  xs: readonly number[],
  ends: { readonly start: LineEnd; readonly end: LineEnd } = BOTH_FLAT,
): SmoothLine {
  const last = ys.length - 1;
  // Through one point it is vertical, whatever its ends.
  if (last === 0) return { ys, xs, slopes: [0] };
  const slopes = [endSlope(ends.start, ys, xs, 0, 1, 2)];
  for (let i = 1; i < last; i += 1) slopes.push(innerSlope(ys, xs, i));
  slopes.push(endSlope(ends.end, ys, xs, last, last - 1, last - 2));
  return { ys, xs, slopes };
}

/** Slope at a knot between two others. */
function innerSlope(ys: readonly number[], xs: readonly number[], i: number): number {
  const before = at(ys, i) - at(ys, i - 1);
  const after = at(ys, i + 1) - at(ys, i);
  const secantBefore = (at(xs, i) - at(xs, i - 1)) / before;
  const secantAfter = (at(xs, i + 1) - at(xs, i)) / after;
  if (secantBefore * secantAfter <= 0) return 0;
  const weight = (before + 2 * after) / (3 * (before + after));
  return (secantBefore * secantAfter) / (weight * secantAfter + (1 - weight) * secantBefore);
}

/** How a line leaves its first or last knot. */
export type LineEnd = 'flat' | 'free' | 'point';

const BOTH_FLAT = { start: 'flat', end: 'flat' } as const;

function endSlope(
  end: LineEnd,
  ys: readonly number[],
  xs: readonly number[],
  ...[i, j, k]: readonly [number, number, number]
): number {
  if (end === 'flat') return 0;
  const slope = freeSlope(ys, xs, i, j, k);
  const near = (at(xs, j) - at(xs, i)) / (at(ys, j) - at(ys, i));
  return end === 'point' && Math.abs(slope) > Math.abs(near) ? near : slope;
}

/**
 * Slope at the end knot `i` by the three-point difference formula, limited to what keeps its span monotone (F. N. Fritsch and
 * R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17, 1980: at most 3 × its secant).
 * Slope of the secant where there are only two knots.
 *
 * @param j the knot beside it
 * @param k the one after that
 */
function freeSlope(ys: readonly number[], xs: readonly number[], i: number, j: number, k: number): number {
  const near = (at(xs, j) - at(xs, i)) / (at(ys, j) - at(ys, i));
  if (k < 0 || k >= ys.length) return near;
  const far = (at(xs, k) - at(xs, j)) / (at(ys, k) - at(ys, j));
  const h = Math.abs(at(ys, j) - at(ys, i));
  const g = Math.abs(at(ys, k) - at(ys, j));
  const slope = ((2 * h + g) * near - h * far) / (h + g);
  if (slope * near <= 0) return 0;
  return Math.abs(slope) > 3 * Math.abs(near) ? 3 * near : slope;
}

/** The vertical line at `x` mm, with a single knot. */
export const straightDown = (x: number): SmoothLine => ({ ys: [0], xs: [x], slopes: [0] });

/** The linear combination `a·p + b·q`, exact: it has the knots of both. */
export function combine(p: SmoothLine, a: number, q: SmoothLine, b: number): SmoothLine {
  if (sameKnots(p.ys, q.ys))
    return {
      ys: p.ys,
      xs: p.xs.map((x, i) => a * x + b * at(q.xs, i)),
      slopes: p.slopes.map((slope, i) => a * slope + b * at(q.slopes, i)),
    };
  const merged: { ys: number[]; xs: number[]; slopes: number[] } = { ys: [], xs: [], slopes: [] };
  let i = 0;
  let j = 0;
  while (i < p.ys.length || j < q.ys.length) {
    const y = Math.min(p.ys[i] ?? Number.POSITIVE_INFINITY, q.ys[j] ?? Number.POSITIVE_INFINITY);
    if (p.ys[i] === y) i += 1;
    if (q.ys[j] === y) j += 1;
    // Each line's span that holds `y` starts at the last of its knots so far.
    merged.ys.push(y);
    merged.xs.push(a * xInSpan(p, i - 1, y) + b * xInSpan(q, j - 1, y));
    merged.slopes.push(a * slopeInSpan(p, i - 1, y) + b * slopeInSpan(q, j - 1, y));
  }
  return merged;
}

/** A line with only those of its knots that lie from height `from` to height `to`, both included. */
export function within({ ys, xs, slopes }: SmoothLine, from: number, to: number): SmoothLine {
  // Heights grow, so the knots inside follow one another.
  let start = 0;
  while (start < ys.length && at(ys, start) < from) start += 1;
  let end = start;
  while (end < ys.length && at(ys, end) <= to) end += 1;
  if (start === 0 && end === ys.length) return { ys, xs, slopes };
  return { ys: ys.slice(start, end), xs: xs.slice(start, end), slopes: slopes.slice(start, end) };
}

const sameKnots = (ys: readonly number[], others: readonly number[]): boolean =>
  ys === others || (ys.length === others.length && ys.every((y, i) => y === others[i]));

/** x in mm at height `y`. */
export const xAt = (line: SmoothLine, y: number): number => xInSpan(line, spanOf(line.ys, y), y);

/** The same for a height in the span with index `i`, as {@link spanOf} counts them. */
export function xInSpan({ ys, xs, slopes }: SmoothLine, i: number, y: number): number {
  if (i < 0) return at(xs, 0);
  if (i >= ys.length - 1) return at(xs, ys.length - 1);
  if (y === at(ys, i)) return at(xs, i);
  const h = at(ys, i + 1) - at(ys, i);
  const t = (y - at(ys, i)) / h;
  const s = 1 - t;
  return (
    s * s * (1 + 2 * t) * at(xs, i) +
    t * t * (3 - 2 * t) * at(xs, i + 1) +
    h * t * s * (s * at(slopes, i) - t * at(slopes, i + 1))
  );
}

/** dx/dy at height `y`, no unit; 0 beyond both ends, and at the last knot the slope from above. */
export const slopeAt = (line: SmoothLine, y: number): number => slopeInSpan(line, spanOf(line.ys, y), y);

/** The same for a height in the span with index `i`, as {@link spanOf} counts them. */
export function slopeInSpan({ ys, xs, slopes }: SmoothLine, i: number, y: number): number {
  const last = ys.length - 1;
  if (i === last && y === ys[last]) return at(slopes, last);
  if (i < 0 || i >= last) return 0;
  if (y === at(ys, i)) return at(slopes, i);
  const h = at(ys, i + 1) - at(ys, i);
  const t = (y - at(ys, i)) / h;
  const s = 1 - t;
  return (
    (6 * t * s * (at(xs, i + 1) - at(xs, i))) / h +
    s * (s - 2 * t) * at(slopes, i) +
    t * (t - 2 * s) * at(slopes, i + 1)
  );
}

/** dx/dy = constant + linear·d + square·d², where d is the distance below height `at`, mm. */
export interface SlopePolynomial {
  readonly at: number;
  readonly constant: number;
  readonly linear: number;
  readonly square: number;
}

/** dx/dy as a polynomial, valid over the span between knots that holds height `y`. */
export function slopePolynomial(line: SmoothLine, y: number): SlopePolynomial {
  const { ys, xs, slopes } = line;
  const i = spanOf(ys, y);
  if (i < 0 || i >= ys.length - 1) return { at: y, constant: 0, linear: 0, square: 0 };
  const h = at(ys, i + 1) - at(ys, i);
  const rise = (at(xs, i + 1) - at(xs, i)) / h;
  const m0 = at(slopes, i);
  const m1 = at(slopes, i + 1);
  return {
    at: at(ys, i),
    constant: m0,
    linear: (2 * (3 * rise - 2 * m0 - m1)) / h,
    square: (3 * (m0 + m1 - 2 * rise)) / (h * h),
  };
}

/**
 * The minimum of x between two heights and the height at which it lies, mm; exact, from the ends, the knots and the stationary
 * points of each cubic. Of equal minima it is the first found.
 */
export function leastBetween(line: SmoothLine, from: number, to: number): { x: number; y: number } {
  const { ys, xs, slopes } = line;
  const heights = [from, to];
  for (let i = 0; i < ys.length; i += 1) {
    const y0 = at(ys, i);
    heights.push(y0);
    if (i === ys.length - 1 || y0 > to || at(ys, i + 1) < from) continue;
    const h = at(ys, i + 1) - y0;
    const m0 = at(slopes, i);
    const m1 = at(slopes, i + 1);
    const rise = at(xs, i + 1) - at(xs, i);
    // Derivative over the span: a·t² + b·t + c, t from 0 to 1.
    const a = 3 * (h * (m0 + m1) - 2 * rise);
    const b = 2 * (3 * rise - h * (2 * m0 + m1));
    const c = h * m0;
    const discriminant = b * b - 4 * a * c;
    if (discriminant < 0) continue;
    const root = Math.sqrt(discriminant);
    for (const t of Math.abs(a) < 1e-12 ? [-c / b] : [(-b + root) / (2 * a), (-b - root) / (2 * a)])
      if (t > 0 && t < 1) heights.push(y0 + t * h);
  }
  let least = { x: Number.POSITIVE_INFINITY, y: from };
  for (const y of heights) {
    if (y < from || y > to) continue;
    const x = xAt(line, y);
    if (x < least.x) least = { x, y };
  }
  return least;
}

/**
 * Whether x is above a value at every height, by the control points of each cubic, between which it lies. False where they do not
 * tell: {@link leastBetween} finds the least x itself, and takes longer.
 */
export function isSurelyAbove({ ys, xs, slopes }: SmoothLine, value: number): boolean {
  const least = value + ROUNDING_MM;
  for (let i = 0; i < ys.length; i += 1) {
    const x = at(xs, i);
    const slope = at(slopes, i);
    const above = i === 0 ? 0 : (at(ys, i) - at(ys, i - 1)) / 3;
    const below = i === ys.length - 1 ? 0 : (at(ys, i + 1) - at(ys, i)) / 3;
    if (!(x >= least && x - slope * above >= least && x + slope * below >= least)) return false;
  }
  return true;
}

/** Tolerance of rounding. mm */
const ROUNDING_MM = 1e-9;

/** Index of the span that holds `y`: −1 above the first knot, the last knot's index below the last. */
export function spanOf(ys: readonly number[], y: number): number {
  let i = -1;
  while (i + 1 < ys.length && at(ys, i + 1) <= y) i += 1;
  return i;
}
