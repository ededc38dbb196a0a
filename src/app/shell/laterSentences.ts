// What a change is called and what came of it, with the names of wedges and pieces that both speak of: fetched once the first step
// is shown, or when there is a change to be named.

import { useEffect, useState } from 'react';
import type { Book, Change } from '../../document';
import { later } from '../components/later/later';

interface ChangeWords {
  readonly changeSentence: (change: Change) => string;
  /** What came of a change; empty where it cannot be fetched. */
  readonly consequence: (before: Book, after: Book) => string;
}

const fetchSentence = later(async () => (await import('./changeWords')).changeSentence);
const fetchConsequence = later(async () => (await import('./consequence')).consequence);

let fetched: ChangeWords | null = null;

/** Null until it was fetched. */
export const fetchedChangeWords = (): ChangeWords | null => fetched;

/** What is being fetched, so that all who ask meanwhile get the same. */
let coming: Promise<ChangeWords> | null = null;

/** Rejected where it cannot be fetched; another call tries again. */
export async function fetchChangeWords(): Promise<ChangeWords> {
  if (fetched) return fetched;
  coming ??= fetchBoth().finally(() => {
    coming = null;
  });
  return coming;
}

async function fetchBoth(): Promise<ChangeWords> {
  const later = fetchConsequence().catch(() => null);
  const changeSentence = await fetchSentence();
  const consequence = await later;
  const words = { changeSentence, consequence: consequence ?? (() => '') };
  if (consequence) fetched = words;
  return words;
}

/** The same in a part of the screen, which is drawn again when it comes. */
export function useChangeWords(isNeeded: boolean): ChangeWords | null {
  const [words, setWords] = useState(fetched);
  useEffect(() => {
    let there = true;
    // Where it does not come, what it names goes without a name until it is asked for again.
    if (isNeeded && !fetched)
      fetchChangeWords().then(
        (found) => there && setWords(found),
        () => undefined,
      );
    return () => {
      there = false;
    };
  }, [isNeeded]);
  return fetched ?? words;
}
