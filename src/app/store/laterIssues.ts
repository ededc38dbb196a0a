// What the draft in view says, for the first step: it is on the screen before the engine is fetched.

import { useSyncExternalStore } from 'react';
import type { Issue } from '../../engine';
import { useOpen } from './storeHooks';

type Drafts = typeof import('./drafts');

let fetched: Drafts | null = null;
const lookers = new Set<() => void>();

/** The issues of the draft; none until the engine is there. */
export function useLaterIssues(): readonly Issue[] {
  const { client, savedDraft } = useOpen();
  const drafts = useSyncExternalStore(subscribe, () => fetched);
  return drafts ? drafts.draftOfSide(client, savedDraft, null).issues : NONE;
}

const NONE: readonly Issue[] = [];

function subscribe(look: () => void): () => void {
  lookers.add(look);
  if (!fetched)
    // Where it does not come, the next who looks asks again.
    import('./drafts').then(
      (drafts) => {
        fetched = drafts;
        for (const each of lookers) each();
      },
      () => undefined,
    );
  return () => lookers.delete(look);
}

/** Says that a draft in the style in view cannot be cut without a measurement, which is not taken. */
export const isOfNeeded = ({ code, severity }: Issue): boolean =>
  code === 'measurementMissing' && severity === 'error';

/** Whether this measurement is one of those. */
export const isNeeded = (field: string, issues: readonly Issue[]): boolean =>
  issues.some((issue) => isOfNeeded(issue) && issue.at.field === field);
