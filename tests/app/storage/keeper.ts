// One tab over a storage for tests: its keeper, its store, and what lies in the storage as another tab would read it.

import { asideFile } from '../../../src/app/storage/aside/lookInside';
import { listQuarantined } from '../../../src/app/storage/aside/quarantine';
import { BookStorage } from '../../../src/app/storage/book/bookStorage';
import { collect } from '../../../src/app/storage/book/collect';
import { clientsOfHistory, keepHistory, loadHistory } from '../../../src/app/storage/book/historyStorage';
import { type Host, hostOf } from '../../../src/app/storage/device/host';
import { openKept } from '../../../src/app/storage/records/openKept';
import { readClientRecord } from '../../../src/app/storage/records/readRecord';
import { splitRecord } from '../../../src/app/storage/records/record';
import { hear } from '../../../src/app/storage/windows/otherTabs';
import { createStore, type Store } from '../../../src/app/store/store';
import {
  type Book,
  type Client,
  changeClient,
  MIGRATIONS,
  openClientOf,
  withOpened,
} from '../../../src/document';
import type { FakeStorage } from './fakeStorage';

const NOW = new Date('2026-11-25T09:41:00.000Z');
export const ASIDE = `staywright.aside.${NOW.toISOString()}`;

export interface Tab {
  readonly books: BookStorage;
  readonly store: Store;
  readonly host: Host;
  /** Gives the client in view another name, as one change. */
  readonly rename: (name: string) => void;
  readonly open: (id: string) => void;
  readonly hear: (key: string | null, value: string | null) => Promise<void>;
}

let ids = 0;
/** An id that no other has. */
export const newId = (): string => {
  ids += 1;
  return `id-${String(ids).padStart(4, '0')}`;
};

export const keeperOf = (storage: FakeStorage | null): BookStorage =>
  new BookStorage({ storage, now: () => NOW, newId });

/** A tab as the page opens one. */
export async function openTab(storage: FakeStorage | null): Promise<Tab> {
  const books = keeperOf(storage);
  const also = clientsOfHistory(books.storage);
  const book = await books.load(also);
  const store = createStore(book, loadHistory(books, book), () => NOW);
  keepHistory(books, () => store.getState().history);
  store.subscribe(({ history }, before) => {
    if (history.present !== before.history.present) books.save(history.present);
  });
  const host = hostOf(store);
  const { change } = store.getState();
  return {
    books,
    store,
    host,
    rename: (name) =>
      change({ code: 'clientRenamed' }, (before) => changeClient(before, (client) => ({ ...client, name }))),
    open: (id) =>
      change({ code: 'clientOpened', name: id }, (before) => {
        const entry = before.unopened?.find((each) => each.id === id);
        const read = entry ? readClientRecord(entry.record, MIGRATIONS) : null;
        const opened = read?.kind === 'read' ? withOpened(before, read.value) : before;
        return openClientOf(opened, id, NOW.toISOString());
      }),
    hear: (key, value) => hear(books, host, key, value),
  };
}

/** Every client that lies in a storage, read as a new tab would, by name. */
export function clientsIn(storage: FakeStorage): Map<string, Client> {
  const kept = collect(storage);
  if (!kept) throw new Error('the storage cannot be read');
  const ids = [...kept.records.keys()].map((key) => key.replace('staywright.client.', ''));
  const heads = new Map([...kept.records].map(([key, text]) => [key, splitRecord(text)?.head ?? null]));
  const { book } = openKept(kept, { heads, newId, also: ids, steps: MIGRATIONS });
  return new Map(book.clients.map((client) => [client.name, client]));
}

/** Names of all clients of whom something lies in a storage: kept, put aside, or in a book of the first layout. */
export function namesIn(storage: FakeStorage): Set<string> {
  const names = new Set(clientsIn(storage).keys());
  for (const { text } of listQuarantined(storage))
    for (const [, name] of asideFile(text).matchAll(/"name": ?"([^"]*)"/g)) names.add(name ?? '');
  const earlier = storage.kept.get('staywright.book');
  if (earlier !== undefined)
    for (const [, name] of asideFile(earlier).matchAll(/"name": ?"([^"]*)"/g)) names.add(name ?? '');
  return names;
}

export const present = ({ store }: Tab): Book => store.getState().history.present;
