// Compares a backup with the book, and brings back what is chosen of it.

import type { Book, Client, OwnStyle } from '../../model/book';
import { entriesOf, withOpened } from '../../model/entries';
import type { Backup } from '../../model/kept/readBackup';
import { freeName } from './freeName';

type Parts = Pick<Backup, 'clients' | 'styles'>;

/** How something that is in the book already comes back: in the place of what is there, or beside it under another name. */
export type RestoreHow = 'instead' | 'beside';

/** What a backup holds, beside the book: not there yet, the same, or different. */
interface BackedUp<T> {
  readonly part: T;
  readonly state: 'new' | 'same' | 'different';
  /** The one in the book; for a `same` one, perhaps under another id. */
  readonly here: T | null;
}

export interface BackedUpClient extends BackedUp<Client> {
  /** What differs, in the words of the screen. */
  readonly differs: readonly Difference[];
  /** Which of two different ones was changed later; null where that is not known. */
  readonly newer: 'backup' | 'book' | null;
}

export type BackedUpStyle = BackedUp<OwnStyle>;

type Difference = 'name' | 'measurements' | 'drafts' | 'readings' | 'otherwise';

/** Ids of the clients of the book that a backup is to be compared with, and that must therefore be opened first. */
export function comparedWith(book: Book, { clients }: Parts): readonly string[] {
  const ids = new Set(clients.map(({ id }) => id));
  const names = new Set(clients.map(({ name }) => name));
  return entriesOf(book)
    .filter(({ id, name }) => ids.has(id) || names.has(name))
    .map(({ id }) => id);
}

/**
 * Every client of a backup, in its order, against the book. A client of the same name and content is the same woman under
 * whatever id; one of the same id and another name may be another woman.
 */
export function compareClients(book: Book, { clients }: Parts): BackedUpClient[] {
  return clients.map((part) => {
    const here = book.clients.find(({ id }) => id === part.id) ?? null;
    const differs = here
      ? DIFFERENCES.flatMap(([difference, of]) => (same(of(part), of(here)) ? [] : [difference]))
      : [];
    const twin = here ? null : (book.clients.find((each) => isTwin(part, each)) ?? null);
    if (twin || (here && differs.length === 0))
      return { part, state: 'same', here: here ?? twin, differs: [], newer: null };
    return here
      ? { part, state: 'different', here, differs, newer: newerOf(part, here) }
      : { part, state: 'new', here, differs, newer: null };
  });
}

const isTwin = (one: Client, other: Client): boolean =>
  DIFFERENCES.every(([, of]) => same(of(one), of(other)));

function newerOf(backedUp: Client, here: Client): 'backup' | 'book' | null {
  const times: readonly (readonly [string | null | undefined, string | null | undefined])[] = [
    [backedUp.changed, here.changed],
    [backedUp.lastUsed, here.lastUsed],
    [backedUp.takenOn, here.takenOn],
  ];
  for (const [then, now] of times) if (then && now && then !== now) return then > now ? 'backup' : 'book';
  return null;
}

const DIFFERENCES: readonly (readonly [Difference, (client: Client) => unknown])[] = [
  ['name', ({ name }) => name],
  ['measurements', ({ measurements, sides, takenOn, earlier }) => [measurements, sides, takenOn, earlier]],
  ['drafts', ({ drafts }) => drafts],
  ['readings', ({ readings, estimated }) => [readings, estimated]],
  ['otherwise', ({ unit, archived, prints }) => [unit, archived, prints]],
];

/** Every style of a backup, in its order, against the book. */
export function compareStyles(book: Book, { styles }: Parts): BackedUpStyle[] {
  return styles.map((part) => {
    const here = book.styles.find(({ id }) => id === part.id) ?? null;
    return { part, state: here === null ? 'new' : same(part, here) ? 'same' : 'different', here };
  });
}

/** What is to be brought back from a backup, by id; how is asked only of what is in the book already. */
export interface Chosen {
  readonly clients: ReadonlyMap<string, RestoreHow>;
  readonly styles: ReadonlyMap<string, RestoreHow>;
}

/**
 * The book with what was chosen of a backup in it.
 *
 * @param newId gives an id for each that is put beside one of its id
 */
export function restore(book: Book, backup: Parts, chosen: Chosen, newId: () => string): Book {
  const names = entriesOf(book).map(({ name }) => name);
  const ids = new Set(entriesOf(book).map(({ id }) => id));
  const withClients = backup.clients.reduce((before, client) => {
    const how = chosen.clients.get(client.id);
    if (how === undefined) return before;
    if (how === 'instead' || !ids.has(client.id)) return withOpened(before, client);
    const name = freeName(client.name, names);
    names.push(name);
    return withOpened(before, { ...client, id: newId(), name });
  }, book);
  const styles = backup.styles.reduce(
    (before, style) => withStyle(before, style, chosen.styles.get(style.id), newId),
    book.styles,
  );
  return styles === book.styles ? withClients : { ...withClients, styles };
}

function withStyle(
  styles: readonly OwnStyle[],
  style: OwnStyle,
  how: RestoreHow | undefined,
  newId: () => string,
): readonly OwnStyle[] {
  if (how === undefined) return styles;
  const isThere = styles.some(({ id }) => id === style.id);
  if (isThere && how === 'instead') return styles.map((each) => (each.id === style.id ? style : each));
  const name = freeName(
    style.name,
    styles.map((each) => each.name),
  );
  return [...styles, { ...style, name, id: isThere ? newId() : style.id }];
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
