// The panels on both sides of a handle at its level, for the widths shown while it is pulled.

import { type Draft, type Piece, xAt } from '../engine';
import type { Handle } from './handles';

export interface PanelBeside {
  readonly piece: Piece;
  /** mm, measured on the finished outline. */
  readonly width: number;
}

/** On the table from left to right: the panel left of the handle's wedge and the one right of it; null for none. */
export function panelsBeside(handle: Handle, draft: Draft): [PanelBeside | null, PanelBeside | null] {
  const row = draft.proof.ledger.find(({ level }) => level === handle.level);
  const wedge = handle.block
    ? draft.blocks?.[handle.block].wedges.find(({ id }) => id === handle.wedge)
    : undefined;
  if (!row || !wedge) return [null, null];
  const panels = draft.pieces.flatMap((piece) => {
    const width = row.widths[piece.id];
    const reach = piece.block === handle.block && width !== undefined ? reachAt(piece, row.y) : null;
    return reach && width !== undefined ? [{ piece, width, middle: reach }] : [];
  });
  const axis = wedge.onCentre ? 0 : xAt(wedge.axis, row.y);
  const inner = panels.findLast(({ middle }) => middle < axis) ?? null;
  const outer = panels.find(({ middle }) => middle >= axis) ?? null;
  return handle.block === 'front' ? [inner, outer] : [outer, inner];
}

/** x of the middle of a piece at a height, mm from the centre line; null where it is not crossed. */
function reachAt(piece: Piece, y: number): number | null {
  let [least, most] = [Infinity, -Infinity];
  for (const { points } of piece.edges)
    for (let i = 1; i < points.length; i += 1) {
      const [a, b] = [points[i - 1], points[i]];
      if (!a || !b || a.y > y === b.y > y) continue;
      const x = a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
      [least, most] = [Math.min(least, x), Math.max(most, x)];
    }
  return least <= most ? (least + most) / 2 : null;
}
