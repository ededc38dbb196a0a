// How keeping stands, and what there is to say beside it. The sentences are in keepingSentences.ts, which the first load does
// without.

import type { Finding } from '../records/openKept';

/** `absent`: the browser gives no storage. `refused`: it would not read or write. `full`: no room. */
export type SaveFault = 'absent' | 'refused' | 'full';

/** A client or a style that another tab keeps otherwise than this one; `key` is that of its record. */
export interface Clash {
  readonly key: string;
  readonly name: string;
}

/**
 * `conflict`: another tab has kept other changes of the same clients or styles; neither is written over until the user chooses.
 * `beside` says whether all of this tab's changes of them are kept beside by now. `cleared`: what was kept is gone, and nothing
 * is written until the user says so.
 */
export type SaveStatus =
  | { readonly kind: 'saved' }
  | { readonly kind: 'pending' }
  | { readonly kind: 'failed'; readonly reason: SaveFault }
  | { readonly kind: 'conflict'; readonly clashes: readonly Clash[]; readonly beside: boolean }
  | { readonly kind: 'cleared' };

/** What there is to say of what was found in the storage, or done by another tab. */
export type Notice =
  | Finding
  | { readonly kind: 'unavailable'; readonly reason: 'absent' | 'refused' }
  /** The storage can be read, after it could not. */
  | { readonly kind: 'readAgain' }
  /** The open client was changed by another tab. */
  | { readonly kind: 'followed' | 'deletedElsewhere'; readonly name: string }
  /** Undo reaches back this far only when the page is opened again, for want of room. */
  | { readonly kind: 'undoShortened'; readonly steps: number }
  /** What keeps the steps to be undone did not come from the server. */
  | { readonly kind: 'undoNotFetched' }
  /** Another tab kept something, and what takes it in did not come from the server. */
  | { readonly kind: 'notFollowed' }
  /** `percent` of the room is taken. */
  | { readonly kind: 'nearlyFull'; readonly percent: number };

/** What the shell shows of keeping. */
export interface Keeping {
  readonly status: SaveStatus;
  readonly notices: readonly Notice[];
}

/** What a thrown write or read means. Browsers name a full storage in two ways. */
export function saveFaultOf(error: unknown): SaveFault {
  const name = typeof error === 'object' && error !== null && 'name' in error ? error.name : '';
  return name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED' ? 'full' : 'refused';
}
