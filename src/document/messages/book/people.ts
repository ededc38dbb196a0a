// What is said of a table of people that was read into the client book.

import { catalogue, plural } from '../catalogue';

export const PEOPLE = catalogue({
  title: 'Clients from a table',
  choose: 'Choose a table',
  hint: 'A file of separated values (CSV): a row each, a column for the name and one for each measurement, called as on Measure. It can be dropped here.',
  added: ({ count }: { count: number }) =>
    plural(count, { one: 'One client was added.', other: `${count} clients were added.` }),
  none: 'This file has no column that is called as a measurement is. Write the names of the measurements in its first row, as on Measure.',
  badCell: ({ row, column, text }: { row: number; column: string; text: string }) =>
    `Row ${row}, ${column}: “${text}” is no length, and was left out.`,
  moreFaults: ({ count }: { count: number }) =>
    plural(count, { one: 'One more cell was left out.', other: `${count} more cells were left out.` }),
  unknown: ({ columns }: { columns: readonly string[] }) =>
    `Passed over, as they are called like no measurement: ${columns.join('; ')}.`,
});
