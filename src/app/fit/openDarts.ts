// What the closed-up view does with open darts, said beside it: cloth cups where paper must be slashed.

import { FIT } from '../../document';
import { type ClosedAt, type Piece, partsOf } from '../../engine';

type OpensAt = 'top' | 'hem' | 'side';

/** Sentences for the darts that are shut where the seams are held, and for those that stay open; empty without open darts. */
export function sayOpenDarts(pieces: readonly Piece[], at: ClosedAt): string[] {
  const shut = pieces.some((piece) => partsOf(piece, at).length > 1);
  const left = new Set(pieces.flatMap((piece) => leftOpen(piece, at)));
  return [
    ...(shut ? [FIT.openDarts.shut] : []),
    ...(left.has('side') ? [FIT.openDarts.openAtSide] : []),
    ...(['top', 'hem'] as const)
      .filter((edge) => left.has(edge))
      .map((edge) =>
        edge === at ? FIT.openDarts.staysOpen : FIT.openDarts[edge === 'top' ? 'openAtTop' : 'openAtHem'],
      ),
  ];
}

/** The edges at which a piece's darts stay open. */
function leftOpen(piece: Piece, at: ClosedAt): OpensAt[] {
  const slashed = partsOf(piece, at).map(({ inner }) => inner.edge);
  return piece.darts.flatMap(({ wedge, inner, outer, open }): OpensAt[] => {
    if (!open || slashed.some((edge) => piece.edges[edge]?.dart?.wedge === wedge)) return [];
    if (piece.edges.some(({ at: place, dart }) => place === 'outer' && dart?.wedge === wedge))
      return ['side'];
    const [a, b] = [inner[0], outer[0]];
    return [a && b && a.x === b.x && a.y === b.y ? 'hem' : 'top'];
  });
}
