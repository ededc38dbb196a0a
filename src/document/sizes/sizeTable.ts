// Panel widths and seam lengths of a range of sizes, side by side, so that a step that jumps is seen.

import { identityOf, type LevelName, type PieceIdentity, type SeamIdentity } from '../../engine';
import type { SizedDraft } from './sizedDrafts';

export type SizeRow = (
  | { readonly kind: 'width'; readonly piece: PieceIdentity; readonly level: LevelName }
  | { readonly kind: 'seam'; readonly seam: SeamIdentity }
) & {
  /** mm for each size in its order; null where the size has it not. */
  readonly lengths: readonly (number | null)[];
};

/**
 * A row for each panel at each level that it crosses, and for each seam and dart by the length of its first edge. The rows are those
 * of all sizes that can be cut, in the order in which they are met.
 */
export function sizeTable(sizes: readonly SizedDraft[]): SizeRow[] {
  const rows = new Map<string, { row: SizeRow; lengths: (number | null)[] }>();
  const put = (key: string, size: number, mm: number, row: () => SizeRow): void => {
    const known = rows.get(key) ?? { row: row(), lengths: sizes.map(() => null) };
    known.lengths[size] = mm;
    rows.set(key, known);
  };
  for (const [i, { draft, canBeCut }] of sizes.entries()) {
    if (!canBeCut) continue;
    for (const piece of draft.pieces)
      for (const { level, widths } of draft.proof.ledger) {
        const width = widths[piece.id];
        if (width !== undefined)
          put(`${piece.id} ${level}`, i, width, () => ({
            kind: 'width',
            piece: identityOf(piece),
            level,
            lengths: [],
          }));
      }
  }
  for (const [i, { draft, canBeCut }] of sizes.entries()) {
    if (!canBeCut) continue;
    for (const { seam, lengthA } of draft.proof.seams)
      put(`seam ${seam.id}`, i, lengthA, () => ({ kind: 'seam', seam, lengths: [] }));
    for (const { seam, lengthInner } of draft.proof.closedDarts)
      put(`seam ${seam.id}`, i, lengthInner, () => ({ kind: 'seam', seam, lengths: [] }));
  }
  return [...rows.values()].map(({ row, lengths }) => ({ ...row, lengths }));
}

/** A step that is farther from the row's usual one than this, mm, jumps. */
const JUMP_MM = 2;

/**
 * Which steps jump: they differ by over 2 mm from what the row usually grows over such a step of bust. `busts` are the bust girths
 * of the sizes, mm. A row of fewer than three steps has no usual one.
 */
export function jumpsOf(row: SizeRow, busts: readonly (number | null)[]): boolean[] {
  const steps = stepsOf(row);
  const growth = steps.map((_, i) => (busts[i + 1] ?? Number.NaN) - (busts[i] ?? Number.NaN));
  const rates = steps.flatMap((step, i) => {
    const rate = (step ?? Number.NaN) / (growth[i] ?? Number.NaN);
    return Number.isFinite(rate) ? [rate] : [];
  });
  const usual = rates.sort((a, b) => a - b)[Math.floor(rates.length / 2)];
  return steps.map(
    (step, i) =>
      rates.length >= 3 &&
      usual !== undefined &&
      step !== null &&
      Math.abs(step - usual * (growth[i] ?? Number.NaN)) > JUMP_MM,
  );
}

/** From each size to the next, mm; null where either has no length. One fewer than the sizes. */
export const stepsOf = ({ lengths }: SizeRow): (number | null)[] =>
  lengths.slice(1).map((mm, i) => {
    const before = lengths[i];
    return mm === null || before === null || before === undefined ? null : mm - before;
  });
