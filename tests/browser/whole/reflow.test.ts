// Every step and both books on a tablet either way up, on a phone laid across, at 200 % of a laptop's window and at 400 % of an
// old screen's: nothing is cut off, nothing scrolls sideways (WCAG 2.2, 1.4.10), and what is typed or pressed can be reached.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { easeAt, openTab, withBrowser } from '../session';

const visit = withBrowser();

/** From the smallest on, so that what is opened is reached there too. */
const SIZES = [
  { width: 320, height: 256 },
  { width: 720, height: 450 },
  { width: 844, height: 390 },
  { width: 820, height: 1180 },
  { width: 1024, height: 768 },
] as const;

const [SMALLEST] = SIZES;

/** Whatever on the page is not wholly to be seen or reached, by its text. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const root = document.querySelector('dialog[open]') ?? document.body;
    const found =
      document.documentElement.scrollWidth > wide
        ? [`the page is ${document.documentElement.scrollWidth} wide`]
        : [];
    const scrollers = (element: Element): boolean => {
      const { overflowX } = getComputedStyle(element);
      return overflowX === 'auto' || overflowX === 'scroll';
    };
    for (const element of [root, ...root.querySelectorAll<HTMLElement>('*:not(svg *)')]) {
      const { right, width } = element.getBoundingClientRect();
      const style = getComputedStyle(element);
      if (width < 2 || style.clipPath !== 'none' || element.closest('.unseen, .measure-screen')) continue;
      const text = `${element.tagName} ${(element.textContent ?? '').trim().slice(0, 40)}`;
      if (right > wide + 1) found.push(`beyond the window: ${text}`);
      if (scrollers(element) && element.scrollWidth > element.clientWidth + 1)
        found.push(`scrolls sideways: ${text}`);
      if (style.overflowX === 'hidden' && element.scrollWidth > element.clientWidth + 1)
        if (!element.matches('.brand, svg')) found.push(`cut short: ${text}`);
      if (element instanceof HTMLInputElement && element.scrollWidth > element.clientWidth + 1)
        found.push(`too long for its field: ${element.value}`);
    }
    return found;
  });

/** What is cut off at each of the sizes, each with its size; the page is left at the smallest. */
async function cutOffAnywhere(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const size of [...SIZES, SMALLEST]) {
    await page.setViewportSize(size);
    // What measures its own room takes it in the frame after.
    await page.evaluate(
      () => new Promise<unknown>((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    found.push(...(await cutOff(page)).map((what) => `${size.width} wide: ${what}`));
  }
  return found;
}

describe('from 320 to 1024 px wide', () => {
  const open = async (step: string): Promise<Page> => {
    const { page } = await visit(step, { viewport: SMALLEST });
    await page.locator('main section:visible').first().waitFor();
    return page;
  };

  it.each(['measure', 'draft', 'fit'])('%s', async (step) => {
    expect(await cutOffAnywhere(await open(step))).toEqual([]);
  });

  it('draft, with all that can be asked for', async () => {
    const page = await open('draft');
    for (const [tab, radio, boxes] of [
      ['Wedges', 'Closed', ['Fuller cup']],
      ['Shoulders', 'Shoulders', []],
      ['More', null, ['Straps', 'Modesty panel', 'The right half has wedges of its own']],
    ] as const) {
      await openTab(page, tab);
      if (radio) await page.getByRole('radio', { name: radio }).check({ force: true });
      for (const name of boxes) await page.getByRole('checkbox', { name }).check();
      expect(await cutOffAnywhere(page), tab).toEqual([]);
    }
    for (const tab of ['Wedges', 'Garment', 'Edges']) {
      await openTab(page, tab);
      expect(await cutOffAnywhere(page), tab).toEqual([]);
    }
  });

  it('draft, with faults and cautions at the ledger', async () => {
    const page = await open('draft');
    for (const [level, text] of [
      ['waist', '-3 15/16'],
      ['bust', 'wide'],
    ] as const) {
      await (await easeAt(page, level)).fill(text);
      await page.keyboard.press('Tab');
    }
    await page.getByText('Write digits').waitFor();
    await openTab(page, 'Edges');
    await page.getByRole('textbox', { name: 'Top edge at the bust line' }).fill('-1 15/16');
    await page.keyboard.press('Tab');
    expect(await cutOffAnywhere(page)).toEqual([]);
  });

  it('cut, with all of it unfolded', async () => {
    const page = await open('cut');
    await page.getByRole('button', { name: 'Download the PDF' }).waitFor();
    for (const each of await page.locator('main details').all())
      await each.evaluate((details) => details.setAttribute('open', ''));
    for (const view of ['Panels on paper', 'Lay plan', 'Making list']) {
      await page.getByRole('radio', { name: view }).check({ force: true });
      expect(await cutOffAnywhere(page), view).toEqual([]);
    }
  });

  it.each([
    ['measure', 'Client book', '.open-book'],
    ['measure', 'Help', '.help-button'],
    ['draft', 'Style book', '.style-choice > button'],
    ['draft', 'Real size on this screen', '.table-tools button:has-text("Real size")'],
  ])('%s: %s', async (step, name, opener) => {
    const page = await open(step);
    const more = page.getByRole('button', { name: 'More tools' });
    if ((await more.count()) > 0 && (await more.isVisible())) await more.click();
    await page.locator(opener).click();
    await page.getByRole('dialog', { name }).waitFor();
    expect(await cutOffAnywhere(page)).toEqual([]);
    const close = page.getByRole('button', { name: 'Close' });
    await close.click();
    await page.getByRole('dialog', { name }).waitFor({ state: 'detached' });
  });
});
