// The corner of a hem that is turned up: its allowance is the mirror image of the seam allowance above the fold, so that the
// one comes to lie on the other and no cloth is short.

import { firstIntersection } from '../firstIntersection';
import { at, first, last, pairs } from '../lists';
import { between, distance, type Point } from '../point';
import type { Corner } from './joinCorner';
import type { OffsetEdge } from './offsetPolyline';

/** The fold and the hem intersect the cut line at most this many allowances away; a sharper corner cannot be turned. */
const REACH_LIMIT = 4;

/** Lines that turn by less than this are parallel. rad */
const PARALLEL_RAD = 1e-6;

/**
 * Mirrors the cut line of a seam about the fold of the hem beside it, down to the hem's own cut line; the fold is the hem's
 * tangent at the corner. Null where the image does not reach the hem's cut line, or only more than {@link REACH_LIMIT} allowances
 * away: the seam is shorter than the hem is deep, or runs nearly along the fold.
 *
 * @param hemFirst whether `edge` is the hem and `next` the seam, or the other way round
 * @param hem the hem's sew line; its chord at the corner is its tangent there
 */
export function turnedCorner(
  edge: OffsetEdge,
  next: OffsetEdge,
  hemFirst: boolean,
  hem: readonly Point[],
): Corner | null {
  const [from, to] = hemFirst ? [at(hem, hem.length - 2), last(hem)] : [first(hem), at(hem, 1)];
  const length = distance(from, to) || 1;
  const out = { x: (from.y - to.y) / length, y: (to.x - from.x) / length };
  const fold = { corner: edge.end, out };
  if (!hemFirst) {
    const turned = mirrorSeam(edge, next, fold);
    return turned && { ...turned, selfIntersects: false };
  }
  // In the opposite direction the seam comes first.
  const turned = mirrorSeam(reversed(next), reversed(edge), fold);
  return (
    turned && {
      points: [...turned.points].reverse(),
      fromEnd: turned.fromStart,
      fromStart: turned.fromEnd,
      selfIntersects: false,
    }
  );
}

type Offset = Pick<OffsetEdge, 'points' | 'allowance'>;

const reversed = ({ points, allowance }: Offset): Offset => ({ points: [...points].reverse(), allowance });

/**
 * @param seam its points run towards the corner
 * @param hem its points run away from the corner
 * @param fold the corner itself, and the unit normal of the fold, out of the cloth
 */
function mirrorSeam(
  { points: seam, allowance: seamMm }: Offset,
  { points: hem, allowance: hemMm }: Offset,
  { corner, out }: { readonly corner: Point; readonly out: Point },
): Omit<Corner, 'selfIntersects'> | null {
  const depth = (point: Point): number => (point.x - corner.x) * out.x + (point.y - corner.y) * out.y;
  const onFold = intersectionWithFold(seam, depth);
  if (!onFold || isFar(onFold.at, corner, seamMm)) return null;
  const image = (point: Point): Point => {
    const by = 2 * depth(point);
    return { x: point.x - by * out.x, y: point.y - by * out.y };
  };
  const mirrored = [
    onFold.at,
    ...seam
      .slice(0, seam.length - onFold.fromEnd)
      .reverse()
      .map(image),
  ];
  // Where the seam leans in towards the fold, its image runs out past the end of the hem.
  const start = first(hem);
  const next = at(hem, 1);
  const extension = 1 + (2 * REACH_LIMIT * (seamMm + hemMm)) / distance(start, next);
  const extended = [between(next, start, extension), ...hem.slice(1)];
  for (const [i, [from, to]] of pairs(mirrored).entries()) {
    const met = firstIntersection(from, to, extended);
    if (!met) continue;
    if (isFar(met.at, onFold.at, hemMm)) return null;
    return { points: [...mirrored.slice(0, i + 1), met.at], fromEnd: onFold.fromEnd, fromStart: met.index };
  }
  return null;
}

const isFar = (a: Point, b: Point, allowance: number): boolean =>
  distance(a, b) > REACH_LIMIT * allowance + PARALLEL_RAD;

/**
 * The intersection of the seam's cut line, extended if need be, with the fold, and how many points at its end lie at or beyond
 * that. Null where the two are parallel or do not meet.
 */
function intersectionWithFold(
  seam: readonly Point[],
  depth: (point: Point) => number,
): { at: Point; fromEnd: number } | null {
  for (let i = seam.length - 2; i >= 0; i -= 1) {
    const p = at(seam, i);
    const q = at(seam, i + 1);
    const above = depth(p);
    const below = depth(q);
    if (above >= 0) continue;
    if (below - above < PARALLEL_RAD * Math.hypot(q.x - p.x, q.y - p.y)) return null;
    const t = -above / (below - above);
    return { at: between(p, q, t), fromEnd: seam.length - 1 - i };
  }
  return null;
}
