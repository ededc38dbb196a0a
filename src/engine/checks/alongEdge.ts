// What the finished garment measures where a level lies at its top edge or hem: there is no cloth beyond to lay a tape across,
// but the edge itself can be measured.

import { AT_EDGE_MM, type LevelEdge } from '../edges/levelEdges';
import { edgesLength } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';

/**
 * Length of the finished edge that lies at height `y`, over all of a half's pieces and times two, mm; the openings of darts
 * are no part of it. Null where no level edge lies there.
 *
 * A trued edge runs straight across seams that lean, and so is not quite level: on drawn bodies it is longer than the girth
 * asked for by less than 0.5 mm at the waist, by 1 mm at the over-bust line and by 3 mm at the high hip; where the level lies
 * a little beside the edge, by what the body grows in between as well.
 */
export function alongEdge(y: number, edges: readonly LevelEdge[], pieces: readonly Piece[]): number | null {
  const at = edges.find((each) => Math.abs(each.y - y) <= AT_EDGE_MM);
  if (!at) return null;
  return 2 * edgesLength(pieces, at.edge);
}
