// How keeping stands, with the sentence the shell shows for each.

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
  | { readonly kind: 'unreadable'; readonly reason: string; readonly quarantineKey: string | null }
  | { readonly kind: 'newer'; readonly version: number; readonly quarantineKey: string | null }
  | { readonly kind: 'unavailable'; readonly reason: 'absent' | 'refused' };

export function saveStatusSentence(status: SaveStatus): string {
  switch (status.kind) {
    case 'saved':
      return 'Kept on this device.';
    case 'pending':
      return 'Being kept…';
    case 'failed':
      return FAULTS[status.reason];
    case 'conflict':
      return `Another tab has kept a different book. Choose which of the two to go on with; the other is put aside.${
        status.beside
          ? ''
          : ' There was no room to keep the changes of this tab, so leave it open until then.'
      }`;
  }
}

const FAULTS: Readonly<Record<SaveFault, string>> = {
  absent: 'This browser keeps nothing for this page: what you change is lost when the tab is closed.',
  refused:
    'The browser refused to keep the book. It is still whole in this tab, and is tried again at the next change.',
  full: 'There is no room left to keep the book. It is still whole in this tab, and is tried again at the next change: download a backup, so that nothing is lost when the tab is closed.',
  guarding:
    'What was kept before cannot be opened, and there is no room to put it aside, so nothing is written over it. Download and discard it to go on keeping.',
};

export function noticeSentence(notice: Notice): string {
  if (notice.kind === 'unavailable') return FAULTS[notice.reason];
  const what =
    notice.kind === 'newer'
      ? `The kept book was written by a later version of this page (${notice.version}) and cannot be opened by this one.`
      : `The kept book could not be opened. ${notice.reason}`;
  return notice.quarantineKey === null
    ? `${what} There was no room to put it aside, so it stays where it is and nothing is written over it.`
    : `${what} It was put aside whole and can be downloaded.`;
}

/** What a thrown write or read means. Browsers name a full storage in two ways. */
export function saveFaultOf(error: unknown): SaveFault {
  const name = typeof error === 'object' && error !== null && 'name' in error ? error.name : '';
  return name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED' ? 'full' : 'refused';
}
