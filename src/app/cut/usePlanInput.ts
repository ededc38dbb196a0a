// What the pattern of the draft in view is made from, and whether it may be made at all.

import { useMemo } from 'react';
import type { PlanInput } from '../../paper';
import { isAcknowledged } from '../draft/SafetyCard';
import { useDraft, useOpen } from '../tableContext';
import { makingFor, useMakingChoices } from './makingChoices';

export function usePlanInput(): PlanInput {
  const { client, sheet } = useOpen();
  const draft = useDraft();
  const { settings, printed } = useMakingChoices();
  return useMemo(
    () => ({
      draft,
      client,
      sheet,
      ...(printed ? { making: makingFor({ settings }, client.unit) } : {}),
      date: new Date().toLocaleDateString(undefined, { dateStyle: 'medium' }),
    }),
    [draft, client, sheet, settings, printed],
  );
}

/** Why no file may be made now; null when it may. */
export function refusalOf({ draft, sheet }: PlanInput): string | null {
  if (draft.pieces.length === 0) return 'There is nothing to print yet.';
  if (draft.issues.some((issue) => issue.severity === 'block'))
    return 'The draft cannot be cut as it is, so it is not printed; what to change stands below.';
  const high = draft.issues.some((issue) => issue.code === 'waistReductionHigh');
  if (high && !isAcknowledged(sheet.acknowledgedReduction, -sheet.style.ease.waist))
    return 'The waist is taken in by more than is usual. Read the cautions in the Draft step and acknowledge them; then it prints.';
  return null;
}
