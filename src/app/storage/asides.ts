// What was put aside, and what cannot be read and lies where it was: listed, let go, and kept again.

import { isQuarantineKey, listQuarantined, type QuarantinedText } from './aside/quarantine';
import type { BookStorage } from './book/bookStorage';

/** Oldest first; what lies in its own place comes last. */
export function quarantinedIn(books: BookStorage): QuarantinedText[] {
  const { storage } = books;
  if (!storage) return [];
  const inPlace = books.unreadableKeys().flatMap((key) => {
    try {
      const text = storage.getItem(key);
      return text === null ? [] : [{ key, text }];
    } catch {
      return [];
    }
  });
  return [...listQuarantined(storage), ...inPlace];
}

/** Removes one of {@link quarantinedIn}, when the user says so, and tries again what had no room. */
export function discard(books: BookStorage, key: string): void {
  const keys = books.unreadableKeys();
  if (!books.storage || !(keys.includes(key) || isQuarantineKey(key))) return;
  try {
    books.storage.removeItem(key);
  } catch {
    return;
  }
  books.setUnreadable(keys.filter((each) => each !== key));
  books.flush();
}

/** A record that turns out to be unreadable stays where it lies, and is no longer one of the book's. */
export function setAside(books: BookStorage, key: string, name: string): void {
  books.records?.forget(key);
  books.setUnreadable([...books.unreadableKeys(), key]);
  books.notify({ kind: 'setAside', names: [name], count: 1 });
}

/** Where what was kept was cleared away: keeps all of this tab's book again. */
export function keepAgain(books: BookStorage): void {
  try {
    books.records?.forgetGone();
  } catch {
    return;
  }
  books.become({ kind: 'pending' });
  books.retry();
}
