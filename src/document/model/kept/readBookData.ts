// Reads a book from its data: its version, then its shape.

import { BOOK_VERSION, type Book } from '../book';
import { type Migrations, migrate } from '../migrations/migrate';
import { bookSchema } from './bookSchema';
import { withIdsApart } from './withIdsApart';

/**
 * Why a text is no book. `notWhole`: it is not JSON. `noVersion`: it carries no version. `wrongShape`: its data are not those of
 * its version; `path` names the first place that differs, null for the whole.
 */
export type BookFault =
  | { readonly code: 'notWhole' | 'noVersion' }
  | { readonly code: 'wrongShape'; readonly path: string | null };

/** `newer`: written by a later build, to be put aside and not touched. */
export type ReadBook =
  | { readonly kind: 'book'; readonly book: Book }
  | { readonly kind: 'unreadable'; readonly fault: BookFault }
  | { readonly kind: 'newer'; readonly version: number };

/** Reads a book from data of any version from which the steps lead to this one. Never throws. */
export function readBookData(data: unknown, steps: Migrations): ReadBook {
  const version = versionOf(data);
  if (version === null) return unreadable({ code: 'noVersion' });
  if (version > BOOK_VERSION) return { kind: 'newer', version };
  const parsed = bookSchema.safeParse(migrate(data, version, BOOK_VERSION, steps));
  if (!parsed.success) {
    const path = parsed.error.issues[0]?.path ?? [];
    return unreadable({ code: 'wrongShape', path: path.length > 0 ? path.join('.') : null });
  }
  // JSON cannot hold `undefined`, so the schema's optional parts are there or not there, as the type says.
  return { kind: 'book', book: withIdsApart(parsed.data as Book) };
}

export const unreadable = (fault: BookFault): ReadBook => ({ kind: 'unreadable', fault });

/** The version that data carry; null where they carry none. */
export function versionOf(data: unknown): number | null {
  if (typeof data !== 'object' || data === null || !('version' in data)) return null;
  const { version } = data;
  return typeof version === 'number' && Number.isInteger(version) && version >= 1 ? version : null;
}
