// Shouldered styles in the built app: in view as a whole, clean to axe, and no step too wide for the screen.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { foundByAxe } from '../axe';
import { expectQuiet, layStyle, openTab, withBrowser } from '../session';

const visit = withBrowser();

const wear = (page: Page, style: string): Promise<void> =>
  layStyle(page, NAMED_STYLES.get(style)?.title ?? style);

/** The width is asked for on each; what axe asks, on the widest and the narrowest; colours in the dark, on the latter. */
const SCREENS = [
  ['a desk', 'in the light', { viewport: { width: 1440, height: 900 } }],
  ['a tablet', 'not', { viewport: { width: 1024, height: 768 }, hasTouch: true }],
  ['a phone', 'in both', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
] as const;

describe.each(SCREENS)('on %s', (_, axe, options) => {
  it('axe finds nothing on Draft, and no step is wider than the screen', { timeout: 180_000 }, async () => {
    const visitor = await visit('draft', options);
    const { page } = visitor;
    const found = async (): Promise<string[]> => (axe === 'not' ? [] : foundByAxe(page, axe === 'in both'));
    await openTab(page, 'Shoulders');
    await page.getByRole('radio', { name: 'Shoulders', exact: true }).check({ force: true });
    await page.getByRole('button', { name: 'Make them darts' }).waitFor();
    expect(await found(), 'in the way').toEqual([]);
    await page.getByRole('button', { name: 'Make them darts' }).click();
    await page.locator('[data-piece="front-2"]').waitFor();
    expect(await found(), 'shouldered').toEqual([]);
    for (const [style, band] of [
      ['off-shoulder-bridal', 'attached'],
      ['princess-bodice', 'detached'],
    ] as const) {
      await page.getByRole('link', { name: 'Draft', exact: true }).click();
      await wear(page, style);
      await page.locator('[data-piece="front-band"]').waitFor({ state: band });
      if (band === 'attached') expect(await found(), 'with a band').toEqual([]);
      for (const step of ['Draft', 'Fit', 'Cut']) {
        await page.getByRole('link', { name: step, exact: true }).click();
        await page.locator(`[data-step="${step.toLowerCase()}"]`).waitFor();
        expect(await page.evaluate(() => document.documentElement.scrollWidth), step).toBeLessThanOrEqual(
          options.viewport.width,
        );
      }
    }
    expectQuiet(visitor);
  });
});

it.each([
  [1440, 900],
  [1024, 768],
])('a shouldered block is in view from shoulder to hem on %i by %i', async (width, height) => {
  const { page } = await visit('draft', { viewport: { width, height } });
  await wear(page, 'princess-bodice');
  await page.locator('[data-piece="back-1"]').waitFor();
  const [table, ...panels] = await page.evaluate(() =>
    [...document.querySelectorAll('.draft-canvas, .draft-canvas .panel')].map((element) => {
      const { top, bottom, left, right } = element.getBoundingClientRect();
      return { top, bottom, left, right };
    }),
  );
  expect(panels).toHaveLength(3);
  for (const panel of panels) {
    expect(panel.top).toBeGreaterThan(table?.top ?? Number.NaN);
    expect(panel.bottom).toBeLessThan(table?.bottom ?? Number.NaN);
    expect(panel.left).toBeGreaterThan(table?.left ?? Number.NaN);
    expect(panel.right).toBeLessThan(table?.right ?? Number.NaN);
  }
});
