// An off-shoulder band against the panels it is sewn to: one lower edge a block, cut whole, along the top edges of many panels.

import { edgesLength } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';
import { type Issue, issue } from '../terms/issue';
import { SIDES, type Side } from '../terms/names';
import { inches, TAPE_TOLERANCE_MM } from '../terms/units';

/** The panels and the pieces beside them. */
interface Cut {
  readonly pieces: readonly Piece[];
  readonly extras: readonly Piece[];
}

export interface BandWalkRow {
  /** The half it is of where the two differ; null for either. */
  readonly side: Side | null;
  /** Length of the bands' lower edges, front and back together, mm. */
  readonly bands: number;
  /** Length of the panels' top edges as finished, mm. */
  readonly panels: number;
}

/**
 * One row for each half that is cut for itself; none where the garment has no band. Front and back are taken together, since a
 * side panel may be cut in one.
 */
export function bandWalk({
  pieces,
  extras,
  halves,
}: Cut & { readonly halves?: Readonly<Record<Side, Cut>> }): BandWalkRow[] {
  const rowOf = (side: Side | null, from: Cut): BandWalkRow[] => {
    const bands = from.extras.filter(({ kind }) => kind === 'band');
    if (bands.length === 0 || from.pieces.length === 0) return [];
    return [{ side, bands: edgesLength(bands, 'seam'), panels: edgesLength(from.pieces, 'top') }];
  };
  return halves ? SIDES.flatMap((side) => rowOf(side, halves[side])) : rowOf(null, { pieces, extras });
}

/** A band that differs by more than this from the panels it is sewn to cannot be eased to them; common practice, no source. mm */
const UNEVEN_MM = inches(0.25);

/** A warning where the bands of a half do not fit its panels. */
export const bandIssues = (cut: Cut): Issue[] =>
  bandWalk(cut)
    .filter(({ bands, panels }) => Math.abs(bands - panels) > UNEVEN_MM + TAPE_TOLERANCE_MM)
    .map(({ bands, panels }) => issue('bandUneven', { bands, panels }, { field: 'shoulders.bandAbove' }));
