// The style book: the user's own styles, kept, read from files and written out.

import { catalogue, plural } from '../../catalogue';

interface Named {
  readonly name: string;
}

interface FromFile {
  readonly file: string;
}

export const STYLE_BOOK = catalogue({
  pictures: {
    drawnFor: ({ client }: { client: string }) =>
      `Each drawn to the measurements of ${client}, to one scale, front and back. A press lays it on the table; undo brings back what lay there.`,
    needsMeasurements: ({ client }: { client: string }) =>
      `They are drawn as soon as ${client} is measured. A press lays one on the table; undo brings back what lay there.`,
    onTable: 'on the table',
    changedSince: 'on the table, changed since',
    toMend: ({ count }: { count: number }) => `${count} to mend on this body`,
  },
  keep: {
    label: 'Keep a style',
    title: 'Keep the style of this draft',
    hint: 'Its edges, wedges, ease, closing and allowances, without anyone’s measurements: balanced wedges fit themselves to whoever wears it next.',
    name: 'Name of the style',
    keep: 'Keep the style',
    writeOver: 'Write over it',
    kept: ({ name }: Named) => `${name} is kept. It is listed with the ready-made styles, for every client.`,
    sameName: 'The style book has one of this name; it would be written over.',
    balance: ({ count }: { count: number }) =>
      plural(count, {
        one: 'Balance the wedge sized by hand on each body; else it keeps its intake',
        other: `Balance the ${count} wedges sized by hand on each body; else they keep their intake`,
      }),
  },
  list: {
    none: 'None yet. A style that is kept here is listed with the ready-made ones, for every client.',
    nameOf: ({ name }: Named) => `Name of the style ${name}`,
    keptOn: ({ day }: { day: string }) => `kept ${day}`,
    writeOut: 'Write out',
    writeOutAsFile: ({ name }: Named) => `Write out ${name} as a file`,
    delete: 'Delete',
    deleteStyle: ({ name }: Named) => `Delete the style ${name}`,
    deleted: ({ name }: Named) => `The style ${name} was taken out of the book.`,
  },
  file: {
    read: 'Read a style file',
    wasRead: ({ name, file }: Named & FromFile) => `${name} was read from ${file}.`,
    notTaken: ({ file }: FromFile) => `${file} was not taken:`,
    more: ({ count }: { count: number }) => `And ${count} more.`,
    noStyleFile: 'This is not a style file.',
  },
});
