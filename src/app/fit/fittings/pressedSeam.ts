// A seam pressed in the drawing, and an edge pulled there, as what a fitting alters.

import type { Unit } from '../../../document';
import {
  type Alteration,
  type AlteredSide,
  type Draft,
  inches,
  SEAM_ENDS,
  type SeamHeight,
  type SeamName,
  seamEnd,
  seamNameOf,
} from '../../../engine';
import type { Picked } from '../../../table';
import { heightAt } from './forms/alterable';

/** A seam that was pressed, and how high. */
export interface PressedSeam {
  readonly seam: SeamName;
  readonly height: SeamHeight;
  /** The half that was pressed, where left and right are drafted apart and the seam is not at a centre. */
  readonly side: AlteredSide;
}

/** What was pressed; null for what no fitting alters, and where the height is not known. */
export function pressedSeam(draft: Draft, picked: Picked): PressedSeam | null {
  if (picked.y === null) return null;
  const row = rowOf(draft, picked);
  const dart =
    'wedge' in picked && draft.proof.closedDarts.find(({ seam }) => seam.wedge === picked.wedge)?.seam;
  const seam = row ? seamNameOf(row.seam, row) : dart ? seamNameOf(dart, null) : null;
  const { side = null } = draft.pieces.find(({ id }) => id === picked.piece) ?? {};
  if (!seam) return null;
  const half = (side && draft.halves?.[side]) ?? draft;
  const height = endNear(draft, seam, picked.y) ?? heightAt(half, picked.y);
  return { seam, height, side: row?.seam.kind === 'centre' ? 'both' : (side ?? 'both') };
}

/**
 * The alteration of a pull: the edge by so much into its panel, in lines of the tape, its mate not at all; null where that is
 * nothing. Where left and right are drafted apart, of the half that was pulled.
 */
export function pulledAlteration(
  draft: Draft,
  picked: Picked,
  inwardMm: number,
  unit: Unit,
): Alteration | null {
  const pressed = pressedSeam(draft, picked);
  const row = rowOf(draft, picked);
  const line = unit === 'in' ? inches(1 / 16) : 1;
  const mm = Math.round(inwardMm / line) * line;
  if (!pressed || !row || mm === 0 || !('edge' in picked)) return null;
  const piece = draft.pieces.find(({ id }) => id === picked.piece);
  const leg = piece?.edges[picked.edge]?.dart?.leg;
  const isFirst =
    row.seam.kind === 'centre'
      ? piece?.side !== 'right'
      : leg
        ? leg === 'inner'
        : row.a.piece.id === picked.piece && row.a.edge === picked.edge;
  // Both halves of a centre seam are one edge where they are alike.
  const isBoth = row.seam.kind === 'centre' && !piece?.side;
  const amounts = { a: isFirst || isBoth ? mm : 0, b: isFirst && !isBoth ? 0 : mm };
  const side = row.seam.kind === 'centre' ? 'both' : (piece?.side ?? 'both');
  return { kind: 'seam', seam: pressed.seam, side, at: [{ height: pressed.height, ...amounts }] };
}

/** Nearer to the end of a seam than this a press means its end. mm */
const AT_END_MM = 10;

function endNear(draft: Draft, seam: SeamName, y: number): SeamHeight | null {
  for (const end of SEAM_ENDS) {
    const own = seamEnd(draft, seam, end);
    if (own !== null && Math.abs(own - y) < AT_END_MM) return { kind: 'end', end };
  }
  return null;
}

const rowOf = ({ proof }: Draft, picked: Picked) =>
  'edge' in picked
    ? proof.seams.find(({ a, b }) =>
        [a, b].some((side) => side.piece.id === picked.piece && side.edge === picked.edge),
      )
    : undefined;
