// The seam walk: the lengths of the two mates of each seam, measured on the finished panels. A maker lays one mate along the other
// before cutting.

import { polylineLength } from '../geometry/polyline';
import { edgeAt } from '../pieces/edgeLookup';
import type { FinishedSeam } from '../pieces/finishedSeam';
import type { EdgeReference, Piece } from '../pieces/piece';
import {
  type DartIdentity,
  identifyDart,
  identifyShoulder,
  identityOf,
  type SeamIdentity,
} from '../terms/identity';

export interface SeamWalkRow {
  readonly seam: SeamIdentity;
  readonly a: EdgeReference;
  readonly b: EdgeReference;
  /** Lengths of the finished sew lines, mm. */
  readonly lengthA: number;
  readonly lengthB: number;
  /** How much longer `b` is than `a` as asked for, and eased to it, mm: 0 but at a shoulder. */
  readonly ease: number;
  /** How far the mates differed before truing, mm, a − b. */
  readonly lengthDifference: number;
  /** The farthest a balance mark had to leave its level line, mm. */
  readonly markDrift: number;
}

/** A dart that is closed at both ends lies on no edge: its legs are sewn to each other from point to point. */
export interface DartWalkRow {
  readonly seam: DartIdentity;
  /** Lengths of the finished stitching lines, mm. */
  readonly lengthInner: number;
  readonly lengthOuter: number;
}

/** One row a closed dart, as the pieces stand. */
export const dartWalk = (pieces: readonly Piece[]): DartWalkRow[] =>
  pieces.flatMap((piece) =>
    piece.darts
      .filter(({ open }) => !open)
      .map(({ wedge, inner, outer }) => ({
        seam: identifyDart(piece, wedge),
        lengthInner: polylineLength(inner),
        lengthOuter: polylineLength(outer),
      })),
  );

/** One row a seam whose two pieces were made. */
export function seamWalk(seams: readonly FinishedSeam[], pieces: readonly Piece[]): SeamWalkRow[] {
  const rows = seams.flatMap(({ seam, a, b, lengthDifference, markDrift }): SeamWalkRow[] => {
    const edgeA = edgeAt(pieces, a);
    const edgeB = b && edgeAt(pieces, b);
    if (!b || !edgeA || !edgeB) return [];
    const lengthA = polylineLength(edgeA.points);
    const lengthB = polylineLength(edgeB.points);
    return [{ seam, a, b, lengthA, lengthB, ease: 0, lengthDifference, markDrift }];
  });
  return [...rows, ...shoulderWalk(pieces)];
}

/** The shoulder seam, from the neck outwards; it is straight, and by construction the back's is longer by its ease. */
function shoulderWalk(pieces: readonly Piece[]): SeamWalkRow[] {
  const rows = pieces
    .filter(({ block }) => block === 'front')
    .flatMap((piece) =>
      piece.edges
        .map((edge, i) => ({ edge, a: { piece: identityOf(piece), edge: i } }))
        .filter(({ edge }) => edge.role === 'shoulder')
        // Counter-clockwise an edge nearer the neck comes later.
        .reverse(),
    )
    .flatMap(({ edge, a }) => {
      const mate = edge.mate && edgeAt(pieces, edge.mate);
      return edge.mate && mate ? [{ edge, mate, a, b: edge.mate }] : [];
    });
  return rows.map(({ edge, mate, a, b }) => {
    const lengthA = polylineLength(edge.points);
    const lengthB = polylineLength(mate.points);
    return {
      seam: identifyShoulder(edge.shoulder ?? 'whole'),
      a,
      b,
      lengthA,
      lengthB,
      ease: mate.ease ?? 0,
      lengthDifference: lengthA - lengthB,
      markDrift: 0,
    };
  });
}
