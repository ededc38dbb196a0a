// What tells the consequence of a change, with the names of pieces that it speaks of: fetched once the first step is shown.

import { later } from '../components/later';
import type { consequence } from './consequence';

type Consequence = typeof consequence;

const fetchPart = later(async () => (await import('./consequence')).consequence);

let fetched: Consequence | null = null;

/** Null until it was fetched. */
export const fetchedConsequence = (): Consequence | null => fetched;

/** Rejected where it cannot be fetched; another call tries again. */
export async function fetchConsequence(): Promise<Consequence> {
  fetched ??= await fetchPart();
  return fetched;
}
