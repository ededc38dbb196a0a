// Points through which an edge is drawn.

import { distance, type Point, polylineLength } from '../../../engine';
import { pointAt } from '../../geometry/offsetEdge';
import type { SheetLengths } from './sheetLengths';

/** The points of an edge, beginning at the end nearer to the centre line. */
export function fromCentre(points: readonly Point[]): readonly Point[] {
  const [first, last] = [points[0], points[points.length - 1]];
  return first && last && first.x > last.x ? [...points].reverse() : points;
}

/** An edge that deviates less than this from a straight line needs no points between its ends. Divisions of the tape. */
const STRAIGHT_PARTS = 0.5;
const CORNER_RAD = Math.PI / 18;

/** The points to draw an edge through: its ends, its corners, and the quarter points of each curved part between them. */
export function guidesOn(points: readonly Point[], lengths: SheetLengths): Point[] {
  const corners = points.flatMap((point, i) => {
    const [before, after] = [points[i - 1], points[i + 1]];
    return !before || !after || turnAt(before, point, after) > CORNER_RAD ? [i] : [];
  });
  return corners.flatMap((start, i) => {
    const end = corners[i + 1];
    if (end === undefined) return [points[start] as Point];
    const part = points.slice(start, end + 1);
    const length = polylineLength(part);
    const [from, to] = [part[0] as Point, part[part.length - 1] as Point];
    const strays = part.some((point) => awayFrom(from, to, point) > STRAIGHT_PARTS * lengths.divisionMm);
    const between = strays ? [0.25, 0.5, 0.75].map((share) => pointAt(part, share * length)) : [];
    return [from, ...between];
  });
}

function turnAt(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

function awayFrom(from: Point, to: Point, { x, y }: Point): number {
  const length = distance(from, to) || 1;
  return Math.abs((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / length;
}
