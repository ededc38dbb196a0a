// What is needed every day is in view; on Draft also few stops of Tab, and a finger that scrolls changes nothing.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, openTab, withBrowser } from '../session';

const visit = withBrowser();

/** Controls of a part of the page that are not wholly within the window, or are scrolled out of their own part. */
const outOfView = (page: Page, selector: string): Promise<string[]> =>
  page.locator(selector).evaluateAll((controls) =>
    controls.flatMap((control) => {
      const { top, bottom, width, height } = control.getBoundingClientRect();
      const panel = control.closest('.tab-panel')?.getBoundingClientRect();
      const foot = Math.min(window.innerHeight, panel?.bottom ?? window.innerHeight);
      return width === 0 || (height > 0 && top >= 0 && bottom <= foot + 0.5)
        ? []
        : [`${control.outerHTML.slice(0, 90)} ends at ${bottom}, ${foot} is in view`];
    }),
  );

const DAILY = [
  '.tools-row :is(button, select)',
  '.draft-canvas',
  '.ledger :is(button, input)',
  '.wedge-list button',
  '.wedge-head :is(button, input)',
  '.dart-fields input',
  '.wedge-numbers table input',
  '.width-bar button',
  '.level-chips button',
  '.inspector-foot button',
].join(', ');

describe('the other steps', () => {
  it.each([
    { width: 1440, height: 900 },
    { width: 1024, height: 768 },
  ])('have in view what they are used for, $width × $height', async (viewport) => {
    const { page } = await visit('fit', { viewport });
    await page.locator('.closed-up').waitFor();
    const inView = async (selector: string): Promise<void> => {
      await page.locator(selector).first().waitFor();
      expect(await outOfView(page, selector), selector).toEqual([]);
    };
    for (const selector of ['.closed-up', '.fit-views label', '.held label', '.headline h2', '.next a'])
      await inView(selector);
    await page.getByRole('link', { name: 'Cut', exact: true }).click();
    const cut = ['.plan-drawing', '.cut-step .plan label', '.making-summary dd', '.paper-card .primary'];
    for (const selector of [...cut, '.paper-card select']) await inView(selector);
    for (const view of ['Lay plan', 'Making list']) {
      await page.getByRole('radio', { name: view }).check({ force: true });
      await inView('.paper-card .primary');
    }
    await page.getByRole('region', { name: 'Making list', exact: true }).waitFor();
    const beyond = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight);
    expect(beyond).toBeLessThanOrEqual(0);
  });
});

describe('the layout of Draft', () => {
  it.each([
    { width: 1440, height: 900, hasTouch: false },
    { width: 1024, height: 768, hasTouch: false },
    { width: 1024, height: 768, hasTouch: true },
  ])(
    'has all of every day in view, $width × $height, touched $hasTouch',
    async ({ hasTouch, ...viewport }) => {
      const visitor = await visit('draft', { viewport, hasTouch });
      const { page } = visitor;
      await page.locator('.draft-canvas').waitFor();
      expect(await outOfView(page, DAILY)).toEqual([]);
      for (const tab of ['Garment', 'Edges', 'Shoulders', 'More', 'Wedges']) {
        await openTab(page, tab);
        const beyond = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight);
        expect(beyond, tab).toBeLessThanOrEqual(0);
      }
      expectQuiet(visitor);
    },
  );

  it('is gone through in fewer than 40 stops, and its handles are one of them', async () => {
    const { page } = await visit('draft');
    await page.locator('.draft-canvas').waitFor();
    const stops: string[] = [];
    for (let i = 0; i < 60; i += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const element = document.activeElement;
        return element === document.body
          ? ''
          : (element?.getAttribute('data-handle') ?? element?.outerHTML.slice(0, 80) ?? '');
      });
      if (at === '') break;
      stops.push(at);
    }
    expect(stops.length).toBeGreaterThan(20);
    expect(stops.length).toBeLessThan(40);
    expect(stops.filter((stop) => /^(edge|node|axis|leg):/.test(stop))).toHaveLength(1);
    await page.locator('[data-handle="edge:top"]').focus();
    await page.keyboard.press('PageDown');
    const handle = await page.evaluate(() => document.activeElement?.getAttribute('data-handle'));
    expect(handle).toBe('edge:hem');
  });

  it('keeps a typed width of a panel as one step', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    await page.getByRole('button', { name: /^Front 1, .* wide at the waist$/ }).click();
    await page.getByRole('textbox', { name: 'Width of Front 1 at the waist' }).fill('3');
    await page.keyboard.press('Enter');
    const width = page.getByRole('button', { name: 'Front 1, 3 wide at the waist' });
    await width.waitFor();
    expect(await width.evaluate((button) => button === document.activeElement)).toBe(true);
    await page.getByRole('button', { name: 'Undo: width of a panel at the waist' }).click();
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    expectQuiet(visitor);
  });

  it('changes nothing under 25 swipes of a finger', async () => {
    const visitor = await visit('draft', {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const { page, context } = visitor;
    const table = await page.locator('.draft-canvas').boundingBox();
    if (!table) throw new Error('no table');
    const finger = await context.newCDPSession(page);
    for (let i = 0; i < 25; i += 1) {
      const x = table.x + 40 + ((i * 53) % (table.width - 80));
      const from = table.y + table.height * (0.35 + 0.02 * (i % 25));
      const up = i % 2 === 0 ? 1 : -1;
      await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y: from }] });
      for (let k = 1; k <= 4; k += 1)
        await finger.send('Input.dispatchTouchEvent', {
          type: 'touchMove',
          touchPoints: [{ x: x + 2 * k, y: from - 22 * k * up }],
        });
      await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    }
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    expectQuiet(visitor);
  });
});
