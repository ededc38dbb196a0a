// The header stands still under the pointer whatever the last change is called, and has undo and redo on any screen.

import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

const history = (page: Page, word: 'Undo' | 'Redo'): Locator =>
  page.getByRole('button', { name: new RegExp(`^${word}`) });

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

async function boxOf(locator: Locator): Promise<Box> {
  const box = await locator.boundingBox();
  if (!box) throw new Error('not in view');
  return box;
}

const boxes = async (page: Page): Promise<Box[]> => [
  ...(await Promise.all((await page.getByRole('navigation').getByRole('link').all()).map(boxOf))),
  await boxOf(history(page, 'Undo')),
  await boxOf(history(page, 'Redo')),
];

/** Four changes with names of very different lengths. */
async function changeFourTimes(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'cm' }).check({ force: true });
  for (const [name, text] of [
    ['Waist girth', '74'],
    ['Bust point to bust point', '19'],
    ['Underarm to waist', '20'],
  ] as const) {
    await page.getByRole('textbox', { name }).fill(text);
    await page.keyboard.press('Enter');
  }
}

describe('undo and redo in the header', () => {
  it.each([1440, 1200, 800, 390, 320])(
    '%s wide: four presses at one point are four steps back',
    async (width) => {
      const visitor = await visit('measure', { viewport: { width, height: 800 } });
      const { page } = visitor;
      const still = await boxes(page);
      await changeFourTimes(page);
      await page.evaluate(() => window.scrollTo(0, 0));
      expect(await boxes(page)).toEqual(still);
      const { x, y, width: wide, height } = await boxOf(history(page, 'Undo'));
      const point = [x + wide - 4, y + height / 2] as const;
      for (const undone of ['underarm to waist', 'bust point to bust point', 'waist girth', 'unit']) {
        await page.mouse.click(...point);
        await page.getByRole('button', { name: `Redo: ${undone}` }).waitFor();
        expect(await boxes(page)).toEqual(still);
      }
      expect(await history(page, 'Undo').isDisabled()).toBe(true);
      expect(await page.getByRole('textbox', { name: 'Waist girth' }).inputValue()).toBe('29 1/2');
      await expect.poll(() => history(page, 'Redo').getAttribute('title')).toBe('Redo: unit');
      await history(page, 'Redo').click();
      await page.getByRole('button', { name: 'Redo: waist girth' }).waitFor();
      expectQuiet(visitor);
    },
  );

  it.each([390, 320])('has room for both at %s wide, under a finger', async (width) => {
    const { page } = await visit('measure', {
      viewport: { width, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    await changeFourTimes(page);
    await history(page, 'Undo').click();
    const [undo, redo] = [await boxOf(history(page, 'Undo')), await boxOf(history(page, 'Redo'))];
    for (const box of [undo, redo]) {
      expect(box.width).toBeGreaterThanOrEqual(44);
      expect(box.height).toBeGreaterThanOrEqual(44);
    }
    expect(redo.x).toBeGreaterThanOrEqual(undo.x + undo.width);
    expect(redo.x + redo.width).toBeLessThanOrEqual(width - 8);
    // Nothing in the header runs over another or out of the page.
    const client = page.getByRole('button', { name: /client book$/ });
    const fits = await client.evaluate((button) =>
      [...button.querySelectorAll('*')].every((part) => part.scrollWidth <= part.clientWidth + 1),
    );
    expect(fits).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });
});
