// The lay plans of a draft.

import type { Book, SavedDraft } from '../model/book';
import type { History } from '../model/history';
import type { KeptLay } from '../model/lays';
import { inEveryState } from './inEveryState';

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
  return inEveryState(history, (client) => {
    if (client.id !== of.client || !client.drafts.some(({ id }) => id === of.draft)) return client;
    const drafts = client.drafts.map((each) => (each.id === of.draft ? withLay(each, lay) : each));
    return { ...client, drafts, changed: now };
  });
}
