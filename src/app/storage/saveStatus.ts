// How keeping stands. The sentences for it are in keepingSentences.ts, which the first load does without.

import type { BookFault } from '../../document';

/**
 * `absent`: the browser gives no storage. `refused`: it would not read or write. `full`: no room.
 * `guarding`: what is kept there can be neither opened nor put aside, so it is not written over.
 */
export type SaveFault = 'absent' | 'refused' | 'full' | 'guarding';

/**
 * `conflict`: another tab has kept a different book; neither is written over until the maker chooses.
 * `beside` says whether all of this tab's changes are kept beside it by now.
 */
export type SaveStatus =
  | { readonly kind: 'saved' }
  | { readonly kind: 'pending' }
  | { readonly kind: 'failed'; readonly reason: SaveFault }
  | { readonly kind: 'conflict'; readonly beside: boolean };

/** What there is to say after the first look into the storage; `aside` is the key of what was put aside. */
export type Notice =
  | { readonly kind: 'unreadable'; readonly fault: BookFault; readonly quarantineKey: string | null }
  | { readonly kind: 'newer'; readonly version: number; readonly quarantineKey: string | null }
  | { readonly kind: 'unavailable'; readonly reason: 'absent' | 'refused' };

/** What a thrown write or read means. Browsers name a full storage in two ways. */
export function saveFaultOf(error: unknown): SaveFault {
  const name = typeof error === 'object' && error !== null && 'name' in error ? error.name : '';
  return name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED' ? 'full' : 'refused';
}
