// The four steps of the work, kept in the address so that a reload comes back to the same one.

import { useCallback, useSyncExternalStore } from 'react';
import { SHELL } from '../../document';

export const STEPS = [
  { name: 'measure', label: SHELL.steps.measure },
  { name: 'draft', label: SHELL.steps.draft },
  { name: 'fit', label: SHELL.steps.fit },
  { name: 'cut', label: SHELL.steps.cut },
] as const;

export type StepName = (typeof STEPS)[number]['name'];

/** Names that steps had before, which addresses and bookmarks may still have. */
const FORMER_NAMES: ReadonlyMap<string, StepName> = new Map([['true', 'fit']]);

function stepInAddress(): StepName {
  const name = window.location.hash.slice(1);
  return STEPS.find((step) => step.name === name)?.name ?? FORMER_NAMES.get(name) ?? 'measure';
}

function listen(follow: () => void): () => void {
  window.addEventListener('hashchange', follow);
  return () => window.removeEventListener('hashchange', follow);
}

/** The step in view, and how to go to another. An address that changes before the page is drawn is followed as well. */
export function useStep(): [StepName, (step: StepName) => void] {
  const step = useSyncExternalStore(listen, stepInAddress);
  const go = useCallback((next: StepName) => {
    window.location.hash = next;
    window.scrollTo({ top: 0 });
  }, []);
  return [step, go];
}
