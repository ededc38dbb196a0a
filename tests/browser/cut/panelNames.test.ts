// Names of panels on Fit, with left and right apart as well: each on its own panel, clear of its seams and of the others.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

/** Names that are seen, with whether they lie on their panel, and those they run into. */
const namesOn = (page: Page): Promise<{ name: string; lines: number; inside: boolean; meets: string[] }[]> =>
  page.evaluate(() => {
    const texts = [...document.querySelectorAll<SVGTextElement>('.closed-up .panel-name')].filter(
      (text) => getComputedStyle(text).display !== 'none',
    );
    return texts.map((text) => {
      const { x, y, width, height } = text.getBBox();
      const panel = text.parentElement?.querySelector<SVGPathElement>('.panel');
      const corners = [x, x + width].flatMap((left) =>
        [y + height * 0.1, y + height * 0.9].map((top) => new DOMPoint(left, top)),
      );
      const own = text.getBoundingClientRect();
      const meets = texts.filter((other) => {
        const { left, right, top, bottom } = other.getBoundingClientRect();
        return other !== text && left < own.right && right > own.left && top < own.bottom && bottom > own.top;
      });
      return {
        name: text.textContent ?? '',
        lines: Math.max(1, text.querySelectorAll('tspan').length),
        inside: corners.every((corner) => panel?.isPointInFill(corner)),
        meets: meets.map(({ textContent }) => textContent ?? ''),
      };
    });
  });

const SIZES = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
];

describe.each(SIZES)('names of panels at $width', (viewport) => {
  it('lie on their panels, both halves alike', async () => {
    const { page } = await visit('fit', { viewport });
    await page.locator('.closed-up').waitFor();
    const names = await namesOn(page);
    expect(names).toHaveLength(6);
    expect(names.filter(({ inside, meets }) => !inside || meets.length > 0)).toEqual([]);
    expect(names.every(({ lines }) => lines === (viewport.width > 1359 ? 1 : 2))).toBe(true);
  });

  it('lie on their panels word by word, left and right apart', async () => {
    const { page } = await visit('measure', { viewport });
    await page.getByRole('checkbox', { name: 'Her two sides differ' }).check({ force: true });
    const lower = page.getByRole('textbox', { name: /^Right hip line lower by/ });
    await lower.fill('1/4');
    await lower.press('Tab');
    await page.evaluate(() => {
      location.hash = 'fit';
    });
    for (const held of ['at the top edge', 'at the waist', 'at the hem']) {
      await page.getByRole('radio', { name: held }).check({ force: true });
      const names = await namesOn(page);
      expect(names).toHaveLength(12);
      expect(names.filter(({ inside, meets }) => !inside || meets.length > 0)).toEqual([]);
      expect(names.every(({ lines }) => lines === 3)).toBe(true);
    }
  });
});
