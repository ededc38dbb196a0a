// Places on an edge, with the directions along it and out of the panel.

import { distance, nearestFraction, type Point, polylineLength } from '../../engine';

export interface EdgePlace {
  readonly at: Point;
  /** Unit vector along the edge. */
  readonly along: Point;
  /** Unit vector out of the panel: pieces run counter-clockwise as seen on paper. */
  readonly out: Point;
}

/** The place at a fraction of an edge's length; null on an edge of no length. */
export function placeAlong(points: readonly Point[], fraction: number): EdgePlace | null {
  let rest = polylineLength(points) * fraction;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = distance(a, b);
    if (length > 0 && (rest <= length || i === points.length - 1))
      return placeOn(a, b, Math.min(1, rest / length));
    rest -= length;
  }
  return null;
}

/** The place on an edge nearest to a point; null on an edge of no length. */
export function placeNear(points: readonly Point[], point: Point): EdgePlace | null {
  let best: EdgePlace | null = null;
  let least = Infinity;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if (a.x === b.x && a.y === b.y) continue;
    const t = nearestFraction(a, b, point);
    const away = Math.hypot(a.x + (b.x - a.x) * t - point.x, a.y + (b.y - a.y) * t - point.y);
    if (away < least) {
      least = away;
      best = placeOn(a, b, t);
    }
  }
  return best;
}

/** The length of a ray until it first crosses a closed ring, mm; null when it never does. */
export function reachTo(ring: readonly Point[], from: Point, direction: Point): number | null {
  let least: number | null = null;
  let a = ring[ring.length - 1];
  for (const b of ring) {
    if (a) {
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const turn = direction.x * dy - direction.y * dx;
      const length = ((a.x - from.x) * dy - (a.y - from.y) * dx) / turn;
      const part = ((a.x - from.x) * direction.y - (a.y - from.y) * direction.x) / turn;
      if (turn !== 0 && part >= 0 && part <= 1 && length >= 0 && (least === null || length < least))
        least = length;
    }
    a = b;
  }
  return least;
}

function placeOn(a: Point, b: Point, t: number): EdgePlace {
  const length = distance(a, b);
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  return {
    at: { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t },
    along,
    out: { x: -along.y, y: along.x },
  };
}
