// A first visit to a build of which a script does not come: the page says so, is never blank, and another load mends it.

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { DRAFT, KEEPING } from '../../../src/document';
import { withBrowser } from '../session';
import { type ChangingServer, changingServer } from './changingServer';
import { walkEveryPart } from './everyPart';

let server: ChangingServer;
beforeAll(async () => {
  server = await changingServer(inject('appFolder'));
});
afterAll(() => server.close());

const visit = withBrowser(() => server.address);

const RELOAD = 'Load the page again';

const step = (page: Page) => page.locator('main > :not(h1, .empty)').first();

/** What stands on the page once it has settled: the step, or that a part of it is missing. */
async function shown(page: Page, part = step(page)): Promise<'step' | 'told'> {
  const told = page.getByText(RELOAD).first();
  await expect.poll(async () => (await told.isVisible()) || part.isVisible()).toBe(true);
  return (await told.isVisible()) ? 'told' : 'step';
}

/** Opens every step and every book, until something is told to be missing. */
async function isTold(page: Page): Promise<boolean> {
  if ((await shown(page)) === 'told' || (await open(page, 'client book'))) return true;
  for (const name of ['Draft', 'Fit', 'Cut']) {
    await page.getByRole('link', { name, exact: true }).click();
    await page.locator(`main[data-step="${name.toLowerCase()}"]`).waitFor();
    if ((await shown(page)) === 'told') return true;
    if (name === 'Draft' && (await open(page, DRAFT.styles.book))) return true;
    if (name !== 'Fit') continue;
    await page.getByRole('radio', { name: 'As worn' }).check({ force: true });
    if ((await shown(page, page.locator('main section.worn'))) === 'told') return true;
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

const EVERY = process.env.EVERY_SCRIPT === '1';

/**
 * Those that are missing in turn unless `EVERY_SCRIPT=1` is set, which takes half an hour and walks through every part: the page's
 * own, a step's, a book's and one that several ask for.
 */
const FEW = /^(index|FitStep|AsWorn|ClientBook|table)-/;

/** Stands for what the PDF library asks for to draw HTML, which no print does. */
const NEVER_ASKED = /^emptyModule-/;

/**
 * Without these every part does its work: the steps go without a word of how they stand, Undo without the name of what it undoes
 * or what came of it, and sheets are laid out by the page where no worker does.
 */
const GOES_WITHOUT = /^(stepStates|changeWords|consequence|planWorker)-/;

/** Walks through every part: each does its work, or something is told to be missing; gives which. */
async function isToldOrPassed(page: Page, name: string): Promise<boolean> {
  const { station, told, failure } = await walkEveryPart(page, () => server.refused.size > 0);
  // Half an hour is long without a word.
  process.stdout.write(
    `${name}: ${failure ?? (told === null ? 'done without it' : `${station}, ${told}`)}\n`,
  );
  expect.soft(failure, `${name}: ${station}`).toBeNull();
  return told !== null;
}

describe('a script that does not come', () => {
  it.each([false, true])(
    'is told, whichever it is, and comes with another load (answered with the page: %s)',
    async (answersWithPage) => {
      server.answersWithPage = answersWithPage;
      const { page } = await visit('measure');
      let count = 0;
      const names = server.scripts().filter((name) => (EVERY ? !NEVER_ASKED.test(name) : FEW.test(name)));
      // One kind of answer for every other script, the other kind for the rest: each is missing once.
      for (const name of names.filter((_, i) => (i % 2 === 0) === answersWithPage)) {
        server.missing.add(name);
        server.refused.clear();
        // As of a first visit. What was fetched for another is asked for again: the server lets nothing be kept.
        await page.goto(`${server.address}staywright.svg`);
        await page.evaluate(() => localStorage.clear());
        await page.goto(`${server.address}#measure`);
        const told = EVERY ? await isToldOrPassed(page, name) : await isTold(page);
        // A script is asked for by something that the walk opens.
        expect.soft(told, name).toBe(!GOES_WITHOUT.test(name));
        expect.soft(server.refused.has(name), name).toBe(true);
        server.missing.clear();
        if (!told) continue;
        count += 1;
        const loaded = page.waitForEvent('load');
        const reload = page
          .getByRole('button', { name: RELOAD })
          .or(page.getByRole('link', { name: RELOAD }));
        // A worker that did not come is told with words alone.
        await ((await reload.first().isVisible()) ? reload.first().click() : page.reload());
        await loaded;
        await expect.poll(() => step(page).isVisible(), { message: name }).toBe(true);
      }
      expect(count).toBeGreaterThan(1);
    },
    EVERY ? 7_200_000 : 180_000,
  );

  it('is told where it is what reads a kept book, which is there again with another load', async () => {
    const { page, context } = await visit('measure');
    const waist = page.getByRole('textbox', { name: 'Waist girth' });
    await waist.fill('28 1/4');
    await waist.press('Enter');
    server.missing.add('reader-');
    await page.reload();
    await page.getByText('The page could not be opened.').waitFor();
    server.missing.clear();
    await page.getByRole('button', { name: RELOAD }).click();
    await expect.poll(() => waist.inputValue()).toBe('28 1/4');
    // What reads the steps to be undone is told, too: the page goes on without it.
    const undo = page.locator('.history button', { hasText: 'Undo' });
    server.missing.add('historyStorage');
    await page.reload();
    await page.getByText(KEEPING.notices.undoNotFetched).waitFor();
    expect(await undo.isDisabled()).toBe(true);
    server.missing.clear();
    await page.reload();
    await undo.click();
    await expect.poll(() => waist.inputValue()).toBe('29 1/2');
    // So is what takes in the changes of another tab, with which this one then is behind.
    server.missing.add('otherTabs');
    await page.reload();
    await waist.waitFor();
    const other = await context.newPage();
    await other.goto(`${server.address}#measure`);
    const waistThere = other.getByRole('textbox', { name: 'Waist girth' });
    await waistThere.fill('27 3/4');
    await waistThere.press('Enter');
    await page.getByText(KEEPING.notices.notFollowed).waitFor();
    server.missing.clear();
    await page.reload();
    await expect.poll(() => waist.inputValue()).toBe('27 3/4');
  });
});
