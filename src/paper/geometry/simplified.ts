// A line with fewer points, for what needs no more than its place.

import { distanceToChord, type Point } from '../../engine';

/**
 * A polyline without the points that lie nearer to their chord than `within`, mm; its ends stay.
 * D. H. Douglas and T. K. Peucker, "Algorithms for the reduction of the number of points required to represent a digitized line or
 * its caricature", Cartographica 10 (1973).
 */
export function simplified(points: readonly Point[], within: number): Point[] {
  const keep = new Uint8Array(points.length);
  keep[0] = 1;
  keep[points.length - 1] = 1;
  const spans: [number, number][] = [[0, points.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    let [farthest, most] = [-1, within];
    for (let i = from + 1; i < to; i += 1) {
      const away = distanceToChord(points[from] as Point, points[to] as Point, points[i] as Point);
      if (away > most) [farthest, most] = [i, away];
    }
    if (farthest < 0) continue;
    keep[farthest] = 1;
    spans.push([from, farthest], [farthest, to]);
  }
  return points.filter((_, i) => keep[i] === 1);
}
