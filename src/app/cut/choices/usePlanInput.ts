// What the pattern of the open draft is made from, and whether it may be printed or saved.

import { useMemo } from 'react';
import { isRead, mockupStyle, nextMockup, PROGRAM, wantsReading } from '../../../document';
import type { PlanInput } from '../../../paper';
import { formatDay, today } from '../../components/files/formatDay';
import { draftOnce, useDraft, useOpen } from '../../store/storeContext';
import { napFor, useCutChoices } from './cutChoices';
import { makingFor, useMakingChoices } from './makingChoices';

export function usePlanInput(): PlanInput {
  const { client, savedDraft } = useOpen();
  const drafted = useDraft();
  const { settings, printed } = useMakingChoices();
  const choices = useCutChoices();
  const nap = napFor(choices);
  const { kind, mockupAllowance, linesAcross } = choices;
  const mockup = kind === 'mockup';
  const style = useMemo(
    () => (mockup ? mockupStyle(savedDraft.style, mockupAllowance) : savedDraft.style),
    [mockup, savedDraft.style, mockupAllowance],
  );
  const across = mockup ? 'all' : linesAcross ? 'waistAndBust' : null;
  return useMemo(
    () => ({
      draft: mockup ? draftOnce(client, { style, fittings: savedDraft.fittings }) : drafted,
      client,
      savedDraft: { ...savedDraft, style },
      nap,
      mockup,
      ...(mockup ? { mockupNumber: nextMockup(client, today()) } : {}),
      ...(across ? { across } : {}),
      tapeDay: client.takenOn === null ? null : formatDay(client.takenOn),
      fittingDays: savedDraft.fittings.map(({ date }) => formatDay(date)),
      program: PROGRAM,
      ...(printed ? { making: makingFor({ settings }, client.unit) } : {}),
      date: new Date().toLocaleDateString(undefined, { dateStyle: 'medium' }),
    }),
    [drafted, client, savedDraft, style, mockup, across, nap, settings, printed],
  );
}

/**
 * Why no file may be made now, named by where that is cured. `measure`: measurements are missing. `draft`: the draft has errors.
 * `cautions`: the cautions for tight lacing have not been read.
 */
export type Refusal = 'measure' | 'draft' | 'cautions';

/** Null when every file may be made. */
export function refusalOf({ draft, savedDraft }: Pick<PlanInput, 'draft' | 'savedDraft'>): Refusal | null {
  const { pieces, issues } = draft;
  if (issues.some(({ code }) => code === 'measurementMissing')) return 'measure';
  if (pieces.length === 0 || issues.some(({ severity }) => severity === 'error')) return 'draft';
  return awaitsReading({ draft, savedDraft }) ? 'cautions' : null;
}

/** Whether waist or ribs are drawn in so far that the cautions must be read before anything is printed, and are not read yet. */
export const awaitsReading = ({ draft, savedDraft }: Pick<PlanInput, 'draft' | 'savedDraft'>): boolean =>
  draft.issues.some((issue) => wantsReading(issue) && !isRead(issue, savedDraft));
