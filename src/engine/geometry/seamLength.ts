// Arc length along a smooth line, and its inverse.

import { numberAt } from './lists';
import { type SlopePolynomial, type SmoothLine, slopeAt, slopePolynomial } from './smoothLine';

// Gauss–Legendre quadrature on [−1, 1] with n = 10: positive nodes and their weights, from M. Abramowitz and I. A. Stegun (eds.),
// "Handbook of Mathematical Functions", National Bureau of Standards (1964), table 25.4.
const NODES = [0.148874338981631, 0.433395394129247, 0.679409568299024, 0.865063366688985, 0.973906528517172];
const WEIGHTS = [
  0.295524224714753, 0.269266719309996, 0.219086362515982, 0.149451349150581, 0.066671344308688,
];

/**
 * Arc length along the line from height `from` to height `to` (both mm), mm; negative when `to` lies above `from`.
 * Each span between knots is integrated by itself; for lines of garment size the error is below 1e-6 mm.
 */
export function seamLength(line: SmoothLine, from: number, to: number): number {
  if (to === from) return 0;
  if (to < from) return -seamLength(line, to, from);
  const { ys } = line;
  let length = 0;
  let start = from;
  // By index: an iterator over numbers makes an object for each of them, and truing measures hundreds of lines.
  for (let i = 0; i < ys.length; i += 1) {
    const knot = numberAt(ys, i);
    if (knot <= start) continue;
    if (knot >= to) break;
    length += lengthInSpan(line, start, knot);
    start = knot;
  }
  return length + lengthInSpan(line, start, to);
}

/**
 * The height, mm, reached after `length` mm (signed, down is positive) along the line from height `from`; the arc length up to it
 * is exact to 1e-9 mm. Newton's method, which takes three or four steps, safeguarded by bisection: a step that leaves the bracket
 * or does not halve the error is replaced by a halving of the bracket, so that it always converges.
 */
export function heightAtLength(line: SmoothLine, from: number, length: number): number {
  // A line is never shorter than its drop, so the height lies between `from` and `from + length`.
  let least = Math.min(from, from + length);
  let most = Math.max(from, from + length);
  let y = from + length;
  let last = Number.POSITIVE_INFINITY;
  for (let step = 0; step < 100; step += 1) {
    const error = seamLength(line, from, y) - length;
    if (Math.abs(error) < 1e-9) break;
    if (error > 0) most = y;
    else least = y;
    const next = y - error / Math.hypot(1, slopeAt(line, y));
    const converges = Math.abs(error) < last / 2 && next > least && next < most;
    y = converges ? next : (least + most) / 2;
    last = Math.abs(error);
  }
  return y;
}

/** Arc length between two heights of one span, mm: the quadrature of its derivative. */
function lengthInSpan(line: SmoothLine, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  const polynomial = slopePolynomial(line, middle);
  let sum = 0;
  for (let i = 0; i < NODES.length; i += 1) {
    const away = half * numberAt(NODES, i);
    sum +=
      numberAt(WEIGHTS, i) *
      (lengthPerDrop(polynomial, middle - away) + lengthPerDrop(polynomial, middle + away));
  }
  return sum * half;
}

/** Arc length for each mm of height at height `y`: √(1 + (dx/dy)²), not below 1. */
function lengthPerDrop({ at, constant, linear, square }: SlopePolynomial, y: number): number {
  const slope = constant + (y - at) * (linear + (y - at) * square);
  return Math.sqrt(1 + slope * slope);
}
