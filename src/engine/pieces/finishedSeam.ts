// A seam of finished pieces, with what truing changed on it: all that the checks know of how the pieces were made.

import { turnAt } from '../panels/seamCrossing';
import type { SeamEdge } from '../panels/seamEdge';
import type { TruedSeam } from '../panels/truing';
import type { SeamIdentity } from '../terms/identity';
import type { EdgeReference } from './piece';

export interface FinishedSeam {
  readonly seam: SeamIdentity;
  readonly a: EdgeReference;
  /** Null at a centre edge, which meets its mirror image. */
  readonly b: EdgeReference | null;
  /** Length of `a` less length of `b` before truing, mm; 0 at a centre edge. */
  readonly lengthDifference: number;
  /** The farthest a balance mark had to leave its level line, mm along the seam. */
  readonly markDrift: number;
  /** Angle that top edge and hem are to make across the sewn seam, rad: π, or the turn of a corner that the style asks for. */
  readonly askedAngle: { readonly top: number; readonly hem: number };
}

/**
 * A trued seam as a seam of its finished pieces.
 *
 * @param referenceTo the reference to an edge of a seam among its piece's edges
 */
export function finishedSeam(
  { seam, edges, lengthDifference, markDrift }: TruedSeam,
  referenceTo: (seamEdge: SeamEdge) => EdgeReference,
): FinishedSeam {
  return {
    seam: seam.identity,
    a: referenceTo(seam.a),
    b: seam.b && referenceTo(seam.b),
    lengthDifference,
    markDrift,
    askedAngle: {
      top: Math.PI - turnAt(seam, edges.top),
      hem: Math.PI + turnAt(seam, edges.hem),
    },
  };
}
