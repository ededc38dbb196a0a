// Chromium, Chrome or Edge, driven by playwright-core: the browser that all tests share.

import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { inject } from 'vitest';
import { callOf, type Engine, WINDOW } from './engine';

export const CHROMIUM: Engine = {
  name: 'Chromium',
  packages: 'chromium',
  // No browser test runs without it.
  isInstalled: () => true,
  open: async (downloads) => {
    const browser = await chromium.connect(inject('browserEndpoint'));
    const context = await browser.newContext({ viewport: WINDOW, locale: 'en-US' });
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => {
      // A picture of WebGL is read back, of which the driver tells; it is nothing that the page did.
      if (message.text().includes('GL Driver Message')) return;
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
    });
    page.on('download', (file) => void file.saveAs(join(downloads, file.suggestedFilename())));
    return {
      goTo: async (address) => void (await page.goto(address)),
      reload: async () => void (await page.reload()),
      ask: (question, about) => page.evaluate(callOf(question, about)),
      pull: async ([first, ...others]) => {
        if (!first) return;
        await page.mouse.move(first.x, first.y);
        await page.mouse.down();
        for (const { x, y } of others) await page.mouse.move(x, y);
        await page.mouse.up();
      },
      type: (text) => page.keyboard.type(text),
      press: (key) => page.keyboard.press(key),
      complaints: async () => complaints,
      close: async () => {
        await context.close();
        await browser.close();
      },
    };
  },
};
