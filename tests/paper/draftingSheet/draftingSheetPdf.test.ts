// The drafting sheet as PDF pages, read back with an independent library.

import { describe, expect, it } from 'vitest';
import { paperChoice } from '../../../src/paper';
import { draftingSheet } from '../../../src/paper/draftingSheet/draftingSheet';
import { draftingSheetPdf } from '../../../src/paper/draftingSheet/draftingSheetPdf';
import { demoPattern } from '../demoPattern';
import { readPattern } from '../readPattern';

const INPUT = demoPattern();

describe('the sheet as PDF pages', () => {
  it.each(['A4', 'Letter'] as const)(
    'holds every step inside the margins of %s, no text over another',
    async (name) => {
      const paper = paperChoice(name);
      const { pages, title } = await readPattern(await draftingSheetPdf(INPUT, paper));
      expect(title).toBe('Drafting sheet, Wren Abernathy, Winter ball bodice');
      const textMm = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
      for (const [i, { heading }] of draftingSheet(INPUT).steps.entries())
        expect(textMm).toContain(`${i + 1}. ${heading}`);
      for (const { widthMm, heightMm, texts, lines } of pages) {
        expect(widthMm).toBeCloseTo(paper.widthMm, 1);
        expect(heightMm).toBeCloseTo(paper.heightMm, 1);
        for (const { at, widthMm: wide } of texts) {
          expect(at.x).toBeGreaterThanOrEqual(9.9);
          expect(at.x + wide).toBeLessThanOrEqual(widthMm - 9.9);
          expect(at.y).toBeLessThanOrEqual(heightMm - 9.9);
        }
        for (const { points } of lines)
          for (const { x, y } of points) {
            expect(x).toBeGreaterThanOrEqual(9.9);
            expect(x).toBeLessThanOrEqual(widthMm - 9.9);
            expect(y).toBeLessThanOrEqual(heightMm - 10);
          }
        for (const [i, a] of texts.entries())
          for (const b of texts.slice(i + 1)) {
            const beside = a.at.x + a.widthMm <= b.at.x + 0.01 || b.at.x + b.widthMm <= a.at.x + 0.01;
            const apart = Math.abs(a.at.y - b.at.y) >= 0.6 * Math.min(a.sizePt, b.sizePt) * (25.4 / 72);
            expect(beside || apart, `“${a.text}” over “${b.text}”`).toBe(true);
          }
      }
    },
  );

  it('is the same file for the same draft, and another for another', async () => {
    const [one, same, other] = await Promise.all([
      draftingSheetPdf(INPUT, paperChoice('A4')),
      draftingSheetPdf(demoPattern(), paperChoice('A4')),
      draftingSheetPdf({ ...INPUT, client: { ...INPUT.client, name: 'Another' } }, paperChoice('A4')),
    ]);
    expect(Buffer.from(same).equals(Buffer.from(one))).toBe(true);
    expect(Buffer.from(other).equals(Buffer.from(one))).toBe(false);
  });
});
