// The one door by which a kept book comes in: unknown text, then JSON, then its version, then its shape.

import { BOOK_VERSION, type Book, bookSchema } from './book';
import { MIGRATIONS, migrate } from './migrations/migrate';
import { withIdsApart } from './withIdsApart';

/** `reason` is a sentence for the maker. `newer`: written by a later build, to be put aside and not touched. */
export type ReadBook =
  | { readonly kind: 'book'; readonly book: Book }
  | { readonly kind: 'unreadable'; readonly reason: string }
  | { readonly kind: 'newer'; readonly version: number };

/** Reads a book from text. Never throws; an id that occurs twice is mended, so that nothing kept is lost. */
export function readBook(text: string): ReadBook {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return unreadable('It is not whole, or no book of this page.');
  }
  const version = versionOf(data);
  if (version === null) return unreadable('It is not a client book: it carries no version.');
  if (version > BOOK_VERSION) return { kind: 'newer', version };
  const parsed = bookSchema.safeParse(migrate(data, version, BOOK_VERSION, MIGRATIONS));
  if (!parsed.success) {
    const path = parsed.error.issues[0]?.path.join('.');
    return unreadable(`It is not a client book as this version keeps it${path ? `: see ${path}` : ''}.`);
  }
  // JSON cannot hold `undefined`, so the schema's optional parts are there or not there, as the type says.
  return { kind: 'book', book: withIdsApart(parsed.data as Book) };
}

const unreadable = (reason: string): ReadBook => ({ kind: 'unreadable', reason });

function versionOf(data: unknown): number | null {
  if (typeof data !== 'object' || data === null || !('version' in data)) return null;
  const { version } = data;
  return typeof version === 'number' && Number.isInteger(version) && version >= 1 ? version : null;
}
