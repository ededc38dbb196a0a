// How long a maker waits for the pattern in a real browser, from the press of the button to the file.

import { performance } from 'node:perf_hooks';
import type { Browser, Page } from 'playwright-core';
import { withServedApp } from './servedApp';

const RUNS = 7;

export async function benchPrinting(say: (line: string) => unknown): Promise<void> {
  await withServedApp(async (browser, served) => {
    const address = `${served}#cut`;
    const first: number[] = [];
    for (let i = 0; i < 3; i += 1) first.push(await firstPrint(browser, address));
    say(`default style on A4 in the browser, first print of a fresh page: ${middle(first)} ms`);
    const page = await cutStep(browser, address);
    const later: number[] = [];
    for (let i = 0; i < RUNS; i += 1) later.push(await timed(page));
    say(`the same again: ${middle(later)} ms, from the press of the button to the file`);
  });
}

async function cutStep(browser: Browser, address: string): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await page.goto(address);
  await page.getByRole('combobox', { name: 'Sheets', exact: true }).selectOption('A4');
  return page;
}

async function firstPrint(browser: Browser, address: string): Promise<number> {
  const page = await cutStep(browser, address);
  const time = await timed(page);
  await page.context().close();
  return time;
}

async function timed(page: Page): Promise<number> {
  const file = page.waitForEvent('download');
  const before = performance.now();
  await page.getByRole('button', { name: 'Download the PDF' }).click();
  await (await file).path();
  return performance.now() - before;
}

const middle = (times: number[]): string =>
  (times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0).toFixed(0);
