// The part of a long edge below a height: what a bone may take of it.

import type { Point } from '../../engine';

/** A line from its lower end up to height `y`, mm, or to its own upper end where that lies lower. Empty when all of it lies above. */
export function belowHeight(points: readonly Point[], y: number): readonly Point[] {
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last) return [];
  const up = first.y < last.y ? [...points].reverse() : points;
  const end = up.findIndex((point) => point.y < y);
  if (end < 0) return up;
  const [a, b] = [up[end - 1], up[end]];
  if (!a || !b) return [];
  const t = (a.y - y) / (a.y - b.y);
  return [...up.slice(0, end), { x: a.x + (b.x - a.x) * t, y }];
}
