// The built app in a real browser, for what is timed there.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { preview } from 'vite';
import { browserOptions } from '../support/browser/findBrowser';

/** Builds and serves the app, hands over a browser and the app's address, and clears all away after. */
export async function withServedApp(
  time: (browser: Browser, address: string) => Promise<void>,
): Promise<void> {
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
  const browser = await chromium.launch(browserOptions('to time'));
  try {
    await time(browser, String(server.resolvedUrls?.local[0]));
  } finally {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
}
