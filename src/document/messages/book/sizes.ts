// What is said of a table of sizes or of a cast, and the words of the tables made of it.

import { catalogue, listed, plural } from '../catalogue';

export const SIZES = catalogue({
  /** The heading of the column with the names. */
  size: 'Size',
  noRow: 'The table has no row below its first one.',

  /** What is wrong with a row; it stands behind the row and the column. */
  fault: {
    notALength: ({ row, column, text }: { row: number; column: string; text: string }) =>
      `Row ${row}, ${column}: “${text}” is no length. The row is left out until that is mended.`,
    nameMissing: ({ row }: { row: number }) => `Row ${row} has no name, and is left out.`,
    nameTwice: ({ row, name }: { row: number; name: string }) =>
      `Row ${row} is called ${name} as a row above is, and is left out.`,
  },
  /** A person of a cast without a name of her own. */
  nameless: ({ row }: { row: number }) => `Row ${row}`,
  namesake: ({ row, name }: { row: number; name: string }) => `${name} (row ${row})`,

  left: ({ names }: { names: readonly string[] }) =>
    plural(names.length, {
      one: `Not in this print, as it must not be cut: ${listed(names)}.`,
      other: `Not in this print, as they must not be cut: ${listed(names)}.`,
    }),
  noneToCut: 'No size of this table can be cut.',

  csv: {
    /** The first row, before the names of the sizes. */
    head: ['what', 'piece or seam', 'level', 'unit'],
    width: 'panel width',
    seam: 'seam length',
    canBeCut: 'can be cut',
    yes: 'yes',
    no: 'no',
  },
});
