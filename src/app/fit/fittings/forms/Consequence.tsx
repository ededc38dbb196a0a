// What an alteration does that is shown in passing: the girths it changes, or why it cannot be made.

import {
  ALTERATION_REFUSED,
  alterationsOf,
  FITTINGS,
  type Fitting,
  formatLength,
  LEVEL_WORDS,
  outcomesOf,
  type Unit,
} from '../../../../document';
import { type Draft, finishedCloth, polylineLength, type SeamEnd } from '../../../../engine';
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
  return <p className="consequence">{girthChanges(kept, shown, unit, savedDraft.fittings)}</p>;
}

/** Along an edge that runs aslant a change of less is none of its girth. mm */
const LEAST_ALONG_MM = 1.5;

/**
 * The girths of the garment that differ from those of another draft of the same body and style, in words; that of top edge or hem
 * is measured along the edge, where one of the fittings alters a seam there.
 */
export function girthChanges(before: Draft, now: Draft, unit: Unit, fittings: readonly Fitting[]): string {
  const written = (mm: number): string => formatLength(mm, unit, { signed: true, withUnit: true });
  const onLevels = now.proof.ledger.flatMap((row) => {
    const was = before.proof.ledger.find(({ level }) => level === row.level);
    const by = row.alteredBy - (was?.alteredBy ?? 0);
    return finishedCloth(row) !== null && Math.abs(by) >= LEAST_MM
      ? [{ level: LEVEL_WORDS[row.level], by: written(by) }]
      : [];
  });
  const alongEdge = (end: SeamEnd): typeof onLevels => {
    const isNamed = alterationsOf(fittings).some(
      (each) =>
        each.kind === 'seam' && each.at.some(({ height }) => height.kind === 'end' && height.end === end),
    );
    if (!isNamed) return [];
    const by = lengthAlong(now, end) - lengthAlong(before, end);
    return Math.abs(by) >= LEAST_ALONG_MM ? [{ level: FITTINGS.form.ends[end], by: written(by) }] : [];
  };
  return FITTINGS.girths({ changes: [...alongEdge('top'), ...onLevels, ...alongEdge('hem')] });
}

/** The length of the top edge or the hem round the whole garment, mm. */
function lengthAlong({ pieces, halves }: Draft, end: SeamEnd): number {
  const edges = pieces.flatMap((piece) => piece.edges.filter(({ at }) => at === end));
  return edges.reduce((sum, { points }) => sum + polylineLength(points), 0) * (halves ? 1 : 2);
}
