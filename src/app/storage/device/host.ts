// What keeping asks of the page, answered by the store.

import type { Book, Change, History } from '../../../document';
import type { Store } from '../../store/store';

/** What keeping asks of the page. */
export interface Host {
  /** Finishes a change under way, because the page may be gone in a moment. */
  readonly finish: () => void;
  /** Whether a change is under way. */
  readonly isChanging: () => boolean;
  /** Takes in what another tab kept. */
  readonly follow: (taken: (history: History<Book>) => History<Book>) => void;
  /** Makes a change of the book. */
  readonly change: (what: Change, change: (book: Book) => Book) => void;
}

export const hostOf = (store: Store): Host => ({
  finish: () => store.getState().keep({ code: 'passingChangeKept' }),
  isChanging: () => store.getState().preview !== null,
  follow: (taken) => store.getState().follow(taken),
  change: (what, change) => store.getState().change(what, change),
});
