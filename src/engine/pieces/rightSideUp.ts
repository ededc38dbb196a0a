// A half's pieces as they lie on cloth, right side up: a front as drafted is the wearer's left, a back her right; the others
// are their mirror images. Edge towards the centre stays the first, and outlines keep their way round.

import type { Point } from '../geometry/point';
import type { Side } from '../terms/names';
import type { Edge, EdgeReference, Piece } from './piece';

/** The id of a half's piece in the whole. */
export const idOfSide = (side: Side, id: string): string => `${side}-${id}`;

/** The id of a half's seam in the whole, from the pieces it joins. */
export const seamIdOfSide = (side: Side, id: string): string =>
  id
    .split('/')
    .map((part) => (part.startsWith('dart:') ? part : idOfSide(side, part)))
    .join('/');

/** Whether a piece lies mirrored; a panel that goes round the side is drafted as a front. */
const isMirrored = (side: Side, { block }: Piece): boolean => (side === 'left') === (block === 'back');

/** A reference of a half as one of the whole. */
export function referenceOfSide(
  side: Side,
  { piece: id, edge }: EdgeReference,
  pieces: readonly Piece[],
): EdgeReference {
  const piece = pieces.find((each) => each.id === id);
  const turned = piece && isMirrored(side, piece) ? edgeMirrored(edge, piece) : edge;
  return { piece: idOfSide(side, id), edge: turned };
}

/** A point of a piece of a half where it lies on the whole's piece. */
export function pointOfSide(side: Side, point: Point, piece: Piece | undefined): Point {
  return piece && isMirrored(side, piece) ? mirrored(point) : point;
}

/** One piece of a half, cut once. */
export function rightSideUp(side: Side, piece: Piece, pieces: readonly Piece[]): Piece {
  const mates = (edge: Edge): Edge => ({
    ...edge,
    mate: edge.mate && referenceOfSide(side, edge.mate, pieces),
  });
  const named: Piece = {
    ...piece,
    id: idOfSide(side, piece.id),
    cut: { count: 1, onFold: false },
    edges: piece.edges.map(mates),
  };
  if (!isMirrored(side, piece)) return named;
  const ring = (points: readonly Point[]): Point[] => points.map(mirrored).reverse();
  const [first, ...others] = named.edges.map((edge) => ({ ...edge, points: ring(edge.points) }));
  return {
    ...named,
    edges: first ? [first, ...others.reverse()] : [],
    outer: edgeMirrored(piece.outer, piece),
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

const edgeMirrored = (edge: number, { edges }: Piece): number => (edges.length - edge) % edges.length;

// Plus nothing, so that there is no −0.
const mirrored = ({ x, y }: Point): Point => ({ x: -x + 0, y });
