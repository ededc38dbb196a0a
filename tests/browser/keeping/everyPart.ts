// A walk that opens every part of the page that comes as a script of its own: each part is there and does its work, or it is told
// in words with what to do.

import type { Locator, Page } from 'playwright-core';
import {
  CLIENT_BOOK,
  CUT,
  DEMO_BOOK,
  DRAFT,
  FIELDS,
  FITTINGS,
  KEEPING,
  LAY,
  SHELL,
  SIZING,
  START,
  WORN,
  writeBackup,
} from '../../../src/document';

/** What the page says where something does not come. */
const TELLING: readonly string[] = [
  START.reload,
  SHELL.keepingUnknown,
  KEEPING.notices.undoNotFetched,
  KEEPING.notices.notFollowed,
  CLIENT_BOOK.clients.notFetched,
  FIELDS.backupNotFetched,
  WORN.failed,
  LAY.failed,
  CUT.print.failures.failed,
  SIZING.proof.failed,
  SIZING.print.failed,
];

/** The longest that a part may take on a busy machine, ms. */
const MOST_MS = 240_000;

/** Ends the walk: the page tells that something is missing. */
class Told extends Error {}

const telling = (page: Page): Locator =>
  TELLING.map((text) => page.getByText(text))
    .reduce((all, each) => all.or(each))
    .locator('visible=true')
    .first();

/** Waits for one thing or that something is told; the latter ends the walk. */
async function seen(page: Page, wanted: Locator): Promise<void> {
  const told = telling(page);
  await wanted.locator('visible=true').first().or(told).first().waitFor({ timeout: MOST_MS });
  // What is missing is told beside what has come, too.
  if (await told.isVisible()) throw new Told((await told.textContent()) ?? '');
}

async function downloaded(page: Page, press: Locator): Promise<void> {
  const told = telling(page);
  const file = page.waitForEvent('download', { timeout: MOST_MS }).then(async (download) => {
    await download.delete();
    return true;
  });
  // It is awaited below, unless something is told before.
  file.catch(() => undefined);
  await press.click();
  const isThere = await Promise.race([
    file,
    told.waitFor({ timeout: MOST_MS }).then(
      () => false,
      () => file,
    ),
  ]);
  if (!isThere) throw new Told((await told.textContent()) ?? '');
}

const waist = (page: Page): Locator => page.getByRole('textbox', { name: 'Waist girth' });

async function type(page: Page, text: string): Promise<void> {
  await waist(page).fill(text);
  await waist(page).press('Enter');
}

/** The waist comes to a number, or something is told. */
async function becomes(page: Page, text: string): Promise<void> {
  const told = telling(page);
  for (const end = Date.now() + MOST_MS; Date.now() < end; ) {
    if ((await waist(page).inputValue()) === text) return;
    if (await told.isVisible()) throw new Told((await told.textContent()) ?? '');
    await page.waitForTimeout(50);
  }
  throw new Error(`the waist is ${await waist(page).inputValue()}, not ${text}`);
}

const closeDialog = async (page: Page): Promise<void> => {
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).first().click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
};

async function goTo(page: Page, step: string): Promise<void> {
  await page.getByRole('link', { name: step, exact: true }).click();
  await seen(page, page.locator(`main[data-step="${step.toLowerCase()}"] > :not(h1, .empty)`));
}

const openBook = async (page: Page): Promise<void> => {
  await page.locator('.open-book').click();
  await seen(page, page.locator('dialog .client-list'));
};

