// Reads a kept book of any version from its text.

import { MIGRATIONS } from '../migrations/migrations';
import { type ReadBook, readBookData, unreadable } from './readBookData';

/** Reads a book from text. Never throws; an id that occurs twice is mended, so that nothing kept is lost. */
export function readBook(text: string): ReadBook {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return unreadable({ code: 'notWhole' });
  }
  return readBookData(data, MIGRATIONS);
}
