// A half's pieces as they lie on cloth, right side up: a front as drafted is the wearer's left, a back her right; the others
// are their mirror images. The edge towards the centre stays the first, and outlines keep their way round.

import type { Point } from '../geometry/point';
import { pieceOfSide } from '../terms/identity';
import type { Side } from '../terms/names';
import { longEdgeIndex } from './edgeLookup';
import type { Edge, EdgeReference, Piece } from './piece';

/** Whether a piece lies mirrored; a panel that goes round the side is drafted as a front. */
const isMirrored = (side: Side, { block }: Piece): boolean => (side === 'left') === (block === 'back');

/** A reference of a half as one of the whole. */
export function referenceOfSide(
  side: Side,
  { piece, edge }: EdgeReference,
  pieces: readonly Piece[],
): EdgeReference {
  const own = pieces.find(({ id }) => id === piece.id);
  const turned = own && isMirrored(side, own) ? edgeMirrored(edge, own) : edge;
  return { piece: pieceOfSide(side, piece), edge: turned };
}

/** The edge towards the centre of a half's piece as the whole refers to it. */
export const centreReference = (side: Side, piece: Piece): EdgeReference =>
  referenceOfSide(side, { piece, edge: longEdgeIndex(piece, 'inner') }, [piece]);

/** A point of a piece of a half where it lies on the whole's piece. */
export function pointOfSide(side: Side, point: Point, piece: Piece | undefined): Point {
  return piece && isMirrored(side, piece) ? mirrored(point) : point;
}

/** One piece of a half, cut once. */
export function rightSideUp(side: Side, piece: Piece, pieces: readonly Piece[]): Piece {
  const own: Piece = {
    ...piece,
    ...pieceOfSide(side, piece),
    cut: { count: 1, onFold: false },
    edges: piece.edges.map((edge) => ({
      ...edge,
      mate: edge.mate && referenceOfSide(side, edge.mate, pieces),
    })),
  };
  if (!isMirrored(side, piece)) return own;
  const ring = (points: readonly Point[]): Point[] => points.map(mirrored).reverse();
  return {
    ...own,
    edges: inOrderMirrored(own.edges).map((edge) => ({ ...edge, points: ring(edge.points) })),
    // Legs keep their names and run down as before: nearer the centre is nearer the centre in a mirror.
    darts: piece.darts.map((dart) => ({
      ...dart,
      inner: dart.inner.map(mirrored),
      outer: dart.outer.map(mirrored),
    })),
    cutLine: ring(piece.cutLine),
    grain: [mirrored(piece.grain[0]), mirrored(piece.grain[1])],
    marks: piece.marks.map((mark) => ({
      ...mark,
      at: mirrored(mark.at),
      edge: mark.edge === null ? null : edgeMirrored(mark.edge, piece),
    })),
  };
}

/** A piece's edges as they follow each other round its mirror image, the edge towards the centre first as before. */
const inOrderMirrored = ([first, ...others]: readonly Edge[]): Edge[] =>
  first ? [first, ...others.reverse()] : [];

/** Index among the mirror image's edges of the edge with this index. */
const edgeMirrored = (edge: number, { edges }: Piece): number =>
  inOrderMirrored(edges).indexOf(edges[edge] as Edge);

// Plus nothing, so that there is no −0.
const mirrored = ({ x, y }: Point): Point => ({ x: -x + 0, y });
