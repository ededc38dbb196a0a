// One half of a garment whose halves differ, for a drawing of that half alone, with the girths of the whole.

import type { Side } from '../terms/names';
import type { Draft } from './draft';

/** The half as a draft of its own; the draft itself where both halves are alike. Its issues are those of the whole. */
export function halfOf(whole: Draft, side: Side): Draft {
  const half = whole.halves?.[side];
  if (!half) return whole;
  const ledger = whole.proof.ledger.flatMap((row) => {
    const own = half.proof.ledger.find(({ level }) => level === row.level);
    return own ? [{ ...row, y: own.y, widths: own.widths, taken: own.taken }] : [];
  });
  return { ...half, proof: { ...half.proof, ledger }, issues: whole.issues };
}
