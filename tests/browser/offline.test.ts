// The network off after the first visit, and a later build that comes without taking anything away.

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { downloadBytes } from '../support/downloadBytes';
import { expectQuiet, withBrowser } from './session';

const visit = withBrowser();

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/** A copy of the built app that can be built anew under a visitor. */
let folder: string;
let server: Server;
let address: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'staywright-offline-'));
  cpSync(inject('appFolder'), folder, { recursive: true });
  server = createServer((request, answer) => {
    const path = normalize(new URL(request.url ?? '/', 'http://host').pathname);
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    try {
      const content = readFileSync(file);
      answer.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
      answer.end(content);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});

afterAll(async () => {
  await new Promise((closed) => server.close(closed));
  rmSync(folder, { recursive: true, force: true });
});

const ready = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    // the worker takes charge of the window a moment after it is ready
    while (!navigator.serviceWorker.controller) await new Promise((go) => setTimeout(go, 50));
  });

describe('with the network off', () => {
  it('does everything after one visit', async () => {
    const visitor = await visit('measure');
    const { page, context } = visitor;
    await ready(page);
    await context.setOffline(true);
    await page.reload();
    await page.getByRole('textbox', { name: 'Waist girth' }).fill('28');
    await page.getByRole('textbox', { name: 'Waist girth' }).press('Enter');
    await page.getByRole('link', { name: 'Draft' }).click();
    await expect.poll(() => page.locator('[data-sewn="waist"]').textContent()).toBe('26');
    await page.getByRole('link', { name: 'Fit' }).click();
    await page.locator('.closed-up').waitFor();
    await page.getByRole('link', { name: 'Cut' }).click();
    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download the PDF' }).click();
    const bytes = await downloadBytes(await asked);
    expect(new TextDecoder().decode(bytes.subarray(0, 5))).toBe('%PDF-');
    expectQuiet(visitor);
  });

  it('can be put on the home screen', async () => {
    const { page } = await visit('measure');
    const manifest = JSON.parse(readFileSync(join(inject('appFolder'), 'manifest.webmanifest'), 'utf8'));
    expect(await page.locator('link[rel="manifest"]').getAttribute('href')).toBe('./manifest.webmanifest');
    const session = await page.context().newCDPSession(page);
    const { errors } = await session.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    expect(manifest.icons.map(({ src }: { src: string }) => src)).toContain('./staywright.svg');
  });
});

describe('a later build', () => {
  it('waits until it is asked in, and takes nothing away', async () => {
    const { page } = await visit('measure');
    await page.goto(`${address}#measure`);
    await ready(page);
    const worker = join(folder, 'sw.js');
    writeFileSync(worker, readFileSync(worker, 'utf8').replace(/"version":"\w+"/, '"version":"later"'));
    const index = join(folder, 'index.html');
    writeFileSync(index, readFileSync(index, 'utf8').replace('<title>', '<title>Later '));
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const use = page.getByRole('button', { name: 'Use it now' });
    await use.waitFor();
    expect(await page.title()).toBe('Staywright');
    await page.getByRole('textbox', { name: 'Waist girth' }).fill('28 1/4');
    await use.click();
    await expect.poll(() => page.title().catch(() => '')).toBe('Later Staywright');
    expect(await page.getByRole('textbox', { name: 'Waist girth' }).inputValue()).toBe('28 1/4');
    expect(await page.evaluate(() => caches.keys())).toEqual(['staywright-later']);
  });
});
