// What is wrong with a finished piece's cut line, measured on its points alone.

import type { Piece } from '../../../src/engine';
import { holds, isNear, selfMeeting } from './outline';

/**
 * A sentence for each fault: a cut line that meets itself, an end of a chord of the sew line that is outside it, or nearer to it than
 * the least allowance.
 *
 * @param closeMm flatness of the points and rounding
 */
export function cutLineFaults(piece: Piece, closeMm: number): string[] {
  const { cutLine, edges } = piece;
  const least = leastAllowance(piece);
  const faults = selfMeeting(cutLine) ? [`${piece.id}: the cut line meets itself`] : [];
  for (const { points } of edges)
    for (const point of points) {
      if (!holds(cutLine, point, closeMm)) faults.push(`${piece.id}: (${point.x}, ${point.y}) is outside`);
      if (least > closeMm && isNear(cutLine, point, least - closeMm))
        faults.push(`${piece.id}: (${point.x}, ${point.y}) is nearer than ${least} mm to the cut line`);
    }
  return faults;
}

/** The least allowance among the edges that lie at the cut line. */
const leastAllowance = ({ edges }: Piece): number =>
  Math.min(...edges.filter(({ dart }) => dart === undefined).map(({ allowance }) => allowance));
