// Top edge and hem where they were drafted level, so that a girth can be taped along them.

import type { BaseDraft } from './baseDraft';

/** A top edge or hem that was drafted level, and its height, mm. */
export interface LevelEdge {
  readonly edge: 'top' | 'hem';
  readonly y: number;
}

/** An edge that leaves the level by no more is level, and a level no farther from it lies at it. mm */
export const AT_EDGE_MM = 1;

/** The edges that are not shaped; a neckline and an armhole are. */
export function levelEdges({ edges, shoulders }: Pick<BaseDraft, 'edges' | 'shoulders'>): LevelEdge[] {
  return (['top', 'hem'] as const).flatMap((edge): LevelEdge[] => {
    const { base, nodes } = edges[edge];
    if (edge === 'top' && shoulders) return [];
    const isLevel = [...nodes.front, ...nodes.back].every(({ y }) => Math.abs(y - base) <= AT_EDGE_MM);
    return isLevel ? [{ edge, y: base }] : [];
  });
}
