// An edge of a piece found by what it is, and the length of all edges of a role.

import { polylineLength } from '../geometry/polyline';
import type { Edge, EdgePlace, EdgeReference, Piece } from './piece';

/** Index among a piece's edges of the one at a place; −1 where it has none there. */
export const edgeIndex = (edges: readonly EdgePlace[], { at, dart, shoulder, sidePart }: EdgePlace): number =>
  edges.findIndex(
    (edge) =>
      edge.at === at &&
      edge.shoulder === shoulder &&
      edge.sidePart === sidePart &&
      edge.dart?.wedge === dart?.wedge &&
      edge.dart?.leg === dart?.leg,
  );

type LongEdge = 'inner' | 'outer';

/**
 * Index of the edge towards the centre or the side; of a side seam in which a dart opens the part below it, which goes on to the
 * hem. Every piece has both: throws on one made without.
 */
export function longEdgeIndex({ edges }: Pick<Piece, 'edges'>, at: LongEdge): number {
  const whole = edgeIndex(edges, { at });
  const index = whole < 0 ? edgeIndex(edges, { at, sidePart: 'belowDart' }) : whole;
  if (index < 0) throw new Error(`A piece was made without its ${at} edge.`);
  return index;
}

/** The edge towards the centre. */
export const innerEdge = (piece: Pick<Piece, 'edges'>): Edge =>
  piece.edges[longEdgeIndex(piece, 'inner')] as Edge;

/** The edge towards the side. */
export const outerEdge = (piece: Pick<Piece, 'edges'>): Edge =>
  piece.edges[longEdgeIndex(piece, 'outer')] as Edge;

/** The edge that a reference names; undefined where its piece was not made. */
export const edgeAt = (pieces: readonly Piece[], { piece, edge }: EdgeReference): Edge | undefined =>
  pieces.find(({ id }) => id === piece.id)?.edges[edge];

/** Length of all edges of a role on pieces together, mm. */
export const edgesLength = (pieces: readonly Pick<Piece, 'edges'>[], role: Edge['role']): number =>
  pieces
    .flatMap(({ edges }) => edges.filter((edge) => edge.role === role))
    .reduce((sum, { points }) => sum + polylineLength(points), 0);

/** The edges at hem or top, in the order of the outline, with the legs of the darts that open there. */
export const edgesAt = ({ edges }: Pick<Piece, 'edges'>, at: 'hem' | 'top'): Edge[] =>
  edges.filter((edge) => edge.at === at);

/** Whether a garment has armholes, and so shoulders and a neckline in place of a level top edge. */
export const hasArmhole = (pieces: readonly Piece[]): boolean =>
  pieces.some(({ edges }) => edges.some(({ role }) => role === 'armhole'));
