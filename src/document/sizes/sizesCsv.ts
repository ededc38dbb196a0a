// The table of a range of sizes as separated values.

import { SIZES } from '../messages/book/sizes';
import { LEVEL_WORDS } from '../messages/words/levels';
import { pieceLabel, seamLabel } from '../messages/words/pieces';
import { type LengthUnit, MM_PER } from '../units/lengthUnit';
import type { SizedDraft } from './sizedDrafts';
import { type SizeRow, sizeTable } from './sizeTable';

/**
 * The text of a file with a column a size: whether it can be cut, then panel widths and seam lengths in `unit`, to the thousandth.
 * Commas part the cells, points the decimals; a name that a spreadsheet could take for a formula gets an apostrophe
 * before it.
 */
export const sizesCsv = (sizes: readonly SizedDraft[], unit: LengthUnit = 'mm'): string =>
  sizesTableCsv(sizes, sizeTable(sizes), unit);

/** The same of a table that is made already. */
export function sizesTableCsv(
  sizes: readonly Pick<SizedDraft, 'name' | 'canBeCut'>[],
  table: readonly SizeRow[],
  unit: LengthUnit,
): string {
  const words = SIZES.csv;
  const rows = table.map((row) => [
    ...(row.kind === 'width'
      ? [words.width, pieceLabel(row.piece), LEVEL_WORDS[row.level], unit]
      : [words.seam, seamLabel(row.seam), '', unit]),
    ...row.lengths.map((mm) => (mm === null ? '' : String(Number((mm / MM_PER[unit]).toFixed(3))))),
  ]);
  const cut = sizes.map(({ canBeCut }) => (canBeCut ? words.yes : words.no));
  return [[...words.head, ...sizes.map(({ name }) => name)], [words.canBeCut, '', '', '', ...cut], ...rows]
    .map((cells) => `${cells.map(cellOf).join(',')}\r\n`)
    .join('');
}

function cellOf(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Signs that start a formula in a spreadsheet, also in full-width form or after blanks. */
const FORMULA = /^\s*[=+\-@＝＋－＠|]/u;
