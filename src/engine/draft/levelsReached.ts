// The levels that a garment reaches.

import type { Level } from '../block/lines/levels';
import type { DraftSpan } from '../edges/baseDraft';
import { hasArmhole } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';

interface Reaching {
  readonly levels: readonly Level[];
  readonly span: DraftSpan | null;
  readonly pieces: readonly Piece[];
}

/** A level that lies no farther beyond an edge than this is on it. mm */
const ON_EDGE_MM = 0.5;

/** The levels between the highest place of a level top edge and the lowest of the hem; above them all where there are armholes. */
export function levelsReached({ levels, span, pieces }: Reaching): readonly Level[] {
  if (!span) return levels;
  const armholes = hasArmhole(pieces);
  return levels.filter(
    ({ y }) => (armholes || y > span.highest - ON_EDGE_MM) && y < span.lowest + ON_EDGE_MM,
  );
}
