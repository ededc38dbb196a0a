// The book from everything that lies in the storage. Writes nothing. Fetched only where there is something to read.

import {
  BOOK_VERSION,
  type Book,
  type BookFault,
  byLastUse,
  type Client,
  DEMO_CLIENT,
  demoBook,
  type FaultyPart,
  type Migrations,
  type OwnStyle,
  readParts,
  SHARED_ID,
  type UnopenedClient,
  withIdsApart,
  withUnopened,
} from '../../../document';
import { unpack } from './packing';
import { pause } from './pause';
import { readClientRecord, readStyleRecord, unopenedOf } from './readRecord';
import { DEFLATED_MARK, type Head, kindOfKey, LAYOUT, readOpenMark, recordKey, splitRecord } from './record';

/** What lies in the storage, as it was read. */
export interface Kept {
  /** By key. */
  readonly records: ReadonlyMap<string, string>;
  readonly open: string | null;
  /** The book of the first layout. */
  readonly earlier: string | null;
}

/** The heads of records by key; null for a text that is not as it was written. */
export type Heads = ReadonlyMap<string, Head | null>;

/** Heads are read for no longer than this at a time: short of what a user feels, and long beside what a pause costs. ms */
const SLICE_MS = 24;

/** The heads of all records; the page stays responsive while those of thousands are read. */
export async function headsOf(records: Kept['records'], now = () => performance.now()): Promise<Heads> {
  const heads = new Map<string, Head | null>();
  let end = now() + SLICE_MS;
  for (const [key, text] of records) {
    heads.set(key, splitRecord(text)?.head ?? null);
    if (now() < end) continue;
    await pause();
    end = now() + SLICE_MS;
  }
  return heads;
}

/** What of the book lies under a key. */
export interface Known {
  readonly entry: object | null;
  readonly text: string | null;
  /** Of a style. */
  readonly order?: number;
}

export interface OpenedBook {
  readonly book: Book;
  /** By key, for every record that was read. */
  readonly known: ReadonlyMap<string, Known>;
  readonly notices: readonly Finding[];
  /** Keys of records that cannot be listed; they stay as they are. */
  readonly unreadable: readonly string[];
  /** Something that had to be read is of an earlier version, from which no step was given: it is left as it lies. */
  readonly isEarlier: boolean;
  /** What of the earlier book cannot be read, as texts to be put aside before that book is removed; null where it stays. */
  readonly moves: { readonly aside: readonly string[]; readonly invented: string } | null;
}

/** What there is to say of what was found. */
export type Finding =
  /** The book of the first layout cannot be read, or something was written by a later build. */
  | { readonly kind: 'unreadable'; readonly fault: BookFault }
  | { readonly kind: 'newer'; readonly version: number }
  /** Clients and styles that cannot be read as they are; `names` are those that can be read. */
  | { readonly kind: 'setAside'; readonly names: readonly string[]; readonly count: number }
  /** A tab with an earlier build has written a book of the first layout. */
  | { readonly kind: 'earlierBuild' };

interface Opening {
  readonly heads: Heads;
  readonly newId: () => string;
  /** Ids of clients to be opened beside the one that was. */
  readonly also: readonly string[];
  /** From earlier versions; all of them where there is a book of the first layout. */
  readonly steps: Migrations;
}

