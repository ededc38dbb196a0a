// What a maker can do to the list of clients and to a client's drafts, each as a pure step from one book to the next.

import { DRAFT_NAMES } from '../messages/screens/choices';
import { type Book, type Client, openClient, openDraftOf, type SavedDraft } from '../model/book';
import { newClient, newDraft } from '../model/newClient';
import { freeName } from './freeName';

/** Adds a client with nothing measured yet and one draft in the default style, and opens her. */
export function addClient(book: Book, id: string, name: string): Book {
  const draft = { id: `${id}-1`, name: DRAFT_NAMES.first };
  const client = newClient({ id, name, unit: openClient(book).unit, draft });
  return { ...book, clients: [...book.clients, client], openClient: id };
}

/** Adds a copy of a client with all her drafts, under a name of its own, and opens it. */
export function duplicateClient(book: Book, of: string, id: string): Book {
  const client = book.clients.find((each) => each.id === of);
  if (!client) return book;
  const name = freeName(
    client.name,
    book.clients.map((each) => each.name),
  );
  const copy: Client = { ...client, id, name, archived: false, lastUsed: null };
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

/** Takes a client out of the book; the last one stays. Where she was open, the one used last is opened. */
export function removeClient(book: Book, id: string): Book {
  const clients = book.clients.filter((client) => client.id !== id);
  const [next] = [...clients].sort(byLastUse);
  if (!next || clients.length === book.clients.length) return book;
  return { ...book, clients, openClient: openClient(book).id === id ? next.id : book.openClient };
}

/** The used last first, those in the archive after all others. */
export function byLastUse(a: Client, b: Client): number {
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
