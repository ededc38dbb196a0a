// One browser for all test files, a fresh visitor for each test, and a watch on what the page asks for and complains of.

import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
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
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
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
      if (message.type() === 'error' || message.type() === 'warning') visitor.complaints.push(message.text());
    });
    await page.goto(`${own}#${step}`);
    return visitor;
  };
}

/** Nothing was asked of another host, and the page had nothing to complain of. */
export function expectQuiet({ strangers, complaints }: Visitor): void {
  expect(strangers).toEqual([]);
  expect(complaints).toEqual([]);
}
