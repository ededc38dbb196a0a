// What is said of the columns of a table of people or sizes, and what each can be read as.

import { catalogue, listed } from '../catalogue';

interface Columns {
  readonly columns: readonly string[];
}

const quoted = (columns: readonly string[]): string => listed(columns.map((column) => `“${column}”`));

export const COLUMNS = catalogue({
  /** A column without a heading. */
  unnamed: ({ number }: { number: number }) => `Column ${number}`,

  /** Said of a table in a file, which nobody can be asked about. */
  passedOver: ({ columns }: Columns) =>
    `Passed over, as they are called like no measurement: ${columns.join('; ')}.`,
  noMeasurement: ({ columns }: Columns) =>
    `No column is called as a measurement is. They are called ${quoted(columns)}. Write the names of the measurements in the first row, as on Measure, and the names of the sizes in the first column.`,

  /** Said where she can choose below what the columns are. */
  notUnderstood: ({ columns }: Columns) =>
    `Not understood, and passed over: ${quoted(columns)}. Choose below what they are.`,
  noneUnderstood: ({ columns }: Columns) =>
    `No column is called as a measurement is. They are called ${quoted(columns)}. Choose below what they are, or write the names of the measurements in the first row, as on Measure.`,
  presumedName: ({ column }: { column: string }) => `The names are taken from “${column}”.`,

  toSay: 'Columns that were not understood',
  understood: 'Columns that were understood',
  column: 'Column',
  firstCells: 'First cells',
  readAs: 'Read as',
  readsAs: ({ column }: { column: string }) => `“${column}” is read as`,
  uses: { open: 'Choose', name: 'The name', leftOut: 'Leave out' },
});
