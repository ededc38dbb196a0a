// What tells the lines of sizes apart in black and white: a dash of its own, and a number on the line.

/** Dash and gap, mm: solid, dashes long and short, dots, and dashes with one, two and three dots between them. */
const DASHES: readonly (readonly number[])[] = [
  [],
  [9, 2.5],
  [1, 1.6],
  [9, 2, 1, 2],
  [4, 2],
  [9, 2, 1, 1.6, 1, 2],
  [16, 3],
  [4, 2, 1, 2],
  [9, 2, 1, 1.6, 1, 1.6, 1, 2],
  [16, 2.5, 4, 2.5],
  [2, 3.5],
  [16, 2.5, 1, 2.5],
];

/** The dash of a size by its place in the range. After twelve sizes the dashes come again: the number tells those apart. */
export const dashOfSize = (size: number): readonly number[] => DASHES[size % DASHES.length] ?? [];

/** Most letters of a name that stands on a line by itself. */
const MOST_LETTERS = 4;

/**
 * What is written on the lines of each size: its name where all are short, as sizes mostly are ("38"), else its number in the range,
 * from 1, which the key of the print explains.
 */
export function numbersOfSizes(names: readonly string[]): string[] {
  const areShort = names.every((name) => [...name].length <= MOST_LETTERS);
  return names.map((name, i) => (areShort ? name : String(i + 1)));
}
