// A first visit to a build of which a script does not come: the page says so, is never blank, and another load mends it.

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { DRAFT } from '../../src/document';
import { type ChangingServer, changingServer } from './changingServer';
import { withBrowser } from './session';

const visit = withBrowser();

let server: ChangingServer;
beforeAll(async () => {
  server = await changingServer(inject('appFolder'));
});
afterAll(() => server.close());

const RELOAD = 'Load the page again';

const step = (page: Page) => page.locator('main > :not(h1, .empty)').first();

/** What stands on the page once it has settled: the step, or that a part of it is missing. */
async function shown(page: Page): Promise<'step' | 'told'> {
  const told = page.getByText(RELOAD).first();
  await expect.poll(async () => (await told.isVisible()) || (await step(page).isVisible())).toBe(true);
  return (await told.isVisible()) ? 'told' : 'step';
}

/** Opens every step and every book, until something is told to be missing. */
async function isTold(page: Page): Promise<boolean> {
  if ((await shown(page)) === 'told' || (await open(page, 'client book'))) return true;
  for (const name of ['Draft', 'Fit', 'Cut']) {
    await page.getByRole('link', { name }).click();
    await page.locator(`main[data-step="${name.toLowerCase()}"]`).waitFor();
    if ((await shown(page)) === 'told') return true;
    if (name === 'Draft' && (await open(page, DRAFT.styles.book))) return true;
  }
  return false;
}

/** Opens a book, and closes it where it came; gives whether it was told to be missing. */
async function open(page: Page, name: string): Promise<boolean> {
  await page.getByRole('button', { name }).first().click();
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  if (await dialog.getByRole('button', { name: RELOAD }).isVisible()) return true;
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => dialog.count()).toBe(0);
  return false;
}

/** Scripts of a print, which tells of itself in the Cut step, and what no step needs. */
const ELSEWHERE =
  /^(printWorker|jspdf|emptyModule|fontFiles|consequence|KeepingNotices|RealSizeDialog|fileName)/;

describe('a script that does not come', () => {
  it.each([false, true])(
    'is told, whichever it is, and comes with another load (answered with the page: %s)',
    async (answersWithPage) => {
      server.answersWithPage = answersWithPage;
      const names = server.scripts().filter((name) => !ELSEWHERE.test(name));
      // One kind of answer for every other script, the other kind for the rest: each is missing once.
      for (const name of names.filter((_, i) => (i % 2 === 0) === answersWithPage)) {
        server.missing.add(name);
        const { page, context } = await visit('measure', { serviceWorkers: 'block' });
        await page.goto(server.address);
        expect(await isTold(page), name).toBe(true);
        server.missing.clear();
        const loaded = page.waitForEvent('load');
        const reload = page.getByRole('button', { name: RELOAD });
        await reload.or(page.getByRole('link', { name: RELOAD })).click();
        await loaded;
        await expect.poll(() => step(page).isVisible(), { message: name }).toBe(true);
        await context.close();
      }
    },
    600_000,
  );
});
