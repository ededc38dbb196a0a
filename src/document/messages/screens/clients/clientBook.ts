// The texts of the client book: drafts, clients and the backup.

import { catalogue, listed, plural } from '../../catalogue';

interface Named {
  readonly name: string;
}

export const CLIENT_BOOK = catalogue({
  title: 'Client book',
  drafts: {
    title: ({ client }: { client: string }) => `Drafts of ${client}`,
    copy: 'Copy this draft',
    add: 'New draft',
    nameOf: ({ name }: Named) => `Name of the draft ${name}`,
    isOpen: 'on the table',
    open: 'Open',
    openOf: ({ name }: Named) => `Open ${name}`,
    remove: 'Delete',
    removeOf: ({ name }: Named) => `Delete the draft ${name}`,
    lastStays: 'A client has at least one draft',
  },
  past: {
    title: ({ client }: { client: string }) => `Fittings and prints of ${client}`,
    fittings: 'Fittings',
    fitting: ({ day, draft, alterations }: { day: string; draft: string; alterations: number }) =>
      alterations === 0
        ? `${day}: ${draft}, no alterations`
        : `${day}: ${draft}, ${plural(alterations, { one: 'one alteration', other: `${alterations} alterations` })}`,
    notMade: ({ what }: { what: string }) => `${what} (switched off)`,
    prints: 'What was printed',
  },
  clients: {
    title: 'Clients',
    search: 'Search',
    add: 'New client',
    removed: ({ name }: Named) => `${name} was taken out of the book.`,
    noneFound: ({ sought }: { sought: string }) => `No client’s name or draft has “${sought}” in it.`,
    showArchive: ({ count }: { count: number }) => `Show the archive (${count})`,
    draftCount: ({ count }: { count: number }) =>
      plural(count, { one: `${count} draft`, other: `${count} drafts` }),
    /** `drafts` is the name of her only draft, or how many she has; `openedOn` is null where that is not known. */
    about: ({
      drafts,
      openedOn,
      isArchived,
    }: {
      drafts: string;
      openedOn: string | null;
      isArchived: boolean;
    }) => {
      if (openedOn === null) return isArchived ? `${drafts}, in the archive` : drafts;
      return isArchived ? `${drafts}, opened ${openedOn}, in the archive` : `${drafts}, opened ${openedOn}`;
    },
    duplicate: 'Copy',
    duplicateOf: ({ name }: Named) => `Copy ${name}`,
    archive: 'Archive',
    archiveOf: ({ name }: Named) => `Archive ${name}`,
    bringBack: 'Bring back',
    bringBackOf: ({ name }: Named) => `Take from the archive: ${name}`,
    remove: 'Delete',
    removeOf: ({ name }: Named) => `Delete ${name}`,
    lastStays: 'The last client stays in the book',
    showAll: ({ count }: { count: number }) => `Show all ${count} clients`,
    cannotOpen: ({ name }: Named) =>
      `${name} cannot be opened: what is kept of her is not whole. It was set aside; the notice on the page shows what is in it.`,
    cannotOpenNewer: ({ name, version }: Named & { version: number }) =>
      `${name} was kept by a later version of this page (${version}). Reload the page to get it.`,
    notFetched:
      'A part of the page could not be fetched. Check the connection and try again, or reload the page.',
  },
});

export const BACKUP = catalogue({
  label: 'Backup',
  title: 'One file of everything',
  choose: 'Restore from a backup',
  newer: ({ version }: { version: number }) =>
    `This backup was written by a later version of this page (${version}). Open it with that one.`,
  /** "one client and 3 styles"; what there is none of is not named. */
  contents: ({ clients, styles }: { clients: number; styles: number }) =>
    listed(
      [
        clients > 0 ? plural(clients, { one: 'one client', other: `${clients} clients` }) : '',
        styles > 0 ? plural(styles, { one: 'one style', other: `${styles} styles` }) : '',
      ].filter((part) => part !== ''),
    ),
  found: ({ contents }: { contents: string }) => `It holds ${contents}. Tick what to bring back.`,
  foundOf: ({ day, contents }: { day: string; contents: string }) =>
    `A backup of ${day} with ${contents}. Tick what to bring back.`,
  isPart: 'The file is cut off or damaged: what came after these is missing from it.',
  notInIt: ({ count }: { count: number }) =>
    plural(count, {
      one: 'One client of the book is not in it and stays as it is.',
      other: `${count} clients of the book are not in it and stay as they are.`,
    }),
  /** Each goes on behind the name of a client. */
  client: {
    new: 'is not in the book and would be added.',
    same: 'is in the book just so.',
    /** `here` is the name of the one in the book, where that is another. */
    other: ({ differences, here }: { differences: readonly string[]; here: string | null }) =>
      here === null
        ? `is in the book with other ${listed(differences)}.`
        : `is in the book as ${here}, with other ${listed(differences)}.`,
    newer: { backup: 'This one was changed later.', book: 'The one in the book was changed later.' },
  },
  /** How something that is in the book already comes back; `name` is its own. */
  how: {
    label: ({ name }: Named) => `What becomes of ${name}`,
    leave: 'Leave as it is',
    beside: 'Beside it, under a name of its own',
    instead: 'In its place',
  },
  lost: ({ name }: Named) => (name === '' ? 'Something without a name' : name),
  unnamed: 'Without a name',
  differences: {
    name: 'name',
    measurements: 'measurements',
    drafts: 'drafts',
    readings: 'readings and estimates',
    otherwise: 'unit, or place in the archive',
  },
  /** Each goes on behind the name of a style. */
  style: {
    new: 'is a style that is not in the book and would be added.',
    same: 'is a style that is in the book just so.',
    renamed: ({ name }: Named) => `is the style called ${name} in the book.`,
    other: 'is a style that is otherwise in the book.',
  },
  leave: 'Leave the book as it is',
  bringBack: ({ contents }: { contents: string }) => `Bring back ${contents}`,
  bringBackNothing: 'Bring back nothing',
  /** Behind what is said of a client or style. */
  faulty: ({ bad }: { bad: string }) => `It ${bad}`,
  restored: 'Restored. Undo brings the book back as it was.',
});
