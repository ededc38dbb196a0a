// A side seam parted where a dart opens in it, on both its mates at the same length.

import { at } from '../../geometry/lists';
import { between, distance, type Point } from '../../geometry/point';
import type { SidePart } from '../../terms/identity';

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

/** A mark nearer than this to a dart's end is left out, as at the end of a seam. mm */
const CLEAR_OF_MARK_MM = 6;

/** On which part of a side edge that is parted `below` mm under its upper end a mark stands; null for one too near the parting. */
export function partOfMark(points: readonly Point[], mark: Point, below: number): SidePart | null {
  const along = lengthFromTop(points, mark);
  if (Math.abs(along - below) < CLEAR_OF_MARK_MM) return null;
  return along < below ? 'aboveDart' : 'belowDart';
}

/** How far a point on a side edge that is walked up lies below its upper end, along it, mm. */
function lengthFromTop(points: readonly Point[], place: Point): number {
  let passed = 0;
  let [best, along] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [at(points, i - 1), at(points, i)];
    const chord = distance(a, b);
    const off = distance(a, place) + distance(place, b) - chord;
    if (off < best) [best, along] = [off, passed + distance(a, place)];
    passed += chord;
  }
  return passed - along;
}
