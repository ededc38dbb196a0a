// Edge continuity: the angle at which top edge and hem run across each sewn seam, read off the finished outlines.

import type { Point } from '../geometry/point';
import type { FinishedSeam } from '../pieces/finishedSeam';
import type { Edge, EdgeReference, Piece } from '../pieces/piece';
import type { PieceIdentity, SeamIdentity } from '../terms/identity';

export interface EdgeContinuityRow {
  readonly seam: SeamIdentity;
  /** What runs across the seam; neckline and armhole cross the shoulder seam. */
  readonly edge: 'top' | 'hem' | 'neckline' | 'armhole';
  /** Angle across the sewn seam, rad; π is a straight run. A centre edge is taken with its mirror image. */
  readonly angle: number;
  /** The angle asked for, rad: π, or the turn of a corner that is wanted there. */
  readonly asked: number;
  /** Where the crossing lies on the first mate. */
  readonly at: { readonly piece: PieceIdentity; readonly point: Point };
}

/** Two rows for each seam, of top edge and hem. A seam of which a piece was not made has none. */
export function edgeContinuity(
  seams: readonly FinishedSeam[],
  pieces: readonly Piece[],
): EdgeContinuityRow[] {
  return seams.flatMap(({ seam, a, b, askedAngle }) =>
    (['top', 'hem'] as const).flatMap((edge): EdgeContinuityRow[] => {
      const onA = corner(pieces, a, edge);
      const onB = b ? corner(pieces, b, edge) : onA;
      if (!onA || !onB) return [];
      const at = { piece: a.piece, point: onA.point };
      return [{ seam, edge, angle: onA.angle + onB.angle, asked: askedAngle[edge], at }];
    }),
  );
}

/** The angle inside a piece between an edge of a seam and the top edge or hem beside it. */
function corner(
  pieces: readonly Piece[],
  { piece, edge: index }: EdgeReference,
  edge: 'top' | 'hem',
): { angle: number; point: Point } | null {
  const edges = pieces.find((each) => each.id === piece.id)?.edges ?? [];
  const seamPoints = edges[index]?.points;
  if (!seamPoints) return null;
  // Edges run counter-clockwise: an edge that is walked downwards has the hem after it, one walked upwards before it.
  const isDownwards = (seamPoints[0]?.y ?? 0) < (seamPoints.at(-1)?.y ?? 0);
  const next = isDownwards === (edge === 'hem') ? index + 1 : index - 1;
  const beside = edges.at(next === edges.length ? 0 : next);
  const edgePoints = beside?.points;
  // A dart's point lies on no edge.
  if (!edgePoints || !isAt(beside.role, edge)) return null;
  const seamEnd = endTowards(seamPoints, edgePoints);
  const edgeEnd = endTowards(edgePoints, seamPoints);
  if (!seamEnd || !edgeEnd) return null;
  const seamFirst = seamPoints.at(-1) === seamEnd.from;
  const [before, after] = seamFirst ? [seamEnd.to, edgeEnd.to] : [edgeEnd.to, seamEnd.to];
  return { angle: insideAngle(before, seamEnd.from, after), point: seamEnd.from };
}

/** Shoulder and armhole stand for the top edge of a shouldered block. */
const isAt = (role: Edge['role'], edge: 'top' | 'hem'): boolean =>
  edge === 'hem' ? role === 'hem' : role === 'top' || role === 'shoulder' || role === 'armhole';

/** The end that `points` shares with `other`, and the next point inwards. */
function endTowards(points: readonly Point[], other: readonly Point[]): { from: Point; to: Point } | null {
  const first = points[0];
  const last = points[points.length - 1];
  const shared = [other[0], other[other.length - 1]];
  const [from, to] = shared.includes(first) ? [first, points[1]] : [last, points[points.length - 2]];
  return from && to ? { from, to } : null;
}

/**
 * The angle inside the outline where one edge, coming in from `before`, passes into the next, going on to `after`; the
 * outline runs counter-clockwise as seen on paper. More than π at an inward corner.
 */
export function insideAngle(before: Point, at: Point, after: Point): number {
  const a = { x: at.x - before.x, y: at.y - before.y };
  const b = { x: after.x - at.x, y: after.y - at.y };
  return Math.PI + Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}
