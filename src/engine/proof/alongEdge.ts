// What the finished garment measures where a level lies at its top edge or hem: there is no cloth beyond to lay a tape across,
// but the edge itself can be measured.

import type { Ground } from '../draft/ground';
import type { Piece } from '../draft/piece';
import { polylineLength } from '../geometry/polyline';

/** A top edge or hem that was drafted level, and its height, mm. */
export interface LevelEdge {
  readonly edge: 'top' | 'hem';
  readonly y: number;
}

/** An edge that leaves the level by no more is level, and a level no farther from it lies at it. mm */
const AT_EDGE_MM = 1;

/** The edges that are not shaped; a neckline and an armhole are. */
export function levelEdges({ edges, shoulders }: Pick<Ground, 'edges' | 'shoulders'>): LevelEdge[] {
  return (['top', 'hem'] as const).flatMap((edge): LevelEdge[] => {
    const { base, nodes } = edges[edge];
    if (edge === 'top' && shoulders) return [];
    const isLevel = [...nodes.front, ...nodes.back].every(({ y }) => Math.abs(y - base) <= AT_EDGE_MM);
    return isLevel ? [{ edge, y: base }] : [];
  });
}

/**
 * Length of the finished edge that lies at height `y`, over all of a half's pieces and times two, mm; the openings of darts
 * are no part of it. Null where no level edge lies there.
 *
 * A trued edge runs straight across seams that lean, and so is not quite level: on drawn bodies it is longer than the girth
 * asked for by less than 0.5 mm at the waist and by 1 mm at the over-bust line; where the level lies a little beside the edge,
 * by what the body grows in between as well.
 */
export function alongEdge(y: number, edges: readonly LevelEdge[], pieces: readonly Piece[]): number | null {
  const at = edges.find((each) => Math.abs(each.y - y) <= AT_EDGE_MM);
  if (!at) return null;
  const rows = pieces.flatMap((piece) => piece.edges.filter(({ role }) => role === at.edge));
  return 2 * rows.reduce((sum, { points }) => sum + polylineLength(points), 0);
}
