// What could not be opened is put aside under a key of its own, whole and as it was, until the maker lets it go.

import type { StorageLike } from '../device/storageLike';

/** One text that was put aside. */
export interface QuarantinedText {
  readonly key: string;
  /** The text as it was found: to be downloaded as it is. */
  readonly text: string;
}

const PREFIX = 'staywright.aside.';

export const isQuarantineKey = (key: string): boolean => key.startsWith(PREFIX);

/** The keys given out for each storage: one whose text cannot be read just now is not given out again. */
const given = new WeakMap<StorageLike, Set<string>>();

/**
 * Puts a text aside under a new key that tells the time, never over another, and reads it back. Gives the key, or null
 * where the storage would not take it whole.
 */
export function quarantine(storage: StorageLike, text: string, now: Date): string | null {
  const stamp = `${PREFIX}${now.toISOString()}`;
  const taken = given.get(storage) ?? new Set();
  given.set(storage, taken);
  try {
    let key = stamp;
    for (let count = 2; taken.has(key) || storage.getItem(key) !== null; count += 1)
      key = `${stamp}.${count}`;
    taken.add(key);
    storage.setItem(key, text);
    return storage.getItem(key) === text ? key : null;
  } catch {
    return null;
  }
}

/** Everything put aside, oldest first; what cannot be read just now is left out. */
export function listQuarantined(storage: StorageLike): QuarantinedText[] {
  const found: QuarantinedText[] = [];
  try {
    for (let i = 0; i < storage.length; i += 1) {
      const key = storage.key(i);
      const text = key !== null && isQuarantineKey(key) ? storage.getItem(key) : null;
      if (key !== null && text !== null) found.push({ key, text });
    }
  } catch {
    // The list is for showing and for telling texts apart: an incomplete one loses nothing.
  }
  return found.sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** Puts a text aside unless it lies there already: each start of the page may find the same one again. */
export const quarantineOnce = (storage: StorageLike, text: string, now: Date): string | null =>
  listQuarantined(storage).find((each) => each.text === text)?.key ?? quarantine(storage, text, now);
