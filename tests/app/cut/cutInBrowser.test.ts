// The Cut step in a real browser: prints made beside the page, and the picture.

import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, withBrowser } from '../../browser/session';
import { readPattern } from '../../paper/readPattern';
import { downloadBytes } from '../../support/browser/downloadBytes';

const visit = withBrowser(undefined, 'to work');

async function downloaded(page: Page, button: string): Promise<{ name: string; bytes: Uint8Array }> {
  const asked = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const file = await asked;
  return { name: file.suggestedFilename(), bytes: await downloadBytes(file) };
}

/** Names of the fonts and the shaper that a page asks for from now on. */
function fontsAskedFor(context: BrowserContext): string[] {
  const fonts: string[] = [];
  context.on('request', (request) => {
    // What is kept for working offline is fetched beside the page, whoever the client is.
    if (request.serviceWorker() === null && /\.(ttf|woff2?|wasm)$/.test(request.url()))
      fonts.push(request.url().replace(/^.*\//, ''));
  });
  return fonts;
}

describe('the Cut step in a browser', () => {
  it('fetches the face, prints in a worker, on sheets, on one page and for a projector, and paints a picture', async () => {
    const visitor = await visit('cut');
    const { page, context } = visitor;
    const workers: string[] = [];
    page.on('worker', (worker) => workers.push(worker.url()));
    const fonts = fontsAskedFor(context);
    const sheets = await downloaded(page, 'Download the PDF');
    expect((await readPattern(sheets.bytes)).pages.length).toBeGreaterThan(3);
    expect(fonts.map((each) => each.replace(/-[^-]*\.ttf$/, '')).sort()).toEqual([
      'DejaVuSansCondensed',
      'DejaVuSansCondensed-Bold',
    ]);
    await page.getByRole('radio', { name: 'One page' }).check();
    const roll = await downloaded(page, 'Download the page');
    expect((await readPattern(roll.bytes)).pages).toHaveLength(1);
    await page.getByRole('radio', { name: 'Projector' }).check();
    const projected = await downloaded(page, 'Download for the projector');
    expect((await readPattern(projected.bytes)).pages).toHaveLength(1);
    expect(workers.filter((url) => url.includes('printWorker'))).toHaveLength(3);
    // Each medium has a worker of its own that lays the panels out.
    expect(workers.some((url) => url.includes('planWorker'))).toBe(true);

    await page.getByText('Drawings and pictures').click();
    const { name, bytes } = await downloaded(page, 'Download the PNG picture');
    expect(name).toBe('Wren-Abernathy-Winter-ball-bodice.png');
    const seen = await page.evaluate(async (base64) => {
      const data = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([data], { type: 'image/png' }));
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [bitmap.width, bitmap.height];
      const brush = canvas.getContext('2d') as CanvasRenderingContext2D;
      brush.drawImage(bitmap, 0, 0);
      const { data: dots } = brush.getImageData(0, 0, bitmap.width, bitmap.height);
      let dark = 0;
      for (let i = 0; i < dots.length; i += 4) if ((dots[i] ?? 255) < 128) dark += 1;
      return {
        long: Math.max(bitmap.width, bitmap.height),
        dark: dark / (dots.length / 4),
        corner: dots[0],
      };
    }, Buffer.from(bytes).toString('base64'));
    expect(seen.long).toBe(2600);
    expect(seen.corner).toBe(255);
    expect(seen.dark).toBeGreaterThan(0.002);
    expect(seen.dark).toBeLessThan(0.1);
    expectQuiet(visitor);
  });

  it('cancels a print, prints again, shapes the letters of a name, and says before which of them nothing draws', async () => {
    const visitor = await visit('cut');
    const { page, context } = visitor;
    const fonts = fontsAskedFor(context);
    // a print of many small sheets takes long enough to be stopped
    await page.getByRole('combobox', { name: 'Sheets', exact: true }).selectOption('A4');
    await page.route('**/printWorker*', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 500));
      await route.continue();
    });
    const files: string[] = [];
    page.on('download', (file) => files.push(file.suggestedFilename()));
    await page.getByRole('button', { name: 'Download the PDF' }).click();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('button', { name: 'Download the PDF' }).waitFor();
    await page.waitForTimeout(1500);
    expect(files).toEqual([]);
    await downloaded(page, 'Download the PDF');
    expect(files).toHaveLength(1);
    await page.unroute('**/printWorker*');
    const call = async (text: string): Promise<void> => {
      await page.getByRole('button', { name: /client book$/ }).click();
      const name = page.getByRole('textbox', { name: /^Name of the draft/ });
      await name.fill(text);
      await name.press('Enter');
      await page.keyboard.press('Escape');
    };
    // As on a device that has no font for it.
    await page.evaluate(() => Reflect.deleteProperty(globalThis, 'OffscreenCanvas'));
    await call('ليلى 王芳');
    await page.getByText('This device has no font for 王 芳').waitFor();
    const { bytes } = await downloaded(page, 'Download the PDF');
    expect(fonts.some((each) => each.endsWith('.wasm'))).toBe(true);
    const [first] = (await readPattern(bytes)).pages;
    const said = first?.texts.map(({ text }) => text).join(' ') ?? '';
    expect(said).toContain('stand as empty boxes');
    expect(said).not.toMatch(/could not be loaded|\?/);
    await call('ليلى');
    await expect.poll(() => page.getByText('This device has no font for').count()).toBe(0);
    expectQuiet(visitor);
  });
});
