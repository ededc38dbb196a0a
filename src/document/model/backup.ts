// Reads a backup, compares it with the book, and brings back what is chosen of it.

import { BOOK_VERSION, type Book, type Client, type OwnStyle } from './book';
import { isObject } from './isObject';
import { type BookFault, type ReadBook, readBook } from './readBook';
import { BACKUP_KIND } from './writeBackup';

/** Why a text is no backup. `backupNotWhole`: it is not JSON. `notBackup`: it is something else. The others are of its book. */
export type BackupFault = BookFault | { readonly code: 'backupNotWhole' | 'notBackup' };

export type ReadBackup =
  | { readonly kind: 'backup'; readonly book: Book; readonly madeOn: string | null }
  | { readonly kind: 'unreadable'; readonly fault: BackupFault }
  | Extract<ReadBook, { readonly kind: 'newer' }>;

/** Reads a backup of this or an earlier version. Never throws. */
export function readBackup(text: string): ReadBackup {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { kind: 'unreadable', fault: { code: 'backupNotWhole' } };
  }
  if (!isObject(data) || data.kind !== BACKUP_KIND || !Array.isArray(data.clients))
    return { kind: 'unreadable', fault: { code: 'notBackup' } };
  const { kind: _kind, madeOn, clients, ...rest } = data;
  const shown = clients.map((client: unknown) => {
    if (!isObject(client)) return client;
    const { shownIn, ...others } = client;
    return { ...others, unit: shownIn };
  });
  const read = readBook(JSON.stringify({ ...rest, clients: shown }));
  if (read.kind !== 'book') return read;
  return { kind: 'backup', book: read.book, madeOn: typeof madeOn === 'string' ? madeOn : null };
}

/** What a backup holds of a client, beside the book: not there yet, the same, or different. */
export interface BackedUpClient {
  readonly client: Client;
  readonly state: 'new' | 'same' | 'different';
  /** The one in the book. */
  readonly here: Client | null;
  /** What differs, in the words of the screen. */
  readonly differs: readonly Difference[];
}

type Difference = 'name' | 'measurements' | 'drafts' | 'readings' | 'otherwise';

/** Every client of a backup, in its order, against the book. */
export function compareBackup(book: Book, backup: Book): BackedUpClient[] {
  return backup.clients.map((client) => {
    const here = book.clients.find(({ id }) => id === client.id) ?? null;
    if (!here) return { client, state: 'new', here, differs: [] };
    const differs = DIFFERENCES.flatMap(([difference, part]) =>
      same(part(client), part(here)) ? [] : [difference],
    );
    return { client, state: differs.length > 0 ? 'different' : 'same', here, differs };
  });
}

const DIFFERENCES: readonly (readonly [Difference, (client: Client) => unknown])[] = [
  ['name', ({ name }) => name],
  ['measurements', ({ measurements, sides, takenOn, earlier }) => [measurements, sides, takenOn, earlier]],
  ['drafts', ({ drafts }) => drafts],
  ['readings', ({ readings, estimated }) => [readings, estimated]],
  ['otherwise', ({ unit, archived }) => [unit, archived]],
];

/** What a backup holds of the maker's own styles, beside the book. */
export interface BackedUpStyle {
  readonly style: OwnStyle;
  readonly state: 'new' | 'same' | 'different';
  /** The one in the book. */
  readonly here: OwnStyle | null;
}

/** Every style of a backup, in its order, against the book. */
export function compareStyles(book: Book, backup: Book): BackedUpStyle[] {
  return backup.styles.map((style) => {
    const here = book.styles.find(({ id }) => id === style.id) ?? null;
    return { style, state: here === null ? 'new' : same(style, here) ? 'same' : 'different', here };
  });
}

/** What is to be brought back from a backup, by id. */
export interface Chosen {
  readonly clients: ReadonlySet<string>;
  readonly styles: ReadonlySet<string>;
}

/** The book with what was chosen of a backup in it: new ones added, those that are there replaced. */
export function restore(book: Book, backup: Book, chosen: Chosen): Book {
  const clients = withThose(book.clients, backup.clients, chosen.clients);
  const styles = withThose(book.styles, backup.styles, chosen.styles);
  if (clients === book.clients && styles === book.styles) return book;
  return { ...book, version: BOOK_VERSION, clients, styles };
}

function withThose<T extends { readonly id: string }>(
  here: readonly T[],
  backedUp: readonly T[],
  chosen: ReadonlySet<string>,
): readonly T[] {
  const taken = new Map(backedUp.filter(({ id }) => chosen.has(id)).map((each) => [each.id, each]));
  if (taken.size === 0) return here;
  const added = [...taken.values()].filter(({ id }) => !here.some((each) => each.id === id));
  return [...here.map((each) => taken.get(each.id) ?? each), ...added];
}

/** Equal as data, whatever order the parts stand in. */
function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [left, right] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
  return (
    left.size === right.size &&
    [...left].every(([key, value]) => right.has(key) && same(value, right.get(key)))
  );
}
