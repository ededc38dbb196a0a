// A later build that comes without taking anything away. The network off after the first visit: release.test.ts.

import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
import { withBrowser } from '../session';
import { type ChangingServer, changingServer } from './changingServer';

/** With the service worker, which other tests leave out. */
const WITH_WORKER = { serviceWorkers: 'allow' } as const;

const ready = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    // the worker takes charge of the window a moment after it is ready
    while (!navigator.serviceWorker.controller) await new Promise((go) => setTimeout(go, 50));
  });

describe('a later build', { timeout: 120_000 }, () => {
  let server: ChangingServer;
  beforeEach(async () => {
    server = await changingServer(inject('appFolder'));
  });
  afterEach(() => server.close());
  const visit = withBrowser(() => server.address);

  const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth' });
  const use = (page: Page) => page.getByRole('button', { name: 'Use it now' });
  const lookForUpdate = (page: Page) =>
    page.evaluate(async () => {
      await (await navigator.serviceWorker.ready).update();
    });
  const title = (page: Page) => page.title().catch(() => '');
  const becomesLater = (page: Page) =>
    expect.poll(() => title(page), { timeout: 45_000 }).toBe('Later Staywright');
  /** Asks the worker for files one after the other, so that it is asked while the browser ends it. */
  const askOften = (page: Page) =>
    page.evaluate(() => {
      const end = performance.now() + 1500;
      const ask = (): void => {
        if (performance.now() > end) return;
        fetch('staywright.svg').then(ask, ask);
      };
      for (let i = 0; i < 6; i += 1) ask();
    });

  /** Two windows of the build that is there. */
  async function twoWindows(): Promise<[Page, Page]> {
    const { page, context } = await visit('measure', WITH_WORKER);
    await ready(page);
    const second = await context.newPage();
    await second.goto(`${server.address}#measure`);
    await waist(second).waitFor();
    return [page, second];
  }

  it('waits until it is asked in by one window, takes nothing away from the others, and leaves nothing of the build before once they are closed', async () => {
    const [first, second] = await twoWindows();
    const kept = (page: Page) =>
      page.evaluate(async () => {
        const cache = await caches.open('staywright-files');
        return (await cache.keys()).map(({ url }) => url).filter((url) => url.endsWith('.js'));
      });
    const before = await kept(first);
    server.buildLater('Later');
    await lookForUpdate(first);
    await use(first).waitFor();
    expect(await first.title()).toBe('Staywright');
    // Parts that neither window has asked for, and that the server no longer has.
    await first.getByRole('link', { name: 'Fit', exact: true }).click();
    await first.locator('.closed-up').waitFor();
    await waist(second).fill('28 1/4');
    await askOften(second);
    await use(first).click();
    // The browser may put it off once more while a page that was loaded again asks for its files; the page then offers it again.
    const askedAgain = async (page: Page): Promise<string> => {
      const again = use(page);
      if (await again.isVisible()) await again.click({ timeout: 1000 }).catch(() => undefined);
      return title(page);
    };
    for (const page of [first, second])
      await expect.poll(() => askedAgain(page), { timeout: 60_000, interval: 1000 }).toBe('Later Staywright');
    expect(await waist(second).inputValue()).toBe('28 1/4');
    expect(await kept(first)).toEqual(expect.arrayContaining(before));
    await first.getByRole('link', { name: 'Cut', exact: true }).click();
    await first.getByRole('button', { name: 'Download the PDF' }).waitFor();
    const context = first.context();
    await first.close();
    await second.close();
    const again = await context.newPage();
    await again.goto(server.address);
    await expect.poll(async () => (await kept(again)).every((url) => url.endsWith('-later.js'))).toBe(true);
    expect((await kept(again)).length).toBe(server.scripts().length);
  });

  it('does not load a window anew whose work cannot be kept, and gives it the files of its own build', async () => {
    const [first, second] = await twoWindows();
    server.buildLater('Later');
    await lookForUpdate(first);
    await second.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await waist(second).fill('28 1/4');
    await use(first).click();
    await becomesLater(first);
    await second.getByText('A later version of this page is in use in another tab.').waitFor();
    expect(await second.title()).toBe('Staywright');
    expect(await waist(second).inputValue()).toBe('28 1/4');
    await second.getByRole('link', { name: 'Cut', exact: true }).click();
    await second.getByRole('button', { name: 'Download the PDF' }).waitFor();
  });

  it('that is only half there is not taken, and is once it is whole', async () => {
    const { page } = await visit('measure', WITH_WORKER);
    await ready(page);
    server.buildLater('Later');
    server.missing.add('FitStep').add('table');
    for (const answersWithPage of [false, true]) {
      server.answersWithPage = answersWithPage;
      server.refused.clear();
      await lookForUpdate(page).catch(() => undefined);
      await expect
        .poll(
          () =>
            page.evaluate(async () => {
              const { installing, waiting } = await navigator.serviceWorker.ready;
              return installing ?? waiting;
            }),
          { message: `missing files answered with the page: ${answersWithPage}` },
        )
        .toBe(null);
      expect(server.refused.size, `missing files answered with the page: ${answersWithPage}`).toBeGreaterThan(
        0,
      );
      await page.reload();
      expect(await page.title()).toBe('Staywright');
      await page.getByRole('link', { name: 'Fit', exact: true }).click();
      await page.locator('.closed-up').waitFor();
    }
    server.missing.clear();
    await lookForUpdate(page);
    await use(page).click();
    await becomesLater(page);
    await page.locator('.closed-up').waitFor();
  });

  it('that was on its way when all windows were closed is whole when one is opened again', async () => {
    const { page, context } = await visit('measure', WITH_WORKER);
    await ready(page);
    server.buildLater('Later');
    server.held.add('FitStep');
    await page.evaluate(async () => {
      void (await navigator.serviceWorker.ready).update().catch(() => undefined);
    });
    await expect.poll(() => server.asked.size).toBe(1);
    const another = await context.newPage();
    await page.close();
    await another.goto(`${server.address}#measure`);
    await waist(another).waitFor();
    server.letGo();
    await use(another).click();
    await becomesLater(another);
    await context.setOffline(true);
    await another.reload();
    await another.getByRole('link', { name: 'Fit', exact: true }).click();
    await another.locator('.closed-up').waitFor();
    expect(await another.title()).toBe('Later Staywright');
  });
});
