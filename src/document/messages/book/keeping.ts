// What is said of keeping the book in the browser.

import { catalogue, listed, plural } from '../catalogue';

interface Named {
  readonly name: string;
}

/** `names` are those that can be read, `count` is how many there are in all. */
interface SetAside {
  readonly names: readonly string[];
  readonly count: number;
}

/** Who was set aside, to begin a sentence. */
const whoIsAside = ({ names, count }: SetAside): string => {
  const others = count - names.length;
  if (others === 0) return listed(names);
  return listed([...names, plural(others, { one: 'one record', other: `${others} records` })]);
};

export const KEEPING = catalogue({
  kept: 'Kept on this device.',
  pending: 'Being kept…',
  faults: {
    absent: 'This browser keeps nothing for this page: what you change is lost when the tab is closed.',
    refused:
      'The browser refused to keep the book. It is still whole in this tab, and is tried again at the next change.',
    full: 'There is no room left to keep the book. It is still whole in this tab, and is tried again at the next change, or when another tab makes room: download a backup, so that nothing is lost when the tab is closed.',
  },
  unread:
    'The browser did not let this page read what is kept, so your clients are not shown. They are not changed. Reload the page; what you add until then is kept as soon as the browser allows it.',
  readAgain:
    'The browser lets this page read again. Reload the page to see the clients that were kept; what you added is kept beside them.',
  cleared:
    'What was kept on this device was deleted, by another tab or in the browser’s settings. The book is still whole in this tab.',
  keepAgain: 'Keep it again',
  /** Where one has scrolled away from a fault or a choice. */
  above: { says: 'A notice about keeping stands at the top.', show: 'Show it' },
  clash: {
    kept: ({ name }: Named) =>
      `${name} was changed in this tab and in another. Choose which to go on with; the other is put aside.`,
    notKept: ({ name }: Named) =>
      `${name} was changed in this tab and in another. Choose which to go on with. There was no room to keep the changes of this tab, so leave it open until then.`,
    deletedHere: 'A client who was deleted in this tab was changed in another. Choose what becomes of her.',
    ours: 'This tab’s',
    theirs: 'The other tab’s',
    both: 'Keep both',
    oursOf: ({ name }: Named) => `Go on with this tab’s ${name}`,
    theirsOf: ({ name }: Named) => `Go on with the other tab’s ${name}`,
    bothOf: ({ name }: Named) => `Keep both of ${name}`,
    noRoom:
      'There was no room to put the other one aside, so nothing was changed. Download a backup, or download and discard what was put aside before, then choose again.',
  },
  notices: {
    /** `reason` is a sentence. */
    unreadable: ({ reason }: { reason: string }) =>
      `The kept book could not be opened. ${reason} It is left as it was: look inside, or download it.`,
    newer: ({ version }: { version: number }) =>
      `Something kept was written by a later version of this page (${version}) and cannot be opened by this one. It is left as it was. Reload the page to get that version.`,
    setAside: (aside: SetAside) =>
      plural(aside.count, {
        one: `${whoIsAside(aside)} could not be opened and was set aside. Nothing else is affected: look inside to bring back what can be read.`,
        other: `${whoIsAside(aside)} could not be opened and were set aside. Nothing else is affected: look inside to bring back what can be read.`,
      }),
    earlierBuild:
      'A tab with an earlier version of this page has kept a book of its own. Close that tab; then look inside its book here and bring back what you need.',
    followed: ({ name }: Named) => `${name} was changed in another tab, and is shown here as she is now.`,
    deletedElsewhere: ({ name }: Named) =>
      `${name} was deleted in another tab. She is still open here, and is kept again if you change her.`,
    undoShortened: ({ steps }: { steps: number }) =>
      steps === 0
        ? 'The room for the book is short, so undo holds only until this page is closed.'
        : plural(steps, {
            one: 'The room for the book is short, so after the page is closed undo goes back one step only.',
            other: `The room for the book is short, so after the page is closed undo goes back ${steps} steps only.`,
          }),
    undoNotFetched:
      'A part of the page did not come from the server, so undo does not go back beyond the last opening of the page. See whether you are connected, then reload the page.',
    notFollowed:
      'Another tab has changed the book, and a part of the page that shows it here did not come from the server. See whether you are connected, then reload the page.',
    nearlyFull: ({ percent }: { percent: number }) =>
      `${percent} % of the room for the book is taken. Download a backup, then delete clients you no longer need, or what was put aside.`,
    close: 'Close',
  },
  quarantined: {
    takesRoom: 'What was put aside takes up room too: download it, then discard it.',
    book: 'Put aside.',
    bookOn: ({ time }: { time: string }) => `Put aside on ${time}.`,
    earlierBook: 'The book of an earlier version.',
    look: 'Look inside',
    download: 'Download it',
    discard: 'Discard',
    discardForGood: 'Discard it for good',
    title: 'What was put aside',
    nothingReadable: 'Nothing in it can be read by this page. Download it to keep it.',
  },
  lives: {
    where: ({ address }: { address: string }) =>
      `The book is kept in this browser, on this device, for the address ${address}. Another browser, device or address has a book of its own.`,
    /** The page is a file on a disk. */
    whereFile: ({ file }: { file: string }) =>
      `The book is kept in this browser, on this device, for the file ${file}. Another browser or device has a book of its own; in some browsers so has the file under another name or in another folder.`,
    mayBeCleared: 'Clearing this site’s data in the browser deletes it: keep a backup elsewhere.',
    stays:
      'The browser has agreed not to delete it when space runs short; clearing this site’s data still does: keep a backup elsewhere.',
    room: ({ percent }: { percent: number }) => `It takes ${percent} % of the room the browser gives.`,
  },
});
