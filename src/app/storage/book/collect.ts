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
    const records = new Map<string, string>();
    let open: string | null = null;
    let earlier: string | null = null;
    for (const key of keys) {
      const text = storage.getItem(key);
      if (text === null) {
        // A key that is listed and has no text is one that was not given out.
        if (key.startsWith(OWN)) return null;
      } else if (kindOfKey(key) !== null) records.set(key, text);
      else if (key === OPEN_KEY) open = text;
      else if (key === BOOK_KEY) earlier = text;
    }
    return { records, open, earlier };
  } catch {
    return null;
  }
}
