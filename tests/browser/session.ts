// One browser for all test files, a fresh visitor for each test, and a watch on what the page asks for and complains of.

import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type CDPSession,
  chromium,
  type Locator,
  type Page,
} from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';

export interface Visitor {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Addresses asked for that are not the app's own. */
  readonly strangers: string[];
  /** Errors of the page and its console. */
  readonly complaints: string[];
}

/**
 * Registers the connection to the browser and its end for the file; gives a maker of visitors.
 *
 * @param address of the build that is visited
 */
export function withBrowser(
  address: () => string = () => inject('appUrl'),
): (step: string, options?: BrowserContextOptions) => Promise<Visitor> {
  let browser: Browser;
  const contexts: BrowserContext[] = [];
  beforeAll(async () => {
    browser = await chromium.connect(inject('browserEndpoint'));
  });
  afterEach(async () => {
    for (const context of contexts.splice(0)) await context.close();
  });
  afterAll(() => browser?.close());
  return async (step, options = {}) => {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      // It fetches the whole build for each visitor: a fifth of the time of a test.
      serviceWorkers: 'block',
      ...options,
    });
    contexts.push(context);
    const page = await context.newPage();
    const visitor: Visitor = { page, context, strangers: [], complaints: [] };
    const own = address();
    context.on('request', (request) => {
      if (!request.url().startsWith(own) && !/^(blob|data):/.test(request.url()))
        visitor.strangers.push(request.url());
    });
    page.on('pageerror', (error) => visitor.complaints.push(error.message));
    page.on('console', (message) => {
      // A screenshot reads WebGL's picture back, of which the driver tells; it is nothing that the page did.
      if (message.text().includes('GL Driver Message')) return;
      // Of the service worker, which is left out.
      if (message.text().includes('Service Worker registration blocked')) return;
      if (message.type() === 'error' || message.type() === 'warning') visitor.complaints.push(message.text());
    });
    await page.goto(`${own}#${step}`);
    // The page is drawn a while after its script has run. What a test serves itself may not come at all.
    if (own === inject('appUrl')) await page.locator('#root > .loading').waitFor({ state: 'detached' });
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
