// A change that no undo takes back: it is made in every state of the history.

import type { Book, Client } from '../model/book';
import type { History } from '../model/history';

/**
 * The history with its clients changed in every state. A client that several states share is changed once and stays shared.
 *
 * @param change gives the same client where nothing is to change
 */
export function inEveryState(history: History<Book>, change: (client: Client) => Client): History<Book> {
  const known = new Map<Client, Client>();
  const changed = (client: Client): Client => {
    const made = known.get(client) ?? change(client);
    known.set(client, made);
    return made;
  };
  const stateWith = (book: Book): Book => ({ ...book, clients: book.clients.map(changed) });
  const steps = (list: History<Book>['past']): History<Book>['past'] =>
    list.map((step) => ({ ...step, state: stateWith(step.state) }));
  return {
    past: steps(history.past),
    present: stateWith(history.present),
    future: steps(history.future),
  };
}