/** The stations of the walk in their order. */
const STATIONS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'first pictures': async (page) => seen(page, page.locator('.first-run svg')),
  'her name': async (page) => {
    // In letters that the page's own face lacks.
    await page.getByRole('textbox', { name: 'Client' }).fill('Κλειώ नीला');
    await page.getByRole('textbox', { name: 'Client' }).press('Enter');
  },
  undo: async (page) => {
    const before = await waist(page).inputValue();
    await type(page, '28 1/4');
    await page.locator('.history button', { hasText: 'Undo' }).click();
    await becomes(page, before);
    await page.locator('.history button', { hasText: 'Redo' }).click();
    await becomes(page, '28 1/4');
  },
  help: async (page) => {
    await page.locator('.help-button').click();
    await seen(page, page.locator('dialog .help'));
    await seen(page, page.locator('dialog .licences'));
    await closeDialog(page);
  },
  'client book': async (page) => {
    await openBook(page);
    await downloaded(page, page.getByRole('button', { name: FIELDS.downloadBackup }).first());
    await page.locator('.backup input[type=file]').setInputFiles({
      name: 'backup.json',
      mimeType: 'application/json',
      buffer: Buffer.from(writeBackup(DEMO_BOOK, '2026-01-03')),
    });
    await seen(page, page.locator('.backup .preview'));
    await closeDialog(page);
  },
  draft: async (page) => {
    await goTo(page, 'Draft');
    await seen(page, page.locator('.draft-canvas'));
    await page.locator('.tool-worn').click();
    await seen(page, page.locator('.worn-small canvas'));
    await page.locator('.tool-worn').click();
    await page.locator('.tool-realSize').click();
    await seen(page, page.locator('dialog .measure-screen'));
    await closeDialog(page);
    await page.getByRole('button', { name: DRAFT.styles.book }).first().click();
    await seen(page, page.locator('dialog .style-picture'));
    await closeDialog(page);
  },
  fit: async (page) => {
    await goTo(page, 'Fit');
    await seen(page, page.locator('.fittings'));
    await page.getByRole('button', { name: FITTINGS.newFitting }).click();
    await page.getByRole('radio', { name: 'As worn' }).check({ force: true });
    await seen(page, page.locator('section.worn canvas'));
  },
  cut: async (page) => {
    await goTo(page, 'Cut');
    await downloaded(page, page.getByRole('button', { name: 'Download the PDF' }).first());
  },
  'lay plan': async (page) => {
    await page.getByRole('radio', { name: CUT.views.each.lay }).check({ force: true });
    await seen(page, page.locator('.lay-card'));
    await page.getByRole('button', { name: LAY.start }).click();
    await seen(page, page.locator('.lay-plan'));
    await page.getByRole('radio', { name: CUT.views.each.panels }).check({ force: true });
  },
  sizes: async (page) => {
    await page.locator('section.sizes-card summary').click();
    await page.locator('section.sizes-card button').click();
    await seen(page, page.locator('.bodies tbody tr .met'));
    const make = page.locator('.sizes-print .primary');
    const read = page.locator('.sizes-print .safety input');
    if ((await read.count()) > 0) await read.check();
    await page.locator('.sizes-print .primary:enabled').waitFor({ timeout: MOST_MS });
    await downloaded(page, make);
    await closeDialog(page);
  },
  'what was fitted and printed': async (page) => {
    await openBook(page);
    await seen(page, page.locator('dialog .client-past details'));
    await seen(page, page.locator('dialog .print-list'));
    await closeDialog(page);
  },
  'another tab': async (page) => {
    await goTo(page, 'Measure');
    const other = await page.context().newPage();
    await other.goto(page.url());
    await seen(other, waist(other));
    await type(other, '27 3/4');
    await becomes(page, '27 3/4');
    await other.close();
  },
  'kept and opened again': async (page) => {
    await type(page, '28 1/2');
    await openBook(page);
    await page.locator('.client-list').getByRole('button', { name: CLIENT_BOOK.clients.add }).click();
    await becomes(page, '');
    await page.waitForFunction(
      () => Object.keys(localStorage).filter((key) => key.includes('.client.')).length > 1,
    );
    await page.reload();
    await seen(page, waist(page));
    await becomes(page, '');
    await page.locator('.history button', { hasText: 'Undo' }).click();
    await becomes(page, '28 1/2');
    await page.locator('.history button', { hasText: 'Redo' }).click();
    await becomes(page, '');
    // Another reload without a history leaves the first client unopened.
    await page.evaluate(() => localStorage.removeItem('staywright.history'));
    await page.reload();
    await seen(page, waist(page));
    await openBook(page);
    await page.locator('.client-list .open-row[aria-current="false"]').first().click();
    await becomes(page, '28 1/2');
  },
  'what could not be read': async (page) => {
    await page.evaluate(() => localStorage.setItem('staywright.client.torn', 'torn'));
    await page.reload();
    await seen(page, page.locator('.keeping'));
  },
};

/** How a walk ended. */
export interface Walked {
  /** The station at which something was told, or which failed; null where all were passed. */
  readonly station: string | null;
  /** What was told there; null where nothing was. */
  readonly told: string | null;
  /** How it failed, where nothing was told. */
  readonly failure: string | null;
}

/**
 * Walks through all stations, until something is told to be missing.
 *
 * @param isRefused whether something that the page asked for did not come: a page that is slow to come says what to do, too
 */
export async function walkEveryPart(page: Page, isRefused: () => boolean): Promise<Walked> {
  for (const end = Date.now() + MOST_MS; Date.now() < end; await page.waitForTimeout(100)) {
    if (await waist(page).isVisible()) break;
    const told = telling(page);
    if (isRefused() && (await told.isVisible()))
      return { station: 'start', told: (await told.textContent()) ?? '', failure: null };
  }
  for (const [station, pass] of Object.entries(STATIONS)) {
    try {
      await pass(page);
    } catch (error) {
      if (error instanceof Told) return { station, told: error.message, failure: null };
      return { station, told: null, failure: String(error) };
    }
  }
  return { station: null, told: null, failure: null };
}
