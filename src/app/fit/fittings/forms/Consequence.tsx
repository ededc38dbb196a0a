// What an alteration does that is shown in passing: the girths it changes, or why it cannot be made.

import {
  ALTERATION_REFUSED,
  FITTINGS,
  formatLength,
  LEVEL_WORDS,
  outcomesOf,
  type Unit,
} from '../../../../document';
import { type Draft, finishedCloth } from '../../../../engine';
import { useDraft, useOpen } from '../../../store/storeContext';

/** Less than this no tape reads. mm */
const LEAST_MM = 0.05;

interface ConsequenceProps {
  /** The draft without it. */
  readonly kept: Draft;
  /** Where it stands in the list of fittings. */
  readonly place: { readonly fitting: number; readonly alteration: number };
  readonly unit: Unit;
}

export function Consequence({ kept, place, unit }: ConsequenceProps) {
  const shown = useDraft();
  const { savedDraft } = useOpen();
  const outcome = outcomesOf(savedDraft.fittings, shown).find(
    ({ fitting, alteration }) => fitting === place.fitting && alteration === place.alteration,
  );
  if (shown === kept || !outcome || outcome.code === 'switchedOff') return null;
  if (outcome.code) return <p className="said off">{ALTERATION_REFUSED[outcome.code]}</p>;
  return <p className="consequence">{girthChanges(kept, shown, unit)}</p>;
}

/** The girths of the garment that differ from those of another draft of the same body and style, in words. */
export function girthChanges(before: Draft, now: Draft, unit: Unit): string {
  const changes = now.proof.ledger.flatMap((row) => {
    const was = before.proof.ledger.find(({ level }) => level === row.level);
    const by = row.alteredBy - (was?.alteredBy ?? 0);
    return finishedCloth(row) !== null && Math.abs(by) >= LEAST_MM
      ? [{ level: LEVEL_WORDS[row.level], by: formatLength(by, unit, { signed: true, withUnit: true }) }]
      : [];
  });
  return FITTINGS.girths({ changes });
}
