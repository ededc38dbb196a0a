// The cut line of a piece whose darts are open in its edges: across each dart the cloth is cut so that it ends on the edge when the dart
// is folded.

import { type AllowedEdge, cutLineTurnedUp } from '../../geometry/offset/cutLine';
import type { Point } from '../../geometry/point';
import { peakOf } from '../dartMarks';
import type { Edge, Piece } from '../piece';

/** @param turnsHem whether the hem is turned up */
export const cutAcrossDarts = (
  { edges, cut }: Piece,
  turnsHem: boolean,
): ReturnType<typeof cutLineTurnedUp> => cutLineTurnedUp(edgesToCut(edges, cut.onFold, turnsHem));

/** The edges of a piece as it is cut: across each open dart the edge rises to a peak on the dart's fold. */
function edgesToCut(edges: readonly Edge[], isOnFold: boolean, turnsHem: boolean): AllowedEdge[] {
  const runs: (AllowedEdge & { points: Point[] })[] = [];
  let across = false;
  for (const [i, { at: place, role, dart, allowance, points }] of edges.entries()) {
    const run = runs.at(-1);
    const next = edges[i + 1];
    if (dart && !across) {
      const peak =
        run && next && peakOf(run.points, { inner: [...points].reverse(), outer: next.points }, 'hem');
      if (peak) run.points.push(peak);
      across = true;
    } else if (!dart && run && across) {
      run.points.push(...points);
      across = false;
    } else if (!dart)
      runs.push({
        points: [...points],
        allowance,
        ...(role === 'centre' ? { onFold: isOnFold } : {}),
        ...(place === 'hem' && turnsHem ? { turnedUp: { start: !isOnFold, end: true } } : {}),
      });
  }
  return runs;
}
