// The seam walk: one mate rolled along the other on the finished panels, as a maker does before she cuts.

import { edgeIndex, type Seam } from '../draft/leg';
import type { Edge, EdgeReference, Piece } from '../draft/piece';
import type { TruedSeam } from '../draft/truing';
import { polylineLength } from '../geometry/polyline';

export interface SeamWalkRow {
  readonly id: string;
  readonly kind: Seam['kind'];
  readonly a: EdgeReference;
  readonly b: EdgeReference;
  /** Lengths of the finished sew lines, mm. */
  readonly lengthA: number;
  readonly lengthB: number;
  /** How far the mates differed before truing, mm, a − b. */
  readonly natural: number;
  /** The farthest a balance mark had to leave its level line, mm. */
  readonly markDrift: number;
}

/** One row a seam whose two pieces were made. */
export function seamWalk(seams: readonly TruedSeam[], pieces: readonly Piece[]): SeamWalkRow[] {
  const rows: SeamWalkRow[] = [];
  for (const { seam, natural, markDrift } of seams) {
    if (!seam.b) continue;
    const a = { piece: seam.a.panel.id, edge: edgeIndex(seam.a) };
    const b = { piece: seam.b.panel.id, edge: edgeIndex(seam.b) };
    const [edgeA, edgeB] = [edgeAt(pieces, a), edgeAt(pieces, b)];
    if (!edgeA || !edgeB) continue;
    rows.push({
      id: seam.id,
      kind: seam.kind,
      a,
      b,
      lengthA: polylineLength(edgeA.points),
      lengthB: polylineLength(edgeB.points),
      natural,
      markDrift,
    });
  }
  return rows;
}

/** The edge a reference names; undefined when its piece was not made. */
function edgeAt(pieces: readonly Piece[], reference: EdgeReference): Edge | undefined {
  return pieces.find((piece) => piece.id === reference.piece)?.edges[reference.edge];
}
