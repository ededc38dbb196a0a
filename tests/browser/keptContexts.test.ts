// A context that is kept shows the next test nothing of the last one, and one that was changed for good is not kept.

import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { browserOptions } from '../support/browser/findBrowser';
import { lendPage, takeBackPage, type Visitor } from './keptContexts';

const address = (): string => inject('appUrl');

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch(browserOptions('to look'));
});
afterAll(async () => {
  await browser.close();
});

const visitors = new Set<Visitor>();
// Of a test that failed.
afterEach(async () => {
  for (const visitor of visitors) await leave(visitor, false);
});

async function visit(options: BrowserContextOptions = {}): Promise<Visitor> {
  const visitor = await lendPage(browser, address(), { serviceWorkers: 'block', ...options });
  visitors.add(visitor);
  return visitor;
}

async function openApp(page: Page): Promise<void> {
  await page.goto(`${address()}#measure`);
  await page.locator('.tape-form').waitFor();
}

const leave = (visitor: Visitor, isClean = true): Promise<void> => takeBackPage(visitor, address(), isClean);

/** What a test could find of the one before it. */
const found = async (page: Page): Promise<object> => ({
  ...(await page.evaluate(async () => ({
    kept: { ...localStorage, ...sessionStorage, name: window.name, cookie: document.cookie },
    databases: await indexedDB.databases(),
    caches: await caches.keys(),
    locks: (await navigator.locks.query()).held?.map(({ name }) => name),
    sizes: [innerWidth, innerHeight, screen.width, devicePixelRatio],
    media: [
      '(prefers-color-scheme: dark)',
      '(prefers-reduced-motion)',
      '(forced-colors: active)',
      'print',
    ].map((query) => matchMedia(query).matches),
    pointed: document.querySelector('[data-field="waist"] input')?.matches(':hover'),
    focused: document.activeElement?.tagName,
    own: 'ownMark' in window,
    scroll: scrollY,
  }))),
  keys: await keysSeen(page),
  pages: page.context().pages().length,
  waist: await page.getByRole('textbox', { name: 'Waist girth' }).inputValue(),
});

/** What the page hears of a move of the pointer: buttons and modifier keys. */
async function keysSeen(page: Page): Promise<unknown> {
  const seen = page.evaluate(
    () =>
      new Promise((done) => {
        addEventListener('pointermove', ({ buttons, shiftKey, altKey, ctrlKey }) =>
          done([buttons, shiftKey, altKey, ctrlKey]),
        );
      }),
  );
  await page.mouse.move(300, 400);
  await page.mouse.move(310, 410);
  return seen;
}

describe('a context that is kept', () => {
  it('shows the next test what a context of its own would show', async () => {
    const options = { viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' } as const;
    const context = await browser.newContext(options);
    const fresh = await context.newPage();
    await openApp(fresh);
    const asNew = await found(fresh);
    await context.close();

    const first = await visit({ viewport: { width: 800, height: 500 }, colorScheme: 'dark' });
    const { page } = first;
    await openApp(page);
    await page.getByRole('textbox', { name: 'Waist girth' }).fill('28');
    await page.keyboard.press('Enter');
    await page.evaluate(async () => {
      localStorage.setItem('staywright.left', 'x');
      sessionStorage.setItem('left', 'x');
      window.name = 'left';
      await cookieStore.set('left', 'x');
      Object.assign(window, { ownMark: true });
      await caches.open('left');
      await new Promise((done) => {
        indexedDB.open('left').onsuccess = done;
      });
      void navigator.locks.request('left', () => new Promise(() => undefined));
      // What a page still keeps when it goes.
      addEventListener('pagehide', () => localStorage.setItem('staywright.late', 'x'));
    });
    await page.emulateMedia({ media: 'print', reducedMotion: 'reduce', forcedColors: 'active' });
    await page.setViewportSize({ width: 390, height: 844 });
    const session = await first.context.newCDPSession(page);
    await session.send('Emulation.setDeviceMetricsOverride', {
      ...{ width: 500, height: 500, deviceScaleFactor: 3, mobile: true },
    });
    const heard: string[] = [];
    page.on('load', () => heard.push('load'));
    await openApp(await first.context.newPage());
    await page.getByRole('textbox', { name: 'Waist girth' }).hover();
    await page.mouse.down();
    await page.keyboard.down('Shift');
    first.complaints.push('left');
    await leave(first);

    const next = await visit();
    await openApp(next.page);
    expect(next.context).toBe(first.context);
    expect(next.complaints).toEqual([]);
    expect(await found(next.page)).toEqual(asNew);
    expect(heard).toEqual([]);
    await leave(next);
  });

  it('has the storage it is asked for when its page begins', async () => {
    const visitor = await visit({
      storageState: {
        cookies: [],
        origins: [{ origin: new URL(address()).origin, localStorage: [{ name: 'asked', value: 'for' }] }],
      },
    });
    expect(await visitor.page.evaluate(() => localStorage.getItem('asked'))).toBe('for');
    await leave(visitor);
    const next = await visit();
    expect(next.context).toBe(visitor.context);
    expect(await next.page.evaluate(() => localStorage.getItem('asked'))).toBe(null);
    await leave(next);
  });

  it('is not lent to two at once', async () => {
    const [first, second] = [await visit(), await visit()];
    expect(second.context).not.toBe(first.context);
    await leave(first);
    await leave(second);
  });

  it.each<[string, (visitor: Visitor) => unknown]>([
    ['has a script of its own', ({ page }) => page.addInitScript(() => undefined)],
    ['answers requests', ({ page }) => page.route('**/nothing', (route) => route.abort())],
    ['is offline', ({ context }) => context.setOffline(true)],
    ['may read the clipboard', ({ context }) => context.grantPermissions(['clipboard-read'])],
    ['waits for less', ({ page }) => page.setDefaultTimeout(1000)],
    ['has another clock', ({ page }) => page.clock.install()],
    ['asked another host', ({ page }) => page.goto(inject('appUrl').replace('127.0.0.1', 'localhost'))],
    ['closed its page', ({ page }) => page.close()],
  ])('is closed after a test that %s', async (_, change) => {
    const visitor = await visit();
    await change(visitor);
    await leave(visitor);
    const next = await visit();
    expect(next.context).not.toBe(visitor.context);
    await leave(next);
  });

  it('is closed after a test that failed', async () => {
    const visitor = await visit();
    await leave(visitor, false);
    const next = await visit();
    expect(next.context).not.toBe(visitor.context);
    await leave(next);
  });
});
