// Opens clients of whom the book has only the record.

import type { Book, Client, UnopenedClient } from '../../../document';
import type { ReadRecord } from '../records/readRecord';
import { fetchReader } from './bookStorage';

/** Opened for no longer than this at a time. */
const SLICE_MS = 12;

/** The client of an entry. Rejected where what reads a record cannot be fetched. */
export async function openedClient(book: Book, entry: { readonly id: string }): Promise<ReadRecord<Client>> {
  const opened = book.clients.find(({ id }) => id === entry.id);
  if (opened) return { kind: 'read', value: opened };
  const unopened = book.unopened?.find(({ id }) => id === entry.id);
  return unopened ? (await recordReader())(unopened.record) : { kind: 'notWhole' };
}

/** What reads the record of a client of any version. Rejected where it, or the steps that it needs, cannot be fetched. */
async function recordReader(): Promise<(text: string) => Promise<ReadRecord<Client>>> {
  const { readClientRecord, fetchSteps, NO_STEPS } = await fetchReader();
  return async (text) => {
    const read = readClientRecord(text, NO_STEPS);
    return read.kind === 'earlier' ? readClientRecord(text, await fetchSteps()) : read;
  };
}

export interface OpenedClients {
  readonly book: Book;
  /** Those who cannot be read. */
  readonly unreadable: readonly UnopenedClient[];
}

/**
 * The book with these clients opened, all of them where none are named; the page stays responsive meanwhile. Rejected where what
 * reads a record cannot be fetched.
 */
export async function withClientsOpened(
  book: Book,
  ids: readonly string[] | null = null,
): Promise<OpenedClients> {
  const chosen = new Set(ids);
  const wanted = (book.unopened ?? []).filter(({ id }) => ids === null || chosen.has(id));
  if (wanted.length === 0) return { book, unreadable: [] };
  const readClient = await recordReader();
  const opened: Client[] = [];
  const unreadable: UnopenedClient[] = [];
  let end = performance.now() + SLICE_MS;
  for (const entry of wanted) {
    const read = await readClient(entry.record);
    if (read.kind === 'read') opened.push(read.value);
    else unreadable.push(entry);
    if (performance.now() > end) {
      await new Promise((go) => setTimeout(go));
      end = performance.now() + SLICE_MS;
    }
  }
  const known = new Set(opened.map(({ id }) => id));
  const left = (book.unopened ?? []).filter(({ id }) => !known.has(id));
  const { unopened: _, ...rest } = book;
  const clients = [...book.clients, ...opened];
  return { book: left.length > 0 ? { ...rest, clients, unopened: left } : { ...rest, clients }, unreadable };
}
