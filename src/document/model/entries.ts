// The clients of a book as its list shows them, and the way of one from the unopened to the opened.

import type { Book, Client, ClientEntry, UnopenedClient } from './book';

/** What the list shows of a client. */
export const entryOf = (client: Client): ClientEntry => ({
  id: client.id,
  name: client.name,
  archived: client.archived,
  lastUsed: client.lastUsed,
  ...(client.changed === undefined ? {} : { changed: client.changed }),
  draftNames: client.drafts.map(({ name }) => name),
});

/** Every client of the book, the opened ones first. */
export const entriesOf = (book: Book): readonly ClientEntry[] => [
  ...book.clients.map(entryOf),
  ...(book.unopened ?? []),
];

/** The book with a client among the opened ones, in the place of the one of her id, wherever that one stands. */
export function withOpened(book: Book, client: Client): Book {
  const isThere = book.clients.some(({ id }) => id === client.id);
  const clients = isThere
    ? book.clients.map((each) => (each.id === client.id ? client : each))
    : [...book.clients, client];
  return withUnopened(
    { ...book, clients },
    (book.unopened ?? []).filter(({ id }) => id !== client.id),
  );
}

/** The book with these as its unopened clients, sorted by id. */
export function withUnopened(book: Book, unopened: readonly UnopenedClient[]): Book {
  const { unopened: before, ...rest } = book;
  if (unopened.length === 0) return before === undefined ? book : rest;
  return { ...rest, unopened: [...unopened].sort((a, b) => (a.id < b.id ? -1 : 1)) };
}
