// Whether a hem allowance covers, once it is turned up, what it should: the proof of a cut line at a turned hem.

import { distance, type Point } from './point';

/**
 * The most by which the cloth below a hem, turned up square to it, falls short of the cloth it comes to lie on or of its
 * depth, whichever is less; mm, 0 or a little more where it falls short nowhere.
 *
 * @param ring the cut line
 * @param hem the sew line, with the cloth on its right as seen on paper
 * @param depth the hem allowance, mm
 * @param onFold the chord along the fold the piece is cut on, where it ends at the hem: there the cloth goes on
 */
export function hemShort(
  ring: readonly Point[],
  hem: readonly Point[],
  depth: number,
  onFold: readonly [Point, Point] | null,
): number {
  const chords = ring.flatMap((a, i): [Point, Point][] => {
    const b = ring[(i + 1) % ring.length] as Point;
    return onFold && isBeside(a, onFold) && isBeside(b, onFold) ? [] : [[a, b]];
  });
  let most = 0;
  for (let i = 1; i < hem.length; i += 1) {
    const [p, q] = [hem[i - 1] as Point, hem[i] as Point];
    const length = distance(p, q);
    if (length === 0) continue;
    const middle = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
    const out = { x: (p.y - q.y) / length, y: (q.x - p.x) / length };
    const above = reach(chords, middle, { x: -out.x, y: -out.y });
    most = Math.max(most, Math.min(depth, above) - reach(chords, middle, out));
  }
  return most;
}

/** Clipping moves a point by less than this. mm */
const ROUNDED_MM = 1e-4;

/** Whether a point lies on the line of a chord. */
function isBeside({ x, y }: Point, [a, b]: readonly [Point, Point]): boolean {
  const across = (x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x);
  return Math.abs(across) <= ROUNDED_MM * distance(a, b);
}

/** How far a ray of unit direction goes until it meets a chord, mm; infinite where it meets none. */
function reach(chords: readonly (readonly [Point, Point])[], from: Point, way: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const [p, q] of chords) {
    const [before, after] = [side(p, from, way), side(q, from, way)];
    if (before > 0 === after > 0) continue;
    const t = before / (before - after);
    const ahead = (p.x + (q.x - p.x) * t - from.x) * way.x + (p.y + (q.y - p.y) * t - from.y) * way.y;
    if (ahead >= 0 && ahead < nearest) nearest = ahead;
  }
  return nearest;
}

const side = (point: Point, from: Point, way: Point): number =>
  way.x * (point.y - from.y) - way.y * (point.x - from.x);
