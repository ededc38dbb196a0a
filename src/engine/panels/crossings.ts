// Where top edge and hem cross a seam of the draft.

import type { Ground } from '../edges/baseDraft';
import { type SeamCrossing, seamCrossing } from './seamCrossing';
import type { Seam } from './seamEdge';

/** Top edge and hem where they cross a seam. */
export interface SeamEdges {
  readonly top: SeamCrossing;
  readonly hem: SeamCrossing;
}

/** Where a seam meets top edge and hem. A wedge that runs through a shouldered block meets its shoulder line instead. */
export function crossingsOf(seam: Seam, { edges, blocks, shoulders }: Ground): SeamEdges {
  const hem = seamCrossing(seam, edges.hem, blocks);
  if (!shoulders || seam.kind !== 'wedge') {
    const top = seamCrossing(seam, edges.top, blocks);
    const corner = edges.top.nodes[seam.a.panel.side][0]?.corner === true;
    if (!shoulders || seam.kind !== 'centre' || !corner) return { top, hem };
    // A pointed neckline makes for the neck.
    const { neck } = shoulders[seam.a.panel.side];
    return { top: { ...top, slopeA: (neck.y - top.y) / neck.x }, hem };
  }
  const { middle, slope } = shoulders[seam.a.panel.side];
  const top = { y: middle.y, slopeA: slope, slopeB: slope, closedA: middle.x, closedB: middle.x };
  return { top, hem };
}
