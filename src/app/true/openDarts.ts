// What the closed-up view does with open darts, said beside it: cloth cups where paper must be slashed.

import { type ClosedAt, type Piece, partsOf } from '../../engine';

type OpensAt = 'top' | 'hem';

const EDGE: Readonly<Record<OpensAt, string>> = { top: 'top edge', hem: 'hem' };

/** Sentences for the darts that are shut where the seams are held, and for those that stay open; empty without open darts. */
export function sayOpenDarts(pieces: readonly Piece[], at: ClosedAt): string[] {
  const shut = pieces.some((piece) => partsOf(piece, at).length > 1);
  const left = new Set(pieces.flatMap((piece) => leftOpen(piece, at)));
  return [
    ...(shut
      ? [
          'Open darts are shut here, leg to leg like seams. Sewn, the panel cups from the dart’s point; to lie flat it is slashed from there (broken line), and its parts lap or spread.',
        ]
      : []),
    ...(['top', 'hem'] as const)
      .filter((edge) => left.has(edge))
      .map((edge) =>
        edge === at
          ? `A dart stays open here where no straight slash from its point reaches the edge across from it.`
          : `Darts open at the ${EDGE[edge]} stay open here; hold the seams at the ${EDGE[edge]} to see them shut.`,
      ),
  ];
}

/** The edges at which a piece's darts stay open. */
function leftOpen(piece: Piece, at: ClosedAt): OpensAt[] {
  const slashed = partsOf(piece, at).map(({ inner }) => inner.edge);
  return piece.darts.flatMap(({ wedge, inner, outer, open }): OpensAt[] => {
    if (!open || slashed.some((edge) => piece.edges[edge]?.dart === wedge)) return [];
    const [a, b] = [inner[0], outer[0]];
    return [a && b && a.x === b.x && a.y === b.y ? 'hem' : 'top'];
  });
}
