// The lay plans of a draft.

import type { Book, Client, SavedDraft } from '../model/book';
import type { History } from '../model/history';
import type { KeptLay } from '../model/lays';

/** The draft with a plan in the place of that of its layer. */
const withLay = (savedDraft: SavedDraft, lay: KeptLay): SavedDraft => ({
  ...savedDraft,
  lays: [...(savedDraft.lays ?? []).filter(({ layer }) => layer !== lay.layer), lay],
});

/**
 * The history with a plan in each of its states that has the draft. No undo takes the plan back: what is undone of the draft only
 * makes it old, or new again.
 *
 * @param now ISO instant
 */
export function keepLay(
  history: History<Book>,
  of: { readonly client: string; readonly draft: string },
  lay: KeptLay,
  now: string,
): History<Book> {
  const known = new Map<Client, Client>();
  const kept = (client: Client): Client => {
    if (client.id !== of.client || !client.drafts.some(({ id }) => id === of.draft)) return client;
    const found = known.get(client);
    if (found) return found;
    const drafts = client.drafts.map((each) => (each.id === of.draft ? withLay(each, lay) : each));
    const made = { ...client, drafts, changed: now };
    known.set(client, made);
    return made;
  };
  const stateWith = (book: Book): Book => ({ ...book, clients: book.clients.map(kept) });
  const steps = (list: History<Book>['past']): History<Book>['past'] =>
    list.map(({ state, change }) => ({ state: stateWith(state), change }));
  return {
    past: steps(history.past),
    present: stateWith(history.present),
    future: steps(history.future),
  };
}
