// The main path in two more engines of browsers, each driven by its own protocol, and what they print beside what Chromium does,
// in which all other tests are. Where one is not installed, the test's name says so.

import { describe, expect, inject, it } from 'vitest';
import { type ReadPage, readPattern } from '../../paper/readPattern';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { expectQuiet, withBrowser } from '../session';
import { FIREFOX } from './firefox';
import { inEngines } from './inEngines';
import { type Walked, walkMainPath } from './walk';
import { WEBKIT } from './webkit';

/** Sides of the squares that show whether a printer kept the scale, mm. */
const SQUARES = [100, 101.6];

function squaresOf({ lines }: ReadPage): number[] {
  const across = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return lines
    .filter(({ points }) => points.length === 5)
    .map(({ points }) => [across(points.map(({ x }) => x)), across(points.map(({ y }) => y))] as const)
    .filter(([wide, high]) => Math.abs(wide - high) < 0.1 && wide > 90)
    .map(([wide]) => wide)
    .sort((a, b) => a - b);
}

describe('the main path', () => {
  const visit = withBrowser();
  const walked: Walked[] = [];

  inEngines([FIREFOX, WEBKIT], 'from nine numbers to the sheets', async (view, downloads) => {
    walked.push(await walkMainPath(view, inject('appUrl'), downloads));
  });

  it('prints the sheets that Chromium prints of the same book, with squares to measure', async () => {
    const { origin } = new URL(inject('appUrl'));
    const localStorage = Object.entries(walked[0]?.kept ?? {}).map(([name, value]) => ({ name, value }));
    const visitor = await visit('cut', {
      storageState: { cookies: [], origins: [{ origin, localStorage }] },
    });
    const { page } = visitor;
    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download the PDF' }).click();
    const first = await readPattern(await downloadBytes(await asked));
    expectQuiet(visitor);
    expect(first.pages.length).toBeGreaterThan(3);
    const squares = squaresOf(first.pages[0] as ReadPage);
    expect(squares).toHaveLength(SQUARES.length);
    for (const [i, side] of SQUARES.entries()) expect(squares[i]).toBeCloseTo(side, 1);
    for (const { printed: other } of walked) {
      const inWhole = (page: ReadPage) => page.texts.map(({ text }) => text);
      expect(other.pages.map(inWhole)).toEqual(first.pages.map(inWhole));
      for (const [i, page] of other.pages.entries())
        for (const [j, { points }] of page.lines.entries())
          for (const [k, { x, y }] of points.entries()) {
            const same = first.pages[i]?.lines[j]?.points[k];
            expect(Math.hypot(x - (same?.x ?? Number.NaN), y - (same?.y ?? Number.NaN))).toBeLessThan(0.02);
          }
    }
  });
});
