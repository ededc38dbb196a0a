// Random work on the built app for some minutes, told and not judged: `npm run bench -- monkey`, 20 minutes unless MINUTES is set.

import { performance } from 'node:perf_hooks';
import { isDeepStrictEqual } from 'node:util';
import type { Page } from 'playwright-core';
import { bookOf, pressAll, runMonkey } from '../support/browser/monkey';
import { withServedApp } from './servedApp';

/** Things done before what was done is undone. */
const ACTIONS = 150;

/** A busy machine is slow, not wrong. */
const PATIENCE_MS = 600_000;

export async function benchMonkey(say: (line: string) => void): Promise<void> {
  const until = performance.now() + Number(process.env.MINUTES ?? 20) * 60_000;
  let [done, blank, lost, steps, seed] = [0, 0, 0, 0, 1];
  await withServedApp(async (browser, address) => {
    for (; performance.now() < until; seed += 1) {
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
      context.setDefaultTimeout(PATIENCE_MS);
      const page = await context.newPage();
      // The runner writes calls of this into the functions that are handed to the page.
      await page.addInitScript('globalThis.__name = (named) => named;');
      page.on('pageerror', (error) => say(`seed ${seed}: ${error.message}`));
      page.on('console', (message) => {
        if (message.type() === 'error') say(`seed ${seed}: ${message.text()}`);
      });
      await page.goto(`${address}#draft`);
      await page.locator('.draft-canvas').waitFor();
      const began = await bookOf(page);
      await changeFirst(page);
      await runMonkey(page, seed, ACTIONS, async (what) => {
        done += 1;
        const isDrawn =
          (await page.locator('header.shell').count()) === 1 &&
          (await page.locator('[role="alert"].empty').count()) === 0;
        if (!isDrawn) say(`seed ${seed}: not drawn after ${what}`);
        blank += isDrawn ? 0 : 1;
      });
      const ended = await bookOf(page);
      const undone = await pressAll(page, 'Undo');
      const back = differences(began, await bookOf(page));
      await pressAll(page, 'Redo', undone);
      const again = differences(ended, await bookOf(page));
      if (back.length > 0) say(`seed ${seed}: undo does not lead back to the start: ${back.join(', ')}`);
      if (again.length > 0) say(`seed ${seed}: redo does not lead to the end again: ${again.join(', ')}`);
      lost += back.length + again.length === 0 ? 0 : 1;
      steps += undone;
      await context.close();
    }
  });
  say(
    `${done} things done by ${seed - 1} seeds, ${steps} steps undone and done again: ${blank} not drawn, ${lost} lost`,
  );
}

/** Changes something and waits until it is kept: a book that nothing was done to is another one at each start. */
async function changeFirst(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.location.hash = 'measure';
  });
  const waist = page.getByRole('textbox', { name: /^Waist girth/ });
  await waist.fill('28 1/4');
  await waist.press('Enter');
  await page.waitForFunction(() => localStorage.getItem('staywright.open') !== null);
}

/** Where two books differ, as paths. */
function differences(one: unknown, other: unknown, at = 'book'): string[] {
  if (isDeepStrictEqual(one, other)) return [];
  if (!isObject(one) || !isObject(other)) return [at];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].flatMap((key) => differences(one[key], other[key], `${at}.${key}`));
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
