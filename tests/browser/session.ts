// One browser for all test files of a worker, a visitor who was never there before for each test, and a watch on what the page asks for and
// complains of.

import {
  type Browser,
  type BrowserContextOptions,
  type CDPSession,
  chromium,
  type Locator,
  type Page,
} from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { type BrowserUse, browserOptions } from '../support/browser/findBrowser';
import { closePagesOf, lendPage, takeBackPage, type Visitor } from './keptContexts';

export type { Visitor };

/** The browser of all files of a worker, started by the first of them. It ends with the worker. */
let shared: Promise<Browser> | undefined;

/**
 * Registers for the file what ends the visits of a test; gives a maker of visitors.
 *
 * @param address of the build that is visited
 * @param use `to work`: in a browser of the file's own
 */
export function withBrowser(
  address: () => string = () => inject('appUrl'),
  use: Exclude<BrowserUse, 'to time'> = 'to look',
): (step: string, options?: BrowserContextOptions) => Promise<Visitor> {
  let browser: Browser;
  const visitors: Visitor[] = [];
  beforeAll(async () => {
    if (use === 'to work') browser = await chromium.launch(browserOptions(use));
    else {
      shared ??= chromium.launch(browserOptions(use));
      browser = await shared;
    }
  });
  afterEach(async ({ task }) => {
    for (const visitor of visitors.splice(0))
      await takeBackPage(visitor, address(), task.result?.state !== 'fail');
  });
  afterAll(async () => {
    if (use === 'to work') return browser.close();
    if (address() !== inject('appUrl')) await closePagesOf(browser, address());
  });
  return async (step, options = {}) => {
    const own = address();
    // The service worker fetches the whole build for each visitor: a fifth of the time of a test.
    const visitor = await lendPage(browser, own, { serviceWorkers: 'block', ...options });
    visitors.push(visitor);
    await visitor.page.goto(`${own}#${step}`);
    // The page is drawn a while after its script has run. What a test serves itself may not come at all.
    if (own === inject('appUrl'))
      await visitor.page.locator('#root > .loading').waitFor({ state: 'detached' });
    return visitor;
  };
}

/** Nothing was asked of another host, and the page had nothing to complain of. */
export function expectQuiet({ strangers, complaints }: Visitor): void {
  expect(strangers).toEqual([]);
  expect(complaints).toEqual([]);
}

/** Opens a tab of the Draft step's inspector. */
export const openTab = (page: Page, name: string): Promise<void> =>
  page.getByRole('tab', { name, exact: true }).click();

/** Lays a style of the style book on the table by its name. */
export async function layStyle(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: /^Style book: / }).click();
  await page.locator('.style-picture', { hasText: title }).first().click();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
}

/** The field of the ease at a level; where the girths stand on the table, the level's row is opened first. */
export async function easeAt(page: Page, level: string): Promise<Locator> {
  const ease = page.getByRole('textbox', { name: `Ease at the ${level}` });
  const chip = page.getByRole('button', { name: new RegExp(`^${level} .*ease and what is taken in$`) });
  await page.locator('.ledger').waitFor();
  if ((await chip.count()) > 0 && (await chip.getAttribute('aria-expanded')) === 'false') await chip.click();
  return ease;
}

/** Takes a handle in hand with a tap of a finger, so that the next touch pulls it. */
export async function tapHandle(page: Page, finger: CDPSession, id: string): Promise<void> {
  const box = await page.locator(`[data-handle="${id}"] .mark`).boundingBox();
  if (!box) throw new Error(`${id} is not on the table`);
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
  await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await page.locator(`[data-handle="${id}"].held`).waitFor({ state: 'attached' });
}
