// What is said of a table of people that was read into the client book.

import { catalogue, plural } from '../catalogue';

export const PEOPLE = catalogue({
  title: 'Clients from a table',
  choose: 'Choose a table',
  hint: 'A file of separated values (CSV): a row each, a column for the name and one for each measurement, called as on Measure. It can be dropped here.',
  added: ({ count }: { count: number }) =>
    plural(count, { one: 'One client was added.', other: `${count} clients were added.` }),
  empty: 'Nothing stands in this file.',
  noRow: 'The table has no row below its first one.',
  add: ({ count }: { count: number }) =>
    plural(count, { one: 'Add 1 client', other: `Add ${count} clients` }),
  leave: 'Do not add them',
  badCell: ({ row, column, text }: { row: number; column: string; text: string }) =>
    `Row ${row}, ${column}: “${text}” is no length, and was left out.`,
  moreFaults: ({ count }: { count: number }) =>
    plural(count, { one: 'One more cell was left out.', other: `${count} more cells were left out.` }),
});
