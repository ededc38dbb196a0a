// Reads what was put aside: a record, a book of the first layout, or a book with one client in it.

import { isObject, type ReadBackup, readBackup } from '../../../document';
import { inflatedBook } from '../records/openKept';
import { bookOfRecord } from '../records/readRecord';
import { kindOfKey } from '../records/record';
import type { QuarantinedText } from './quarantine';

/**
 * What was put aside as a backup is read. Never throws.
 *
 * @param key where it lies; a record that lies in its own place gives its client or style another id, under which there is room
 */
export function readAside({ key, text }: QuarantinedText, newId: () => string): ReadBackup {
  const book = kindOfKey(key) === null ? null : bookOfRecord(text);
  if (!book) return readBackup(asideFile(text), newId);
  const withNewId = (part: unknown): unknown => (isObject(part) ? { ...part, id: newId() } : part);
  const parts = { clients: book.clients.map(withNewId), styles: book.styles.map(withNewId) };
  return readBackup(JSON.stringify({ ...book, ...parts }), newId);
}

/** The text as a file that can be read elsewhere; as it was where it cannot be read here. */
export function asideFile(text: string): string {
  try {
    const book = bookOfRecord(text);
    return book ? JSON.stringify(book, null, 1) : inflatedBook(text);
  } catch {
    return text;
  }
}
