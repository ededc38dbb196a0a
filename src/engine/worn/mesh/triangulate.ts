// A panel cut into triangles: Delaunay triangles of its outline and of a lattice inside it.

import Delaunator from 'delaunator';
import { distanceToRing } from '../../geometry/chord';
import { isInside } from '../../geometry/isInside';
import type { Point } from '../../geometry/point';

/** Points of the lattice keep so much of the mesh width from outline and darts. */
const CLEARANCE = 0.58;

/** A triangle smaller than this part of the square of the mesh width is left out: it lies along a straight edge. */
const LEAST_AREA = 1e-3;

/**
 * Points of a triangular lattice inside a ring and outside its holes.
 *
 * @param width of the mesh, mm
 */
export function latticeInside(
  ring: readonly Point[],
  holes: readonly (readonly Point[])[],
  width: number,
): Point[] {
  const xs = ring.map(({ x }) => x);
  const ys = ring.map(({ y }) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const row = (width * Math.sqrt(3)) / 2;
  const points: Point[] = [];
  let odd = false;
  for (let y = top + row / 2; y < bottom; y += row) {
    for (let x = left + (odd ? width / 2 : 0); x < right; x += width) {
      const point = { x, y };
      if (
        isInside(ring, point) &&
        distanceToRing(ring, point) > CLEARANCE * width &&
        holes.every((hole) => !isInside(hole, point) && distanceToRing(hole, point) > CLEARANCE * width)
      )
        points.push(point);
    }
    odd = !odd;
  }
  return points;
}

/** Triangles of the points that lie inside the ring and outside the holes, three indices of `points` each. */
export function trianglesOf(
  points: readonly Point[],
  ring: readonly Point[],
  holes: readonly (readonly Point[])[],
  width: number,
): number[] {
  const coordinates = new Float64Array(2 * points.length);
  for (const [i, { x, y }] of points.entries()) {
    coordinates[2 * i] = x;
    coordinates[2 * i + 1] = y;
  }
  const { triangles } = new Delaunator(coordinates);
  const kept: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [i, j, k] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const [a, b, c] = [points[i]!, points[j]!, points[k]!];
    const middle = { x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 };
    if (!isInside(ring, middle) || holes.some((hole) => isInside(hole, middle))) continue;
    const area = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    if (area >= LEAST_AREA * width * width) kept.push(i, j, k);
  }
  return kept;
}
