// The whole job in Chromium: a number of the tape, each step, the sheets, and what works in a worker of its own.

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { readPattern } from '../../paper/readPattern';
import { downloadBytes } from '../../support/browser/downloadBytes';

/** From a number of the tape to the sheets. */
export async function doWholeJob(page: Page): Promise<void> {
  const waist = page.getByRole('textbox', { name: 'Waist girth' });
  await waist.fill('28');
  await waist.press('Enter');
  await page.getByRole('link', { name: 'Draft', exact: true }).click();
  await expect.poll(() => page.locator('[data-sewn="waist"]').textContent()).toBe('26');
  await page.getByRole('link', { name: 'Fit', exact: true }).click();
  await page.locator('.closed-up').waitFor();
  await page.getByRole('link', { name: 'Cut', exact: true }).click();
  // Its letters have to be shaped.
  const title = 'ליאת 2.5 Łęcka';
  await page.getByRole('button', { name: /client book$/ }).click();
  const name = page.getByRole('textbox', { name: /^Name of the draft/ });
  await name.fill(title);
  await name.press('Enter');
  await page.keyboard.press('Escape');
  const asked = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download the PDF' }).click();
  const bytes = await downloadBytes(await asked);
  expect(bytes.length).toBeGreaterThan(20_000);
  const printed = await readPattern(bytes);
  expect(printed.title).toContain(title);
  const said = printed.pages[0]?.texts.map(({ text }) => text).join(' ');
  expect(said).not.toMatch(/could not be loaded|empty boxes|\?/);
}

/** The number is there again. */
export async function keepsNumber(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Measure', exact: true }).click();
  await page.reload();
  await expect.poll(() => page.getByRole('textbox', { name: 'Waist girth' }).inputValue()).toBe('28');
}

/** The garment sewn, the panels laid on cloth and a range of sizes printed, each in a worker of its own. */
export async function startOtherWorkers(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'Lay plan' }).check({ force: true });
  await page.getByRole('button', { name: 'Lay the panels' }).click();
  await page.locator('.lay-plan svg').waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.locator('.sizes-card summary').click();
  await page.getByRole('button', { name: 'Open sizes and casts' }).click();
  const asked = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Print \d+ sizes/ }).click();
  const [first] = (await readPattern(await downloadBytes(await asked))).pages;
  expect(first?.texts.length).toBeGreaterThan(5);
  await page.keyboard.press('Escape');
  await page.getByRole('link', { name: 'Fit', exact: true }).click();
  await page.getByRole('radio', { name: 'As worn' }).check({ force: true });
  await page.locator('section.worn canvas, section.worn img').waitFor({ timeout: 60_000 });
}
