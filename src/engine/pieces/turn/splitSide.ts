// A side seam parted where a dart opens in it, on both its mates at the same length.

import { at } from '../../geometry/lists';
import { between, distance, type Point } from '../../geometry/point';

/**
 * A side edge, walked up as outlines run, parted `below` mm under its upper end. Both parts have the point between them. `below` is less
 * than the edge is long.
 */
export function splitFromTop(points: readonly Point[], below: number): { lower: Point[]; upper: Point[] } {
  let left = below;
  for (let i = points.length - 1; i > 0; i -= 1) {
    const [foot, top] = [at(points, i - 1), at(points, i)];
    const chord = distance(foot, top);
    if (left < chord) {
      const place = between(top, foot, left / chord);
      return { lower: [...points.slice(0, i), place], upper: [place, ...points.slice(i)] };
    }
    left -= chord;
  }
  return { lower: points.slice(0, 1), upper: [...points] };
}

/** How far a point on a side edge that is walked up lies below its upper end, along it, mm. */
export function lengthFromTop(points: readonly Point[], place: Point, whole: number): number {
  let passed = 0;
  let [best, along] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [at(points, i - 1), at(points, i)];
    const chord = distance(a, b);
    const off = distance(a, place) + distance(place, b) - chord;
    if (off < best) [best, along] = [off, passed + distance(a, place)];
    passed += chord;
  }
  return whole - along;
}
