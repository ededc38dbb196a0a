// What a maker can do to the list of clients and to a client's drafts, each as a pure step from one book to the next.

import { DRAFT_NAMES } from '../../messages/screens/choices';
import {
  type Book,
  type Client,
  type ClientEntry,
  openClient,
  openDraftOf,
  type SavedDraft,
} from '../../model/book';
import { entriesOf, withUnopened } from '../../model/entries';
import { newDraft } from '../../model/newClient';
import { clientToAdd } from './addClient';
import { freeName } from './freeName';

/** Somebody to be added: her id, and her measurements, mm, where she has any. */
interface AddedPerson {
  readonly id: string;
  readonly name: string;
  readonly measured: Partial<Client['measurements']>;
}

/** Adds clients with what was measured of them; the open client stays open. */
export const addPeople = (book: Book, people: readonly AddedPerson[]): Book => ({
  ...book,
  clients: [
    ...book.clients,
    ...people.map(({ id, name, measured }): Client => {
      const client = clientToAdd(book, id, name);
      return { ...client, measurements: { ...client.measurements, ...measured } };
    }),
  ],
});

/** Adds a copy of a client with all her drafts, under a name of its own, and opens it. */
export function duplicateClient(book: Book, of: string, id: string): Book {
  const client = book.clients.find((each) => each.id === of);
  if (!client) return book;
  const name = freeName(
    client.name,
    entriesOf(book).map((each) => each.name),
  );
  const { invented: _, ...own } = client;
  const copy: Client = { ...own, id, name, archived: false, lastUsed: null };
  return { ...book, clients: [...book.clients, copy], openClient: id };
}

/** Opens a client; `now` is the ISO instant by which the list is sorted. */
export function openClientOf(book: Book, id: string, now: string): Book {
  return {
    ...book,
    clients: book.clients.map((client) => (client.id === id ? { ...client, lastUsed: now } : client)),
    openClient: id,
  };
}

/** Puts a client out of the way, or back. */
export function archiveClient(book: Book, id: string, archived: boolean): Book {
  return {
    ...book,
    clients: book.clients.map((client) => (client.id === id ? { ...client, archived } : client)),
  };
}

/**
 * Takes a client out of the book; the last opened one stays. Where she was open, the one used last is opened, who must be among
 * the opened ones: see {@link openedAfter}.
 */
export function removeClient(book: Book, id: string): Book {
  const clients = book.clients.filter((client) => client.id !== id);
  const [next] = [...clients].sort(byLastUse);
  if (!next) return book;
  const unopened = (book.unopened ?? []).filter((client) => client.id !== id);
  if (clients.length + unopened.length === entriesOf(book).length) return book;
  return withUnopened(
    { ...book, clients, openClient: openClient(book).id === id ? next.id : book.openClient },
    unopened,
  );
}

/** The client who is opened when this one is taken out; null where she stays, since she is the only one. */
export function openedAfter(book: Book, id: string): ClientEntry | null {
  const open = openClient(book);
  const others = entriesOf(book).filter((each) => each.id !== id);
  if (open.id !== id) return others.find((each) => each.id === open.id) ?? null;
  return [...others].sort(byLastUse)[0] ?? null;
}

/** The used last first, those in the archive after all others. */
export function byLastUse(
  a: Pick<Client, 'archived' | 'lastUsed'>,
  b: Pick<Client, 'archived' | 'lastUsed'>,
): number {
  if (a.archived !== b.archived) return a.archived ? 1 : -1;
  const [used, other] = [a.lastUsed ?? '', b.lastUsed ?? ''];
  return used === other ? 0 : used > other ? -1 : 1;
}

/** Adds a draft to a client and opens it: a copy of the open one, or one in the default style. */
export function addDraft(client: Client, id: string, from: 'copy' | 'default'): Client {
  const names = client.drafts.map(({ name }) => name);
  const open = openDraftOf(client);
  const savedDraft: SavedDraft =
    from === 'copy'
      ? { ...open, id, name: freeName(open.name, names) }
      : newDraft({ id, name: freeName(DRAFT_NAMES.another, names) });
  return { ...client, drafts: [...client.drafts, savedDraft], openDraft: id };
}

/** Takes a draft off a client; the last one stays. */
export function removeDraft(client: Client, id: string): Client {
  const drafts = client.drafts.filter((savedDraft) => savedDraft.id !== id);
  const [first] = drafts;
  if (!first || drafts.length === client.drafts.length) return client;
  return { ...client, drafts, openDraft: openDraftOf(client).id === id ? first.id : client.openDraft };
}
