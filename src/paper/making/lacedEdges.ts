// Which edges of the draft are laced together.

import type { Draft, Edge, Piece } from '../../engine';

export interface PieceEdge {
  readonly piece: Piece;
  readonly edge: Edge;
}

/** The centre edges of one block, where its pieces have any. */
export function centreEdges({ pieces }: Draft, block: Piece['block']): PieceEdge[] {
  return pieces
    .filter((piece) => piece.block === block)
    .flatMap((piece) =>
      piece.edges.filter((edge) => edge.role === 'centre').map((edge) => ({ piece, edge })),
    );
}

/** The centre edges that are laced; with no gap they meet. */
export function lacedEdges(draft: Draft): PieceEdge[] {
  return draft.laced.flatMap((block) => centreEdges(draft, block));
}
