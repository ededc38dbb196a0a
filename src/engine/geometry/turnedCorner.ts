// The corner of a hem that is turned up: its allowance is the mirror image of the seam allowance above the fold, so that the
// one comes to lie on the other and no cloth is short.

import { chordMeeting } from './chordMeeting';
import type { Corner, MovedEdge } from './cutCorner';
import { between, distance, type Point } from './point';

/** Fold and hem may meet the cut line so many allowances away; a corner that is sharper cannot be turned. */
const REACH_LIMIT = 4;

/** Where lines that should cross run nearly side by side. */
const PARALLEL = 1e-6;

/**
 * Mirrors the cut line of a seam about the fold of the hem beside it, down to the hem's own cut line; the fold is the hem's
 * tangent at the corner. Null where it does not reach that, or only far away: the seam is shorter than the hem is deep, or
 * runs nearly along the fold.
 *
 * @param hemFirst whether `edge` is the hem and `next` the seam, or the other way round
 * @param hem the hem's sew line; its chord at the corner is its tangent there
 */
export function turnedCorner(
  edge: MovedEdge,
  next: MovedEdge,
  hemFirst: boolean,
  hem: readonly Point[],
): Corner | null {
  const [from, to] = (hemFirst ? hem.slice(-2) : hem) as [Point, Point];
  const length = distance(from, to) || 1;
  const out = { x: (from.y - to.y) / length, y: (to.x - from.x) / length };
  const fold = { at: edge.end, out };
  if (!hemFirst) {
    const turned = mirrorSeam(edge, next, fold);
    return turned && { ...turned, selfIntersects: false };
  }
  // Walked the other way round, it is the seam that comes first.
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

type Moved = Pick<MovedEdge, 'points' | 'allowance'>;

const reversed = ({ points, allowance }: Moved): Moved => ({ points: [...points].reverse(), allowance });

/**
 * @param seam towards the corner
 * @param hem away from the corner
 * @param fold the corner itself and the unit way out of the cloth
 */
function mirrorSeam(
  { points: seam, allowance: seamMm }: Moved,
  { points: hem, allowance: hemMm }: Moved,
  { at, out }: { readonly at: Point; readonly out: Point },
): Omit<Corner, 'selfIntersects'> | null {
  const depth = (point: Point): number => (point.x - at.x) * out.x + (point.y - at.y) * out.y;
  const onFold = meetingWithFold(seam, depth);
  if (!onFold || far(onFold.at, at, seamMm)) return null;
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
  const lengthened = [
    between(
      hem[1] as Point,
      hem[0] as Point,
      1 + (2 * REACH_LIMIT * (seamMm + hemMm)) / distance(hem[0] as Point, hem[1] as Point),
    ),
    ...hem.slice(1),
  ];
  for (let i = 1; i < mirrored.length; i += 1) {
    const met = chordMeeting(mirrored[i - 1] as Point, mirrored[i] as Point, lengthened);
    if (!met) continue;
    if (far(met.at, onFold.at, hemMm)) return null;
    return { points: [...mirrored.slice(0, i), met.at], fromEnd: onFold.fromEnd, fromStart: met.index };
  }
  return null;
}

const far = (a: Point, b: Point, allowance: number): boolean =>
  distance(a, b) > REACH_LIMIT * allowance + PARALLEL;

/** Where the seam's cut line, lengthened if need be, meets the fold, and how many points at its end lie at or beyond that. */
function meetingWithFold(
  seam: readonly Point[],
  depth: (point: Point) => number,
): { at: Point; fromEnd: number } | null {
  for (let i = seam.length - 2; i >= 0; i -= 1) {
    const [p, q] = [seam[i] as Point, seam[i + 1] as Point];
    const [above, below] = [depth(p), depth(q)];
    if (above >= 0) continue;
    if (below - above < PARALLEL * Math.hypot(q.x - p.x, q.y - p.y)) return null;
    const t = -above / (below - above);
    return { at: between(p, q, t), fromEnd: seam.length - 1 - i };
  }
  return null;
}
