// SVG path data from points and lines of a draft, rounded to 0.01 mm.

import { type Point, pointsDown, type SmoothLine } from '../../engine';

const rounded = (value: number): string => String(Math.round(value * 100) / 100);

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
