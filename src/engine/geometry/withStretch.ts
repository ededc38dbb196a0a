// A stretch of a cut line set into another: a hem turned up, where the line round the rest of the piece had to be untangled.

import { distance, type Point } from './point';

/**
 * A ring that follows `stretch` from where that begins on it to where that ends on it, instead of going its own way there; null
 * where it does not begin and end on the ring.
 *
 * @param nearMm an end lies on the ring when it is no farther from it than this
 */
export function withStretch(
  ring: readonly Point[],
  stretch: readonly Point[],
  nearMm: number,
): Point[] | null {
  const [first, last] = [stretch[0], stretch.at(-1)];
  const from = first && placeOn(ring, first, nearMm);
  const to = last && placeOn(ring, last, nearMm);
  if (!from || !to) return null;
  const chords = ring.length;
  // On one chord the stretch goes all round, or comes back before where it began.
  const round = from.chord === to.chord && to.along >= from.along ? chords : 0;
  const count = round || (from.chord - to.chord + chords) % chords;
  const others = Array.from({ length: count }, (_, i) => ring[(to.chord + 1 + i) % chords] as Point);
  const isEnd = (point: Point): boolean =>
    distance(point, first) <= nearMm || distance(point, last) <= nearMm;
  return [...stretch, ...others.filter((point) => !isEnd(point))];
}

/** The chord of a ring that runs nearest past a point, by the index of its start, and how far along it, mm; null where none is near. */
function placeOn(
  ring: readonly Point[],
  point: Point,
  nearMm: number,
): { chord: number; along: number } | null {
  let nearest: { chord: number; along: number } | null = null;
  let least = nearMm;
  for (const [chord, a] of ring.entries()) {
    const b = ring[(chord + 1) % ring.length] as Point;
    const length = distance(a, b);
    if (length === 0) continue;
    const dot = ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / length;
    const along = Math.min(length, Math.max(0, dot));
    const foot = { x: a.x + ((b.x - a.x) * along) / length, y: a.y + ((b.y - a.y) * along) / length };
    const off = distance(foot, point);
    if (off > least) continue;
    least = off;
    nearest = { chord, along };
  }
  return nearest;
}
