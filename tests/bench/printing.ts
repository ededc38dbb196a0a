// How long a maker waits for the pattern in a real browser, from the press of the button to the file.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { type Browser, chromium, type Page } from 'playwright-core';
import { preview } from 'vite';
import { browserOptions } from '../support/findBrowser';

const RUNS = 7;

export async function benchPrinting(say: (line: string) => unknown): Promise<void> {
  const outDir = mkdtempSync(join(tmpdir(), 'staywright-bench-'));
  execFileSync(process.execPath, [
    'node_modules/vite/bin/vite.js',
    ...['build', '--outDir', outDir, '--emptyOutDir', '--logLevel', 'error'],
  ]);
  const server = await preview({
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0 },
    logLevel: 'error',
  });
  const browser = await chromium.launch(browserOptions());
  try {
    const address = `${server.resolvedUrls?.local[0]}#cut`;
    const first: number[] = [];
    for (let i = 0; i < 3; i += 1) first.push(await firstPrint(browser, address));
    say(`default style on A4 in the browser, first print of a fresh page: ${middle(first)} ms`);
    const page = await cutStep(browser, address);
    const later: number[] = [];
    for (let i = 0; i < RUNS; i += 1) later.push(await timed(page));
    say(`the same again: ${middle(later)} ms, from the press of the button to the file`);
  } finally {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
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
