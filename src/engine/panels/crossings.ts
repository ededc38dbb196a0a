// Where top edge and hem cross a seam of the draft.

import type { BaseDraft } from '../edges/baseDraft';
import { type SeamCrossing, seamCrossing } from './seamCrossing';
import type { Seam } from './seamEdge';

/** Top edge and hem where they cross a seam. */
export interface SeamCrossings {
  readonly top: SeamCrossing;
  readonly hem: SeamCrossing;
}

/** Where a seam meets top edge and hem. A wedge that runs through a shouldered block meets its shoulder line instead. */
export function crossingsOf(seam: Seam, { edges, blocks, shoulders }: BaseDraft): SeamCrossings {
  const hem = seamCrossing(seam, edges.hem, blocks);
  if (!shoulders || seam.identity.kind !== 'wedge') {
    const top = seamCrossing(seam, edges.top, blocks);
    const corner = edges.top.nodes[seam.a.panel.block][0]?.corner === true;
    if (!shoulders || seam.identity.kind !== 'centre' || !corner) return { top, hem };
    // A pointed neckline makes for the neck.
    const { neck } = shoulders[seam.a.panel.block];
    return { top: { ...top, slopeA: (neck.y - top.y) / neck.x }, hem };
  }
  const { middle, slope } = shoulders[seam.a.panel.block];
  const top = { y: middle.y, slopeA: slope, slopeB: slope, sewnDistanceA: middle.x, sewnDistanceB: middle.x };
  return { top, hem };
}
