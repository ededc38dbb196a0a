// How wide the columns of a table stand on the printed sheet.

import { textWidth } from '../text/textWidth';
import { settable } from '../text/writable';
import type { StepTable } from './elements/draftingStep';

/** Kept free at the right of each column. mm */
const AIR_MM = 3;

/** Letters of the heads, bold, and of the cells. pt */
export interface TableSizes {
  readonly headPt: number;
  readonly cellPt: number;
}

/**
 * Columns in parts of a width. Where all that stands in them has room on one line each has what it asks for, and of the rest as
 * much more. Where it has not, the columns that ask for most share what the others leave, and none is narrower than its
 * longest word, as far as the words have room at all.
 */
export function columnShares(
  { columns, rows }: StepTable,
  widthMm: number,
  { headPt, cellPt }: TableSizes,
): number[] {
  const parts = columns.map((head, i) => {
    const cells = rows.map((row) => settable(row[i] ?? ''));
    const word = Math.max(
      ...wordWidths(head, headPt, true),
      ...cells.flatMap((cell) => wordWidths(cell, cellPt, false)),
    );
    const line = Math.max(word, ...cells.map((cell) => textWidth(cell, cellPt, false)));
    return { word: word + AIR_MM, line: line + AIR_MM };
  });
  const lines = parts.map(({ line }) => line);
  const widths = sum(lines) <= widthMm ? lines : shared(parts, widthMm);
  return widths.map((width) => width / sum(widths));
}

/** The width up to which every column has what it asks for, found by halving: the sum grows with it. */
function shared(
  parts: readonly { readonly word: number; readonly line: number }[],
  widthMm: number,
): number[] {
  const upTo = (most: number): number[] =>
    parts.map(({ word, line }) => Math.max(word, Math.min(line, most)));
  let [low, high] = [0, widthMm];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (sum(upTo(middle)) > widthMm) high = middle;
    else low = middle;
  }
  return upTo(low);
}

const wordWidths = (text: string, sizePt: number, bold: boolean): number[] =>
  text.split(' ').map((word) => textWidth(word, sizePt, bold));

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
