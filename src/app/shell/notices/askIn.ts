// Asks a later build's worker in, and loads the page again where the browser puts it off.

import type { BookStorage } from '../../storage/book/bookStorage';

/**
 * How long a worker that was asked in may take, ms. The one before it has to be idle, and a browser that was about to end it may wait
 * for minutes when a window asks it for a file just then. It looks again when the page is loaded.
 */
const MOST_MS = 2000;

/** How often one press asks: once more after each time that the page was loaded again for it. */
const MOST_TIMES = 4;

/** What the entry of the tab's own history remembers while the page is loaded again. */
const ASKED = 'askedIn';

/** What asking needs of the keeper and the window. */
export interface Asking {
  readonly storage: Pick<BookStorage, 'status' | 'subscribe'>;
  /** Keeps what is under way. */
  readonly keepWork: () => void;
  readonly reload: () => void;
}

/** Runs something once all is kept: at once, or when it is. Gives what ends it. */
function whenKept(storage: Asking['storage'], run: () => void): () => void {
  if (storage.status().kind === 'saved') {
    run();
    return () => undefined;
  }
  const end = storage.subscribe((status) => {
    if (status.kind !== 'saved') return;
    end();
    run();
  });
  return end;
}

/**
 * Asks a worker in, and loads the page again a while later, once its work is kept. A worker that is in by then has loaded the page
 * itself.
 *
 * @param times how often it was asked before
 * @returns what ends it
 */
export function askIn(worker: Pick<ServiceWorker, 'postMessage'>, asking: Asking, times = 0): () => void {
  worker.postMessage('update');
  let end = (): void => undefined;
  const wait = setTimeout(() => {
    asking.keepWork();
    end = whenKept(asking.storage, () => {
      window.history.replaceState({ [ASKED]: times + 1 }, '');
      asking.reload();
    });
  }, MOST_MS);
  return () => {
    clearTimeout(wait);
    end();
  };
}

/** How often a worker was asked in before this page was loaded again for it; 0 where it was not, or often enough. */
export function askedBefore(): number {
  const state: unknown = window.history.state;
  const times = typeof state === 'object' && state !== null && ASKED in state ? Number(state[ASKED]) : 0;
  return times < MOST_TIMES ? times : 0;
}

/** The page that is loaded next was not asked for so. */
export function forgetAsked(): void {
  if (window.history.state !== null) window.history.replaceState(null, '');
}
