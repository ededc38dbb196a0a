// The room that an outline needs on the cloth: everything within a distance of it, with few corners.

import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { distance, distanceToChord, type Point } from '../../engine';

/** What the room may be larger than it needs to be, mm; the larger, the fewer corners it has. */
const SPARE_MM = 0.2;

/** Decimals of a millimetre that the offset is worked out to. */
const PRECISION = 5;

/**
 * A simple ring that has everything within `clear` mm of the ring given, and its box is just that much larger on every side.
 * Null where the offset comes to more than one outline.
 *
 * @param ring simple, its end not repeated, mm
 */
export function roomAround(ring: readonly Point[], clear: number): Point[] | null {
  const [box, needed] = [boxOf(ring), clear + SPARE_MM];
  const upright = area(ring) < 0 ? [...ring].reverse() : [...ring];
  const paths = inflatePathsD(
    [upright],
    needed,
    JoinType.Round,
    EndType.Polygon,
    2,
    PRECISION,
    SPARE_MM / 10,
  );
  const outer = paths.filter((path) => area(path) > 0);
  const [only] = outer;
  if (!only || outer.length > 1) return null;
  // Corners are left out by less than the spare room, which the offset itself uses up a tenth of.
  const few: Point[] = withFewCorners(only, SPARE_MM * 0.8);
  return [
    ({ x }: Point) => x - (box.left - clear),
    ({ x }: Point) => box.right + clear - x,
    ({ y }: Point) => y - (box.top - clear),
    ({ y }: Point) => box.bottom + clear - y,
  ].reduce(clipped, few);
}

/** The part of a ring where `within` is not negative, a linear function (Sutherland and Hodgman 1974). */
function clipped(ring: readonly Point[], within: (point: Point) => number): Point[] {
  return ring.flatMap((to, i) => {
    const from = ring[(i + ring.length - 1) % ring.length] as Point;
    const [a, b] = [within(from), within(to)];
    const kept = b >= 0 ? [to] : [];
    if (a >= 0 === b >= 0) return kept;
    const t = a / (a - b);
    return [{ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }, ...kept];
  });
}

function boxOf(ring: readonly Point[]) {
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

const area = (ring: readonly Point[]): number =>
  ring.reduce((sum, { x, y }, i) => {
    const next = ring[(i + 1) % ring.length] as Point;
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);

/** The ring without corners that lie within `off` mm of the lines left (Douglas and Peucker 1973), from two far corners. */
function withFewCorners(ring: readonly Point[], off: number): Point[] {
  const first = extreme(ring, ({ x, y }) => x + y);
  const turned = [...ring.slice(first), ...ring.slice(0, first)];
  const start = turned[0] as Point;
  const far = extreme(turned, (point) => distance(point, start));
  const closed = [...turned, start];
  return [
    ...thinned(closed.slice(0, far + 1), off).slice(0, -1),
    ...thinned(closed.slice(far), off).slice(0, -1),
  ];
}

function extreme(ring: readonly Point[], of: (point: Point) => number): number {
  let found = 0;
  for (const [i, point] of ring.entries()) if (of(point) > of(ring[found] as Point)) found = i;
  return found;
}

function thinned(line: readonly Point[], off: number): Point[] {
  const [a, b] = [line[0] as Point, line[line.length - 1] as Point];
  let [farthest, most] = [-1, off];
  for (let i = 1; i + 1 < line.length; i += 1) {
    const far = distanceToChord(a, b, line[i] as Point);
    if (far > most) [farthest, most] = [i, far];
  }
  if (farthest < 0) return [a, b];
  return [...thinned(line.slice(0, farthest + 1), off).slice(0, -1), ...thinned(line.slice(farthest), off)];
}
