// Edge continuity across the shoulder seam: the angles of neckline and armhole there, read off the finished outlines of front and
// back.

import type { Point } from '../geometry/point';
import type { Edge, Piece } from '../pieces/piece';
import { identifyShoulder, identityOf, type PieceIdentity } from '../terms/identity';
import { type EdgeContinuityRow, insideAngle } from './edgeContinuity';

/** The edges that cross a shoulder seam, with the role they have on a piece. */
const CROSSING = { neckline: 'top', armhole: 'armhole' } as const;

/** A row each for neckline and armhole; none without shoulders, or where a piece is missing. */
export function shoulderContinuity(pieces: readonly Piece[]): EdgeContinuityRow[] {
  return (['neckline', 'armhole'] as const).flatMap((edge): EdgeContinuityRow[] => {
    const [front, back] = (['front', 'back'] as const).map((block) =>
      meeting(
        pieces.filter((piece) => piece.block === block),
        CROSSING[edge],
      ),
    );
    if (!front || !back) return [];
    const at = { piece: front.piece, point: front.point };
    return [{ seam: identifyShoulder('whole'), edge, angle: front.angle + back.angle, asked: Math.PI, at }];
  });
}

/** Where the shoulder of a block meets an edge, and the angle inside the piece there. */
function meeting(
  block: readonly Piece[],
  role: Edge['role'],
): { piece: PieceIdentity; point: Point; angle: number } | null {
  for (const piece of block) {
    const [first] = piece.edges;
    for (const [i, edge] of piece.edges.entries()) {
      // The outline is closed: after the last edge comes the first.
      const next = (piece.edges[i + 1] ?? first) as Edge;
      if (![edge, next].some((each) => each.role === role)) continue;
      if (![edge, next].some((each) => each.role === 'shoulder')) continue;
      const [before, point, after] = [edge.points.at(-2), edge.points.at(-1), next.points[1]];
      if (before && point && after)
        return { piece: identityOf(piece), point, angle: insideAngle(before, point, after) };
    }
  }
  return null;
}
