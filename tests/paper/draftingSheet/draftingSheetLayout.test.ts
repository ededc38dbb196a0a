// How tables and figures of the drafting sheet are set: no broken words, no labels that touch.

import { describe, expect, it } from 'vitest';
import { USUAL_SHOULDERS } from '../../../src/engine';
import { paperChoice } from '../../../src/paper';
import { columnShares } from '../../../src/paper/draftingSheet/columnShares';
import { draftingSheet } from '../../../src/paper/draftingSheet/draftingSheet';
import { draftingSheetPdf } from '../../../src/paper/draftingSheet/draftingSheetPdf';
import type { FigureLabel } from '../../../src/paper/draftingSheet/elements/draftingStep';
import { labelsApart } from '../../../src/paper/draftingSheet/labelsApart';
import { textWidth } from '../../../src/paper/text/textWidth';
import { DEMO_SHEET, demoPattern } from '../demoPattern';
import { readPattern } from '../readPattern';

const SIZES = { headPt: 7, cellPt: 8.5 };
const LONG = {
  columns: ['Panel', 'Cut', 'Allowance of each edge'],
  rows: [
    [
      'Front 1',
      '1 on the fold',
      'centre front: on the fold; hem: ½; side seam to Back 1: 1; armhole: ½ '.repeat(2),
    ],
  ],
};

/** How often each word stands in texts. */
function counted(texts: readonly string[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const word of texts.flatMap((text) => text.match(/[A-Za-z]{2,}/g) ?? []))
    found.set(word, (found.get(word) ?? 0) + 1);
  return found;
}

describe('the columns of a table', () => {
  it('hold what stands in them on one line where there is room', () => {
    const short = { columns: ['Line', 'Intake'], rows: [['Over-bust, top line', '½']] };
    const [first = 0, second = 0] = columnShares(short, 100, SIZES);
    expect(first + second).toBeCloseTo(1, 9);
    expect(100 * first).toBeGreaterThan(textWidth('Over-bust, top line', 8.5, false) + 2);
    expect(100 * second).toBeGreaterThan(textWidth('Intake', 7, true) + 2);
  });

  it('leave short cells whole beside a long one that wraps', () => {
    const shares = columnShares(LONG, 120, SIZES);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(120 * (shares[0] ?? 0)).toBeGreaterThan(textWidth('Front 1', 8.5, false) + 2);
    expect(120 * (shares[1] ?? 0)).toBeGreaterThan(textWidth('1 on the fold', 8.5, false) + 2);
  });

  it('break no word of a sheet printed on A4', async () => {
    const style = { ...DEMO_SHEET.style, shoulders: USUAL_SHOULDERS };
    const input = demoPattern('A4', style);
    const { pages } = await readPattern(await draftingSheetPdf(input, paperChoice('A4')));
    const printed = counted(pages.flatMap(({ texts }) => texts.map(({ text }) => text)));
    const said = draftingSheet(input).steps.flatMap(({ heading, sentences, tables }) => [
      heading,
      ...sentences,
      ...tables.flatMap(({ columns, rows }) => [...columns, ...rows.flat()]),
    ]);
    for (const [word, times] of counted(said))
      expect(printed.get(word) ?? 0, word).toBeGreaterThanOrEqual(times);
  });
});

describe('labels of a figure', () => {
  const at = (y: number, x = 0): FigureLabel => ({ text: String(y), at: { x, y }, anchor: 'end' });
  const heights = (labels: readonly FigureLabel[]): number[] => labels.map((label) => label.at.y);

  it('stay where they are while they do not touch', () => {
    const apart = [at(0), at(20), at(40), at(41, 100)];
    expect(labelsApart(apart, 12, 30)).toEqual(apart);
  });

  it('move apart evenly where they do, in their order', () => {
    expect(heights(labelsApart([at(10), at(0), at(60)], 12, 30))).toEqual([11, -1, 60]);
  });

  it('push on those that they come to touch', () => {
    const [a = 0, b = 0, c = 0] = heights(labelsApart([at(0), at(4), at(13)], 12, 30));
    expect([b - a, c - b]).toEqual([12, 12]);
    expect((a + b + c) / 3).toBeCloseTo(17 / 3, 9);
  });
});
