// The texts of the client book: drafts, clients and the backup.

import { catalogue, listed, plural } from '../catalogue';

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
    duplicate: 'Duplicate',
    duplicateOf: ({ name }: Named) => `Duplicate ${name}`,
    archive: 'Archive',
    archiveOf: ({ name }: Named) => `Archive ${name}`,
    bringBack: 'Bring back',
    bringBackOf: ({ name }: Named) => `Take from the archive: ${name}`,
    remove: 'Delete',
    removeOf: ({ name }: Named) => `Delete ${name}`,
    lastStays: 'The last client stays in the book',
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
  found: ({ contents }: { contents: string }) => `A backup with ${contents}. Tick what to bring back.`,
  foundOf: ({ day, contents }: { day: string; contents: string }) =>
    `A backup of ${day} with ${contents}. Tick what to bring back.`,
  notInIt: ({ count }: { count: number }) =>
    plural(count, {
      one: 'One client of the book not in it stay as they are.',
      other: `${count} clients of the book not in it stay as they are.`,
    }),
  /** Each goes on behind the name of a client. */
  client: {
    new: 'is not in the book and would be added.',
    same: 'is in the book just so.',
    other: ({ differences }: { differences: readonly string[] }) =>
      `is in the book with other ${differences.join(', ')}, which would be replaced.`,
  },
  differences: {
    name: 'her name',
    measurements: 'measurements',
    drafts: 'drafts',
    readings: 'readings and estimates',
    otherwise: 'her unit or whether she is in the archive',
  },
  /** Each goes on behind the name of a style. */
  style: {
    new: 'is a style that is not in the book and would be added.',
    same: 'is a style that is in the book just so.',
    renamed: ({ name }: Named) => `is the style called ${name} in the book, which would be replaced.`,
    other: 'is a style that is otherwise in the book, which would be replaced.',
  },
  leave: 'Leave the book as it is',
  bringBack: ({ contents }: { contents: string }) => `Bring back ${contents}`,
  bringBackNothing: 'Bring back nothing',
  restored: 'Restored. Undo brings the book back as it was.',
});
