// Fetches what keeps the history: at once where one is kept, else when the page is shown.

import type { StorageLike } from '../device/storageLike';
import { HISTORY_KEY } from '../records/record';
import { fetchReader } from './bookStorage';

type HistoryStorage = typeof import('./historyStorage');

/**
 * Null where none is kept, where the storage cannot be read, or where it does not come: then the page starts without.
 *
 * @param onMissing called where one is kept and what reads it does not come
 */
export async function fetchHistory(
  storage: StorageLike | null,
  onMissing: () => void,
): Promise<HistoryStorage | null> {
  try {
    if (!storage?.getItem(HISTORY_KEY)) return null;
  } catch {
    return null;
  }
  // A book lies beside a history: what reads it comes at the same time. Where it does not come, it is asked for again.
  fetchReader().catch(() => undefined);
  try {
    return await import('./historyStorage');
  } catch {
    onMissing();
    return null;
  }
}

/** The same where none is kept yet. Rejected where it does not come. */
export const fetchHistoryLater = (): Promise<HistoryStorage> => import('./historyStorage');
