// Whether a ring really lies round some points: the check on a cut line that had to be untangled.

import type { Point } from './point';

/**
 * True when every point lies inside the closed ring and no nearer to it than `least` mm; with a negative `least`,
 * as far outside it as that.
 */
export function hasClearance(ring: readonly Point[], points: readonly Point[], least: number): boolean {
  return points.every((point) => {
    let inside = false;
    let nearest = Number.POSITIVE_INFINITY;
    let last = ring[ring.length - 1] as Point;
    for (const next of ring) {
      if (last.y > point.y !== next.y > point.y) {
        const x = last.x + ((next.x - last.x) * (point.y - last.y)) / (next.y - last.y);
        if (point.x < x) inside = !inside;
      }
      nearest = Math.min(nearest, squareToChord(last, next, point));
      last = next;
    }
    return least > 0 ? inside && nearest >= least * least : inside || nearest <= least * least;
  });
}

function squareToChord(a: Point, b: Point, point: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t =
    square === 0 ? 0 : Math.min(1, Math.max(0, ((point.x - a.x) * dx + (point.y - a.y) * dy) / square));
  const [x, y] = [a.x + t * dx - point.x, a.y + t * dy - point.y];
  return x * x + y * y;
}
