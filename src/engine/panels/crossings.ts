// Where top edge and hem cross a seam of the draft.

import type { Block } from '../block/block';
import { endOfDart, partingEnds, type UpperEnd } from '../block/shoulders/upperEdges';
import type { BaseDraft } from '../edges/baseDraft';
import { type SeamCrossing, seamCrossing } from './seamCrossing';
import type { Seam, SeamEdge } from './seamEdge';

/** Top edge and hem where they cross a seam. */
export interface SeamCrossings {
  readonly top: SeamCrossing;
  readonly hem: SeamCrossing;
}

/** Where a seam meets top edge and hem. A wedge that runs through a shouldered block meets neckline, shoulder or armhole instead. */
export function crossingsOf(seam: Seam, { edges, blocks, shoulders }: BaseDraft): SeamCrossings {
  const hem = seamCrossing(seam, edges.hem, blocks);
  const block = blocks[seam.a.panel.block];
  const { dart } = seam.a;
  const end = dart
    ? endOfDart(block.upper, dart.wedge)
    : seam.identity.kind === 'wedge'
      ? endAt(seam.a, block)
      : null;
  if (end) {
    const { point, angle } = end.at;
    const sewnDistance = end.sewn.point.x;
    const top: SeamCrossing = {
      y: point.y,
      slopeA: 0,
      slopeB: 0,
      sewnDistanceA: sewnDistance,
      sewnDistanceB: sewnDistance,
      end: { kind: 'follows', angle },
    };
    return { top, hem };
  }
  const top = seamCrossing(seam, edges.top, blocks);
  if (!shoulders) return { top, hem };
  if (seam.identity.kind === 'sideSeam')
    return { top: { ...top, slopeA: 0, slopeB: 0, end: { kind: 'square' } }, hem };
  const isCornered = edges.top.nodes[seam.a.panel.block][0]?.corner === true;
  if (seam.identity.kind !== 'centre' || !isCornered) return { top, hem };
  // A pointed neckline makes for the neck.
  const { neck } = shoulders[seam.a.panel.block];
  return { top: { ...top, slopeA: (neck.y - top.y) / neck.x }, hem };
}

/** The end of the wedge whose leg an edge of a panel is; null where it has none above. */
function endAt({ panel, which }: SeamEdge, { upper }: Block): UpperEnd | null {
  return (upper && partingEnds(upper)[panel.number - (which === 'outer' ? 1 : 2)]) ?? null;
}
