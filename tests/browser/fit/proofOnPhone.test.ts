// Fit by finger on a phone: a row that is pressed shows its place in the drawing, and both are to be seen at once.

import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

/** Whether the middle of an element, or what it holds, is what one sees there. */
const isSeen = (element: Locator): Promise<boolean> =>
  element.evaluate((node) => {
    const { left, right, top, bottom } = node.getBoundingClientRect();
    if (top < 0 || bottom > innerHeight) return false;
    const there = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    const frame = node.closest('svg');
    return there !== null && (node.contains(there) || (frame?.contains(there) ?? false));
  });

describe('Fit on a phone', () => {
  const open = async (): Promise<{ page: Page; quiet: () => void }> => {
    const visitor = await visit('fit', PHONE);
    await visitor.page.getByRole('region', { name: 'Girths' }).waitFor();
    // They come later, and what stands below them moves down.
    await visitor.page.getByRole('heading', { name: 'Fittings' }).waitFor();
    await visitor.page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    return { page: visitor.page, quiet: () => expectQuiet(visitor) };
  };

  it.each([
    ['Girths', 'Waist', '.level-across'],
    ['Edge run', 'Centre back, hem: ', '.crossing'],
    ['Seam walk', 'Back 1 + 2', '.edge.pointed-out'],
  ])('shows what is pressed in %s where it can be seen, the row beside it', async (proof, name, place) => {
    const { page, quiet } = await open();
    const row = page.getByRole('region', { name: proof }).getByRole('button', { name });
    await row.scrollIntoViewIfNeeded();
    await row.evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const before = await page.evaluate(() => scrollY);
    await row.tap();
    // A level line is as high as nothing, which to the browser is not to be seen.
    await page.locator(place).first().waitFor({ state: 'attached' });
    await expect.poll(() => isSeen(page.locator(place).first())).toBe(true);
    await expect.poll(() => isSeen(row)).toBe(true);
    expect(await page.evaluate(() => scrollY)).toBe(before);
    quiet();
  });

  it('leaves no row that has the focus under the drawing', async () => {
    const { page } = await open();
    const rows = page.locator('.proofs .row-button');
    await rows.last().focus();
    for (let i = (await rows.count()) - 1; i >= 0; i -= 1) {
      expect(await isSeen(page.locator('.proofs :focus'))).toBe(true);
      await page.keyboard.press('Shift+Tab');
    }
  });

  it('keeps each form of an alteration in the window, a number beside what it is a number of', async () => {
    const { page } = await open();
    for (const name of ['Seam or dart', 'Length', 'Bust point', 'Gaps of the lacing']) {
      await page.getByRole('button', { name, exact: true }).click();
      const form = page.locator('.alteration-form');
      await form.waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBe(390);
      const tops = await form
        .locator('.alteration-row')
        .first()
        .locator('input, select')
        .evaluateAll((fields) => fields.slice(0, 2).map((field) => field.getBoundingClientRect().top));
      expect(Math.abs((tops[0] ?? 0) - (tops[1] ?? 99)), name).toBeLessThan(1);
      await form.getByRole('button', { name: 'Cancel' }).click();
      await form.waitFor({ state: 'detached' });
    }
  });
});