/** Never throws. The book has at least one opened client: the invented one where no other can be read. */
export function openKept(
  { records, open, earlier }: Kept,
  { heads, newId, also, steps }: Opening,
): OpenedBook {
  const known = new Map<string, Known>();
  const notices: Finding[] = [];
  const unreadable: string[] = [];
  const unopened = new Map<string, UnopenedClient>();
  const styles: { style: OwnStyle; order: number }[] = [];
  let isEarlier = false;
  const set: { faulty: string[]; count: number } = { faulty: [], count: 0 };
  const setAside = (name: string): void => {
    set.count += 1;
    if (name !== '') set.faulty.push(name);
  };
  for (const [key, text] of records) {
    const head = heads.get(key);
    if (!head || head.layout > LAYOUT || recordKey(head.kind, head.id) !== key) {
      unreadable.push(key);
      setAside(head?.name ?? '');
    } else if (kindOfKey(key) === 'style') {
      const read = readStyleRecord(text, steps);
      if (read.kind === 'read') {
        styles.push(read.value);
        known.set(key, { entry: read.value.style, text, order: read.value.order });
      } else if (read.kind === 'earlier') isEarlier = true;
      else {
        unreadable.push(key);
        setAside(head.name);
      }
    } else if (head.kind === 'client') {
      const entry = unopenedOf(head, text);
      unopened.set(head.id, entry);
      known.set(key, { entry, text });
    }
  }
  const mark = readOpenMark(open);
  const opened = new Map<string, Client>();
  const tryToOpen = (id: string): boolean => {
    const entry = unopened.get(id);
    if (!entry) return opened.has(id);
    const read = readClientRecord(entry.record, steps);
    if (read.kind === 'read') {
      unopened.delete(id);
      opened.set(id, read.value);
      known.set(recordKey('client', id), { entry: read.value, text: entry.record });
      return true;
    }
    if (read.kind === 'earlier') {
      isEarlier = true;
      return false;
    }
    if (read.kind === 'newer') {
      // She may be asked for twice: as the one who was open, and for the history.
      if (!notices.some(({ kind }) => kind === 'newer'))
        notices.push({ kind: 'newer', version: read.version });
      return false;
    }
    unopened.delete(id);
    known.delete(recordKey('client', id));
    unreadable.push(recordKey('client', id));
    setAside(entry.name);
    return false;
  };
  for (const id of also) tryToOpen(id);

  const isMoving = earlier !== null && (records.size === 0 || mark.moving !== undefined);
  const invented = mark.moving ?? newId();
  let moves: OpenedBook['moves'] = null;
  let openId = mark.open ?? '';
  if (earlier !== null) {
    const found = readEarlier(earlier, steps);
    if (found.kind !== 'parts') notices.push(found);
    else if (!isMoving) notices.push({ kind: 'earlierBuild' });
    else {
      const { parts } = found;
      const faulty: FaultyPart[] = [...parts.faultyClients, ...parts.faultyStyles];
      for (const { name } of faulty) setAside(name);
      moves = { aside: faulty.map(({ book }) => JSON.stringify(book)), invented };
      for (const client of parts.clients.map((each) => withIdOf(each, invented)))
        if (!unopened.has(client.id) && !opened.has(client.id)) opened.set(client.id, client);
      for (const style of parts.styles)
        if (!styles.some((each) => each.style.id === style.id)) styles.push({ style, order: styles.length });
      if (openId === '') openId = parts.openClient === SHARED_ID ? invented : parts.openClient;
    }
  }

  if (!opened.has(openId) && !tryToOpen(openId) && opened.size === 0)
    for (const { id } of [...unopened.values()].sort(byLastUse)) if (tryToOpen(id)) break;
  if (set.count > 0) notices.unshift({ kind: 'setAside', names: set.faulty, count: set.count });
  const start = opened.size === 0 ? demoBook(newId()) : null;
  const book: Book = withUnopened(
    {
      version: BOOK_VERSION,
      styles: styles
        .sort((a, b) => a.order - b.order || (a.style.id < b.style.id ? -1 : 1))
        .map(({ style }) => style),
      clients: start ? start.clients : [...opened.values()],
      openClient: opened.has(openId) ? openId : (start?.openClient ?? [...opened.keys()].at(-1) ?? ''),
    },
    [...unopened.values()],
  );
  return { book: withIdsApart(book), known, notices, unreadable, isEarlier, moves };
}

type Earlier =
  | ReturnType<typeof readParts>
  | { readonly kind: 'unreadable'; readonly fault: { code: 'notWhole' } };

function readEarlier(text: string, steps: Migrations): Earlier {
  try {
    return readParts(JSON.parse(inflatedBook(text)), steps);
  } catch {
    return { kind: 'unreadable', fault: { code: 'notWhole' } };
  }
}

/** The text of an earlier book, whether it was deflated or not. May throw. */
export const inflatedBook = (text: string): string =>
  text.startsWith(DEFLATED_MARK) ? unpack(text.slice(DEFLATED_MARK.length)) : text;

/** The invented client had one id in every book of the first layout. */
const withIdOf = (client: Client, invented: string): Client => {
  if (client.id !== SHARED_ID) return client;
  return { ...client, id: invented, ...(client.name === DEMO_CLIENT.name ? { invented: true } : {}) };
};
