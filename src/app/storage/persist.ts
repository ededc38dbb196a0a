// Asks the browser not to delete what is kept when space runs short, once there is something of the user's own to lose.

import { isOwn } from '../../document';
import type { BookStorage } from './book/bookStorage';

/** Asks once, after the first client of the user's own was kept; gives what ends it. */
export function askToPersist(books: BookStorage, navigator: Navigator): () => void {
  let asked = false;
  return books.subscribe((status) => {
    if (asked || status.kind !== 'saved' || !books.book()?.clients.some(isOwn)) return;
    asked = true;
    // Where it is refused, or not known, a backup is what there is: the client book says so.
    navigator.storage?.persist?.().catch(() => undefined);
  });
}

/** Whether the browser has agreed; false where it does not say. */
export async function isPersisted(navigator: Navigator): Promise<boolean> {
  try {
    return (await navigator.storage?.persisted?.()) ?? false;
  } catch {
    return false;
  }
}
