// Points along an edge at even distances, so that two edges sewn together have the same ones.

import { distance, type Point } from '../../geometry/point';

/** The lengths from the start of a polyline to each of its points, mm. */
function lengthsAlong(points: readonly Point[]): number[] {
  const lengths = [0];
  for (let i = 1; i < points.length; i += 1)
    lengths.push(lengths[i - 1]! + distance(points[i - 1]!, points[i]!));
  return lengths;
}

/** `count` + 1 points along a polyline, evenly apart along it; both ends are its own. */
export function sampledEvenly(points: readonly Point[], count: number): Point[] {
  const lengths = lengthsAlong(points);
  const total = lengths[lengths.length - 1]!;
  let k = 0;
  return Array.from({ length: count + 1 }, (_, i): Point => {
    if (i === 0) return points[0]!;
    if (i === count) return points[points.length - 1]!;
    const at = (total * i) / count;
    while (k < lengths.length - 2 && lengths[k + 1]! < at) k += 1;
    const span = lengths[k + 1]! - lengths[k]!;
    const part = span > 0 ? (at - lengths[k]!) / span : 0;
    const [a, b] = [points[k]!, points[k + 1]!];
    return { x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) };
  });
}
