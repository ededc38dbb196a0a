// Everything that lies in the storage, read once when the page is opened.

import type { StorageLike } from '../device/storageLike';
import type { Kept } from '../records/openKept';
import { BOOK_KEY, kindOfKey, OPEN_KEY } from '../records/record';

/** What all keys of this page begin with. */
const OWN = 'staywright.';

/** Null where it cannot be read. Every key is read, those of others too, because all of them take up room. */
export function collect(storage: StorageLike): Kept | null {
  try {
    const keys = Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? '');
    const texts = new Map<string, string>();
    for (const key of keys) {
      const text = storage.getItem(key);
      if (text !== null) texts.set(key, text);
      // A key that is listed and has no text is one that was not given out.
      else if (key.startsWith(OWN)) return null;
    }
    return {
      records: new Map([...texts].filter(([key]) => kindOfKey(key) !== null)),
      open: texts.get(OPEN_KEY) ?? null,
      earlier: texts.get(BOOK_KEY) ?? null,
    };
  } catch {
    return null;
  }
}
