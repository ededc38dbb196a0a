// Adds a client to the book. It is apart from what else is done to clients because the first step offers it.

import { DRAFT_NAMES } from '../messages/screens/choices';
import { type Book, openClient } from '../model/book';
import { newClient } from '../model/newClient';

/** Adds a client with nothing measured yet and one draft in the default style, and opens her. */
export function addClient(book: Book, id: string, name: string): Book {
  const draft = { id: `${id}-1`, name: DRAFT_NAMES.first };
  const client = newClient({ id, name, unit: openClient(book).unit, draft });
  return { ...book, clients: [...book.clients, client], openClient: id };
}
