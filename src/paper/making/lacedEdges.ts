// Centre edges of the draft, and those of them that are laced.

import type { Draft, Edge, Piece } from '../../engine';

export interface PieceEdge {
  readonly piece: Piece;
  readonly edge: Edge;
}

/** The centre edges of the pieces of one block. */
export function centreEdges({ pieces }: Draft, block: Piece['block']): PieceEdge[] {
  return pieces
    .filter((piece) => piece.block === block)
    .flatMap((piece) =>
      piece.edges.filter((edge) => edge.role === 'centre').map((edge) => ({ piece, edge })),
    );
}

/** The centre edges that are laced, with or without a lacing gap. */
export function lacedEdges(draft: Draft): PieceEdge[] {
  return draft.laced.flatMap((block) => centreEdges(draft, block));
}
