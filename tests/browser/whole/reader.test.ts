// What a reader sets for herself: a larger text, wider spacing, forced colours; the first stop of Tab, and a step on paper.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

const STEPS = ['measure', 'draft', 'fit', 'cut'] as const;

async function goTo(page: Page, step: (typeof STEPS)[number]): Promise<void> {
  await page.evaluate((name) => {
    window.location.hash = name;
  }, step);
  await page.locator(`main[data-step="${step}"] > :not(h1, .empty)`).first().waitFor();
}

const sizeOf = (page: Page) =>
  page.evaluate(() => Number.parseFloat(getComputedStyle(document.body).fontSize));

describe('a reader', () => {
  it('who sets a larger text has it', async () => {
    const { page } = await visit('measure');
    await page.locator('main > :not(h1, .empty)').first().waitFor();
    const usual = await sizeOf(page);
    const session = await page.context().newCDPSession(page);
    await session.send('Page.setFontSizes', { fontSizes: { standard: 24 } });
    await page.reload();
    await expect.poll(() => sizeOf(page)).toBeCloseTo(1.5 * usual, 1);
  });

  it('in forced colours reads what is said under the chosen style', async () => {
    const { page } = await visit('draft', { forcedColors: 'active' });
    await page.getByRole('button', { name: /^Style book: / }).click();
    const chosen = page.locator('.style-picture[aria-pressed="true"]');
    await chosen.locator('.hint').waitFor();
    const colourOf = (part: string): Promise<string> =>
      chosen.locator(part).evaluate((element) => getComputedStyle(element).color);
    expect(await chosen.locator('.hint').textContent()).not.toBe('');
    expect(await colourOf('.hint')).toBe(await colourOf('.title'));
  });

  it('goes by the first stop of Tab to the step, past the head of the page', async () => {
    const { page } = await visit('draft');
    await page.locator('main > :not(h1, .empty)').first().waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true);
    expect(await page.evaluate(() => window.location.hash)).toBe('#draft');
  });

  it('loses nothing with text spaced as WCAG 1.4.12 has it, sees in forced colours what is chosen, and prints a step whole', async () => {
    const { page } = await visit('measure', { bypassCSP: true, reducedMotion: 'reduce' });
    const chosen =
      '.steps a, .unit-choice span, main button[aria-pressed], main [role="tab"], main input[type="radio"] + span';
    for (const step of STEPS) {
      await goTo(page, step);
      const spacing = await page.addStyleTag({
        content:
          '*{letter-spacing:.12em!important;word-spacing:.16em!important;line-height:1.5!important}p{margin-bottom:2em!important}',
      });
      // What is cut off by its own box, though nothing there can be scrolled to it.
      const lost = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('main :is(button, a, p, h2, h3, label, span, td, th, li)')]
          // What only a screen reader has is a pixel high.
          .filter((element) => element.checkVisibility() && element.clientHeight > 1)
          .filter((element) => getComputedStyle(element).overflow === 'hidden')
          .filter(
            ({ scrollWidth, clientWidth, scrollHeight, clientHeight }) =>
              scrollWidth > clientWidth + 1 || scrollHeight > clientHeight + 1,
          )
          .map((element) => `${element.className}: ${element.textContent}`),
      );
      expect(lost, `${step}, spaced`).toEqual([]);
      await spacing.evaluate((style) => (style as Element).remove());

      await page.emulateMedia({ media: 'print' });
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('main, main div, main section, main form')]
          .filter((element) => element.checkVisibility() && !element.closest('svg'))
          .filter(({ scrollHeight, clientHeight }) => clientHeight > 0 && scrollHeight > clientHeight + 8)
          .filter((element) => getComputedStyle(element).overflowY !== 'visible')
          .map((element) => element.className),
      );
      expect(cut, `${step} on paper`).toEqual([]);

      await page.emulateMedia({ media: 'screen', forcedColors: 'active' });
      const looks = await page.locator(chosen).evaluateAll((elements) =>
        elements
          .filter((element) => element.checkVisibility())
          .map((element) => {
            const { backgroundColor, color } = getComputedStyle(element);
            const input = element.previousElementSibling;
            const isChosen =
              element.matches('[aria-pressed="true"], [aria-selected="true"], [aria-current]') ||
              (input instanceof HTMLInputElement && input.checked);
            return { isChosen, look: `${backgroundColor} ${color}` };
          }),
      );
      const of = (isChosen: boolean) =>
        new Set(looks.filter((each) => each.isChosen === isChosen).map(({ look }) => look));
      expect(of(true).size, `${step} in forced colours`).toBe(1);
      for (const look of of(true)) expect(of(false), `${step} in forced colours`).not.toContain(look);
      const unseen = await page.locator(chosen).evaluateAll((elements) =>
        elements
          .filter((element) => element.checkVisibility())
          .filter((element) => {
            const ground = getComputedStyle(element).backgroundColor;
            return [...element.querySelectorAll('svg')].some(
              (svg) => getComputedStyle(svg).stroke === ground,
            );
          })
          .map((element) => element.textContent),
      );
      expect(unseen, `${step} in forced colours`).toEqual([]);
      await page.emulateMedia({ forcedColors: 'none' });
    }
  });
});
