// A section of a ring replaced by another line: the corners of a turned-up hem, put back into a cut line from which loops were
// removed.

import { distanceToChord, nearestFraction } from '../chord';
import { at } from '../lists';
import { distance, type Point } from '../point';

/**
 * A ring that follows `section` between the places on it where `section` begins and ends, and the ring elsewhere. Null where an
 * end of `section` does not lie on the ring.
 *
 * @param ring its end is not repeated, nor is that of the result
 * @param section runs in the ring's own direction
 * @param nearMm tolerance: an end lies on the ring when it is no farther from it than this, mm
 */
export function replaceSection(
  ring: readonly Point[],
  section: readonly Point[],
  nearMm: number,
): Point[] | null {
  const start = section[0];
  const end = section.at(-1);
  const from = start && nearestOnRing(ring, start, nearMm);
  const to = end && nearestOnRing(ring, end, nearMm);
  if (!from || !to) return null;
  const chords = ring.length;
  // Where both ends lie on one chord, the section either replaces that part of the chord or all of the rest.
  const wholeRing = from.chord === to.chord && to.fraction >= from.fraction ? chords : 0;
  const count = wholeRing || (from.chord - to.chord + chords) % chords;
  const others = Array.from({ length: count }, (_, i) => at(ring, (to.chord + 1 + i) % chords));
  const isEnd = (point: Point): boolean => distance(point, start) <= nearMm || distance(point, end) <= nearMm;
  return [...section, ...others.filter((point) => !isEnd(point))];
}

/**
 * The chord of a ring nearest to a point, by the index of its start, and the fraction of it that is nearest, 0 to 1. Null where
 * none is as near as `nearMm`. Of two equally near ones it is the later.
 */
function nearestOnRing(
  ring: readonly Point[],
  point: Point,
  nearMm: number,
): { chord: number; fraction: number } | null {
  let nearest: { chord: number; fraction: number } | null = null;
  let least = nearMm;
  for (const [chord, a] of ring.entries()) {
    const b = at(ring, (chord + 1) % ring.length);
    const off = distanceToChord(a, b, point);
    if (off > least || distance(a, b) === 0) continue;
    least = off;
    nearest = { chord, fraction: nearestFraction(a, b, point) };
  }
  return nearest;
}
