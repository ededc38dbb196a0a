// What the pattern of the draft in view is made from, and whether it may be made at all.

import { useMemo } from 'react';
import { isRead, wantsReading } from '../../../document';
import type { PlanInput } from '../../../paper';
import { useDraft, useOpen } from '../../store/storeContext';
import { napFor, useCutChoices } from './cutChoices';
import { makingFor, useMakingChoices } from './makingChoices';

export function usePlanInput(): PlanInput {
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const { settings, printed } = useMakingChoices();
  const nap = napFor(useCutChoices());
  return useMemo(
    () => ({
      draft,
      client,
      savedDraft,
      nap,
      ...(printed ? { making: makingFor({ settings }, client.unit) } : {}),
      date: new Date().toLocaleDateString(undefined, { dateStyle: 'medium' }),
    }),
    [draft, client, savedDraft, nap, settings, printed],
  );
}

/** Why no file may be made now, and where that is cured: a step, or the cautions in one. */
export interface Refusal {
  readonly sentence: string;
  readonly cure: 'measure' | 'draft' | 'cautions';
}

/** Null when every file may be made. */
export function refusalOf({ draft, savedDraft }: PlanInput): Refusal | null {
  const { pieces, issues } = draft;
  if (issues.some(({ code }) => code === 'measurementMissing'))
    return {
      sentence: 'Some measurements that the draft needs are not filled in.',
      cure: 'measure',
    };
  if (pieces.length === 0 || issues.some(({ severity }) => severity === 'error'))
    return {
      sentence: 'The draft cannot be cut as it is, so it is not printed; what to change stands below.',
      cure: 'draft',
    };
  if (awaitsReading({ draft, savedDraft }))
    return {
      sentence:
        'The garment is drawn in by more than is usual. Read the cautions and acknowledge them in the Draft step; then it prints.',
      cure: 'cautions',
    };
  return null;
}

/** Waist or ribs are drawn in by so much that the cautions have to be read before anything is printed. */
export const awaitsReading = ({ draft, savedDraft }: Pick<PlanInput, 'draft' | 'savedDraft'>): boolean =>
  draft.issues.some((issue) => wantsReading(issue) && !isRead(issue, savedDraft));
