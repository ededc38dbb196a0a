// Upright boxes around points, and points moved by an offset.

import type { Point } from '../../engine';

/** An upright box on paper, mm; y runs down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest upright box around points; null around none. */
export function boxAround(points: readonly Point[]): Box | null {
  if (points.length === 0) return null;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, top, right, bottom };
}

/** The box around points, larger by `by` on every side, as a ring; none around no points. */
export function ringAround(points: readonly Point[], by: number): Point[] {
  const box = boxAround(points);
  if (!box) return [];
  const [left, top, right, bottom] = [box.left - by, box.top - by, box.right + by, box.bottom + by];
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** Points moved by an offset. */
export const moved = (points: readonly Point[], by: Point): Point[] =>
  points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
