// What is said of keeping the book in the browser.

import { catalogue } from '../catalogue';

const TWO_BOOKS =
  'Another tab has kept a different book. Choose which of the two to go on with; the other is put aside.';
const NO_ROOM =
  'There was no room to put the other book aside, so nothing was changed. Download a backup of this tab’s book from the client book before you close it.';

export const KEEPING = catalogue({
  kept: 'Kept on this device.',
  pending: 'Being kept…',
  faults: {
    absent: 'This browser keeps nothing for this page: what you change is lost when the tab is closed.',
    refused:
      'The browser refused to keep the book. It is still whole in this tab, and is tried again at the next change.',
    full: 'There is no room left to keep the book. It is still whole in this tab, and is tried again at the next change: download a backup, so that nothing is lost when the tab is closed.',
    guarding:
      'What was kept before cannot be opened, and there is no room to put it aside, so nothing is written over it. Download and discard it to go on keeping.',
  },
  conflict: {
    kept: TWO_BOOKS,
    notKept: `${TWO_BOOKS} There was no room to keep the changes of this tab, so leave it open until then.`,
    keepOurs: 'Go on with this tab’s',
    takeTheirs: 'Go on with the other’s',
    noRoom: NO_ROOM,
    noRoomYet: `${NO_ROOM} Or download and discard what was put aside before, then choose again.`,
  },
  /** `reason` is a sentence. */
  unreadable: {
    putAside: ({ reason }: { reason: string }) =>
      `The kept book could not be opened. ${reason} It was put aside whole and can be downloaded.`,
    guarded: ({ reason }: { reason: string }) =>
      `The kept book could not be opened. ${reason} There was no room to put it aside, so it stays where it is and nothing is written over it.`,
  },
  newer: {
    putAside: ({ version }: { version: number }) =>
      `The kept book was written by a later version of this page (${version}) and cannot be opened by this one. It was put aside whole and can be downloaded.`,
    guarded: ({ version }: { version: number }) =>
      `The kept book was written by a later version of this page (${version}) and cannot be opened by this one. There was no room to put it aside, so it stays where it is and nothing is written over it.`,
  },
  quarantined: {
    takesRoom: 'What was put aside takes up room too: download it, then discard it.',
    book: 'A book put aside.',
    bookOn: ({ time }: { time: string }) => `A book put aside on ${time}.`,
    download: 'Download it',
    discard: 'Discard',
    discardForGood: 'Discard it for good',
  },
});
