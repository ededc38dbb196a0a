// What a release gives away: a folder on a web space under a path of its own, and one file that opens by a double click.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { licencesOf } from '../../../src/release/licences';
import { makeRelease, RELEASED } from '../../../src/release/makeRelease';
import { readPattern } from '../../paper/readPattern';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { FIREFOX } from '../engines/firefox';
import { inEngines } from '../engines/inEngines';
import { expectSameSheets, expectSquares } from '../engines/sameSheets';
import { type Walked, walkMainPath, walkShortPath } from '../engines/walk';
import { WEBKIT } from '../engines/webkit';
import { expectQuiet, withBrowser } from '../session';
import { doWholeJob, keepsNumber, startOtherWorkers } from './wholeJob';

const out = mkdtempSync(join(tmpdir(), 'staywright-release-'));
const PATH = '/~maker/patterns/';
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

let server: Server;
let address = '';
beforeAll(async () => {
  makeRelease(out, inject('appFolder'));
  server = createServer((request, answer) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host');
    try {
      if (!pathname.startsWith(PATH)) throw new Error('another path');
      const name = pathname.slice(PATH.length) || 'index.html';
      const content = readFileSync(join(out, RELEASED.folder, name));
      answer.writeHead(200, { 'content-type': TYPES[extname(name)] ?? 'application/octet-stream' });
      answer.end(content);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}${PATH}`;
}, 240_000);
afterAll(async () => {
  await new Promise((closed) => server.close(closed));
  rmSync(out, { recursive: true, force: true });
});

/** Read before the page is opened, and no part of it. */
const LAID_BESIDE: ReadonlySet<string> = new Set([RELEASED.howTo, RELEASED.licences]);

const file = pathToFileURL(join(out, RELEASED.file)).href;

/** For all steps in one test, on a busy machine. */
const WHOLE_JOB_MS = 180_000;

/** Files of the folder that a page without a connection does not get: what is printed or installed before is no part of it. */
async function notKept(page: Page): Promise<string[]> {
  const files = readdirSync(join(out, RELEASED.folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => relative(join(out, RELEASED.folder), join(parentPath, name)))
    .filter((name) => !/^(screenshot-|sw\.js$)/.test(name) && !LAID_BESIDE.has(name))
    // The page is kept under the name of its folder.
    .map((name) => (name === 'index.html' ? '' : name));
  expect(files.length).toBeGreaterThan(50);
  return page.evaluate(async (names) => {
    const answers = await Promise.all(
      names.map((name) =>
        fetch(`./${name}`).then(
          ({ ok }) => ok,
          () => false,
        ),
      ),
    );
    return names.filter((_, i) => !answers[i]);
  }, files);
}

describe('the folder', () => {
  const visit = withBrowser(() => address, 'to work');

  it(
    'does the whole job under a path of its own, also without a connection, and is whole for being installed',
    async () => {
      const visitor = await visit('measure', { serviceWorkers: 'allow' });
      const { page, context } = visitor;
      await page.evaluate(async () => {
        await navigator.serviceWorker.ready;
        while (!navigator.serviceWorker.controller) await new Promise((go) => setTimeout(go, 50));
      });
      await context.setOffline(true);
      await page.reload();
      await doWholeJob(page);
      // The scripts of the workers that were not started among them.
      expect(await notKept(page)).toEqual([]);
      await keepsNumber(page);
      await context.setOffline(false);
      const session = await context.newCDPSession(page);
      const { errors } = await session.send('Page.getAppManifest');
      expect(errors).toEqual([]);
      const differences = await page.evaluate(async () => {
        const { icons } = await (await fetch('./manifest.webmanifest')).json();
        const drawn = async (src: string, size: number): Promise<Uint8ClampedArray> => {
          const image = new Image();
          image.src = src;
          await image.decode();
          const canvas = Object.assign(document.createElement('canvas'), { width: size, height: size });
          const brush = canvas.getContext('2d');
          brush?.drawImage(image, 0, 0, size, size);
          return brush?.getImageData(0, 0, size, size).data ?? new Uint8ClampedArray();
        };
        const found: Record<string, number> = {};
        const pictures = [
          ...icons.filter(({ type }: { type: string }) => type === 'image/png'),
          { src: './apple-touch-icon.png', sizes: '180x180', purpose: 'maskable' },
        ];
        for (const { src, sizes, purpose } of pictures) {
          const size = Number.parseInt(sizes, 10);
          const sign = purpose === 'maskable' ? './staywright-maskable.svg' : './staywright.svg';
          const [is, should] = [await drawn(src, size), await drawn(sign, size)];
          const sum = is.reduce((all, value, i) => all + Math.abs(value - (should[i] ?? 255)), 0);
          found[src] = sum / is.length;
        }
        return found;
      });
      expect(Object.keys(differences)).toHaveLength(4);
      // Edges may be smoothed otherwise.
      for (const difference of Object.values(differences)) expect(difference).toBeLessThan(2);
      expectQuiet(visitor);
    },
    WHOLE_JOB_MS,
  );

  it('has what to do and every licence beside it', () => {
    for (const place of [out, join(out, RELEASED.folder)]) {
      const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
      expect(readFileSync(join(place, RELEASED.howTo), 'utf8')).toMatch(`Staywright ${version}\n`);
      const text = readFileSync(join(place, RELEASED.licences), 'utf8');
      for (const licence of licencesOf(process.cwd())) expect(text).toContain(licence.text);
    }
  });

  it('says what to do where its page is opened from a disk', async () => {
    const { page } = await visit('measure');
    await page.goto(pathToFileURL(join(out, RELEASED.folder, 'index.html')).href);
    await page.getByText('Open staywright.html of the same release instead').waitFor();
  });
});

describe('the one file', () => {
  const visit = withBrowser(() => file, 'to work');

  it(
    'does the whole job from a disk without one request, and has the licences and what it cannot do in it',
    async () => {
      const visitor = await visit('measure');
      const { page, context } = visitor;
      await context.setOffline(true);
      await doWholeJob(page);
      await startOtherWorkers(page);
      await keepsNumber(page);
      await page.getByRole('button', { name: 'Help' }).click();
      await page.getByText('The file cannot be installed as an app').waitFor();
      await page.getByText('jspdf: MIT').click();
      await page.getByText('James Hall').first().waitFor();
      expectQuiet(visitor);
    },
    WHOLE_JOB_MS,
  );

  it('lets nothing run but its own script', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(
      readFileSync(join(out, RELEASED.file), 'utf8'),
    )?.[1];
    expect(policy).toMatch(/script-src 'sha256-[^']+' 'wasm-unsafe-eval'; style-src 'sha256-[^']+';/);
    expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
    expect(policy).toContain("default-src 'none'");
  });

  it('says what is wanted where scripts are switched off', async () => {
    const { page } = await visit('', { javaScriptEnabled: false });
    const said = page.locator('noscript p');
    await said.waitFor();
    expect(await said.textContent()).toMatch(/JavaScript is switched off here/);
    expect(await page.getByText('Laying out the table').isVisible()).toBe(false);
  });
});

// In more engines, each driven by its own protocol, and what they print beside what Chromium does, in which all other tests are.
describe('the folder and the one file', () => {
  const visit = withBrowser();
  const walked: Walked[] = [];

  inEngines([FIREFOX, WEBKIT], {
    'from nine numbers to the sheets': async (view, downloads) => {
      walked.push(await walkMainPath(view, address, downloads));
    },
    'prints from a disk, and keeps the number': async (view, downloads) => {
      expect((await walkShortPath(view, file, downloads)).pages.length).toBeGreaterThan(3);
    },
  });

  it('prints the sheets that Chromium prints of the same book, with squares to measure', async () => {
    const localStorage = Object.entries(walked[0]?.kept ?? {}).map(([name, value]) => ({ name, value }));
    const visitor = await visit('cut', {
      storageState: { cookies: [], origins: [{ origin: new URL(inject('appUrl')).origin, localStorage }] },
    });
    const { page } = visitor;
    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download the PDF' }).click();
    const first = await readPattern(await downloadBytes(await asked));
    expectQuiet(visitor);
    expectSquares(first);
    for (const { printed } of walked) expectSameSheets(printed, first);
  });
});
