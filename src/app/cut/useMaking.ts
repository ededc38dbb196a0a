// What is to be cut, bought and made for the open draft, by the workshop's own figures.

import { useMemo } from 'react';
import { type MakingList, type MakingSection, makingList, makingSections, type PlanInput } from '../../paper';
import { makingFor, useMakingChoices } from './choices/makingChoices';

export function useMaking({ draft, client: { unit }, savedDraft: { style } }: PlanInput): {
  readonly list: MakingList;
  /** The list in words; none for a draft without pieces. */
  readonly sections: readonly MakingSection[];
} {
  const settings = makingFor(useMakingChoices(), unit);
  return useMemo(() => {
    const list = makingList(draft, style, settings);
    return { list, sections: makingSections(list, settings, unit) };
  }, [draft, style, settings, unit]);
}
