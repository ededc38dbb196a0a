// Widths of the columns of a printed table.

import { textWidth } from '../text/textWidth';
import { settable } from '../text/writable';
import type { StepTable } from './elements/draftingStep';

/** Gap at the right of each column. mm */
const AIR_MM = 3;

/** Sizes of the heads, which are bold, and of the cells. pt */
export interface TableSizes {
  readonly headPt: number;
  readonly cellPt: number;
}

/**
 * Columns as shares of a width. Where all cells fit on one line, the widths are in proportion to the widest cells. Elsewhere the
 * widest columns share what the others leave, and none is narrower than its longest word, as far as the words have room.
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

/** Limits the widths of columns to one bound, found by bisection, at which they fill the width. */
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
