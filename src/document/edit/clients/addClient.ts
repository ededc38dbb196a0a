// Adds a client to the book. It is apart from what else is done to clients because the first step offers it.

import { DRAFT_NAMES } from '../../messages/screens/choices';
import { type Book, type Client, openClient } from '../../model/book';
import { newClient } from '../../model/newClient';

/** Adds a client with nothing measured yet and one draft in the default style, and opens her. */
export const addClient = (book: Book, id: string, name: string): Book => ({
  ...book,
  clients: [...book.clients, clientToAdd(book, id, name)],
  openClient: id,
});

/** A client to be added to a book, measured in the unit of the one who is open. */
export const clientToAdd = (book: Book, id: string, name: string): Client =>
  newClient({
    id,
    name,
    unit: openClient(book).unit,
    draft: { id: `${id}-1`, name: DRAFT_NAMES.first },
  });
