// SVG path data from points and lines of a draft, rounded to 0.01 mm.

import { type Point, pointsDown, type SmoothLine } from '../../../engine';

/** What is written after the point for each count of hundredths: nothing, `.01` to `.99`, without a zero at the end. */
const FRACTIONS: readonly string[] = Array.from({ length: 100 }, (_, i) => String(i / 100).slice(1));

/** A number to two decimals. Put together from two whole numbers, which takes a third of the time: every pull writes thousands. */
function rounded(value: number): string {
  const hundredths = Math.round(value * 100);
  const size = Math.abs(hundredths);
  const whole = Math.trunc(size / 100);
  return `${hundredths < 0 ? '-' : ''}${whole}${FRACTIONS[size - 100 * whole]}`;
}

/** An open path through points; empty for none. */
export function pathThrough(points: readonly Point[]): string {
  let path = '';
  for (const { x, y } of points) path += `${path === '' ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`;
  return path;
}

/** A closed path through a ring whose end is not repeated. */
export const closedPath = (ring: readonly Point[]): string =>
  ring.length > 0 ? `${pathThrough(ring)}Z` : '';

/** A smooth line between two heights, placed by `place`. */
export function pathDown(line: SmoothLine, from: number, to: number, place: (point: Point) => Point): string {
  return pathThrough(pointsDown(line, from, to).map(place));
}
