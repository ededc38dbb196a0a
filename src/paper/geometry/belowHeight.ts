// Cuts a line off at a height.

import type { Point } from '../../engine';

/**
 * The part of a line below height `y`, mm, from its lower end up. The whole line where it ends below `y`; empty where all of it
 * lies above. y runs down.
 */
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
