// The cautions for tight lacing are reached from where they are spoken of, in view and under the focus.

import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { easeAt, expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

const link = (page: Page): Locator => page.getByRole('link', { name: 'Read the cautions' });

async function tighten(page: Page): Promise<void> {
  const ease = await easeAt(page, 'under-bust');
  await ease.fill('-6');
  await ease.press('Enter');
}

/** The card's heading has the focus, within the window and clear of the header. */
async function expectThere(page: Page): Promise<void> {
  await expect
    .poll(() =>
      page.evaluate(() => {
        const heading = document.activeElement;
        const box = heading?.getBoundingClientRect();
        const header = document.querySelector('header.shell')?.getBoundingClientRect();
        if (!box || !header) return 'nothing there';
        const clear = box.top >= Math.max(0, header.bottom) && box.bottom <= window.innerHeight;
        return `${heading?.textContent}, ${clear ? 'clear' : `at ${box.top}, header to ${header.bottom}`}`;
      }),
    )
    .toBe('The wearer’s safety, clear');
}

describe('the way to the cautions', () => {
  it.each([
    { width: 1440, height: 900, colorScheme: 'light' as const },
    { width: 1024, height: 768, colorScheme: 'dark' as const },
    { width: 390, height: 844, colorScheme: 'dark' as const },
  ])('leads there from Draft and from Cut, $width wide', async ({ width, height, colorScheme }) => {
    const visitor = await visit('draft', {
      viewport: { width, height },
      colorScheme,
      hasTouch: width < 1100,
    });
    const { page } = visitor;
    await tighten(page);
    await page.evaluate(() => window.scrollTo(0, 0));
    await link(page).focus();
    await page.keyboard.press('Enter');
    await expectThere(page);
    await page.getByRole('navigation').getByRole('link', { name: 'Cut' }).click();
    const print = page.getByRole('button', { name: 'Download the PDF' });
    await expect.poll(() => print.isDisabled()).toBe(true);
    await link(page).click();
    await expectThere(page);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await expect.poll(() => link(page).count()).toBe(0);
    await page.getByRole('navigation').getByRole('link', { name: 'Cut' }).click();
    await expect.poll(() => print.isEnabled()).toBe(true);
    expectQuiet(visitor);
  });
});
