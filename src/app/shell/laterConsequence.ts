// What tells the consequence of a change, with the names of pieces that it speaks of: fetched once the first step is shown.

import type { consequence } from './consequence';

type Consequence = typeof consequence;

let fetched: Consequence | null = null;

/** Null until it was fetched. */
export const fetchedConsequence = (): Consequence | null => fetched;

/** Rejected where it cannot be fetched; another call tries again. */
export async function fetchConsequence(): Promise<Consequence> {
  fetched ??= (await import('./consequence')).consequence;
  return fetched;
}
