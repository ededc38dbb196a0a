// A handle moved by real keys: pressed in a row they are one step, which Undo and a reload know as one.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

const button = (page: Page, word: 'Undo' | 'Redo') => page.locator('.history button', { hasText: word });
const press = async (page: Page, key: string, times: number): Promise<void> => {
  for (let i = 0; i < times; i += 1) await page.keyboard.press(key);
};

describe('arrow keys on a handle', () => {
  it('pressed in a row are one step, before a reload and after', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    // by its id: a wedge that is moved off the bust point is called by another name
    const axis = page.locator('[data-handle="axis:front-bust"]');
    const number = () => axis.getAttribute('aria-valuetext');
    await axis.focus();
    const began = await number();
    await press(page, 'ArrowRight', 10);
    // ten sixteenths from 3⅝
    await expect.poll(number).toBe('4¼ in');
    const said = page.locator('.history [role="status"]');
    await expect
      .poll(() => said.textContent())
      .toMatch(/^bust wedge: distance from the centre line 4¼ in; Front 1 /);
    await page.keyboard.press('Control+z');
    await expect.poll(number).toBe(began);
    expect(await button(page, 'Undo').isDisabled()).toBe(true);
    await button(page, 'Redo').click();
    await expect.poll(number).toBe('4¼ in');

    await page.reload();
    await expect.poll(number).toBe('4¼ in');
    await button(page, 'Undo').click();
    await expect.poll(number).toBe(began);
    expect(await button(page, 'Undo').isDisabled()).toBe(true);
    await page.reload();
    await expect.poll(number).toBe(began);
    await button(page, 'Redo').click();
    await expect.poll(number).toBe('4¼ in');
    expectQuiet(visitor);
  });

  it('take a wedge off the centre line, and back to it', async () => {
    const { page } = await visit('draft');
    const axis = page.locator('[data-handle="axis:front-centre"]');
    await axis.focus();
    await press(page, 'ArrowRight', 1);
    // the least that can be sewn between them, 16 mm
    await expect.poll(() => axis.getAttribute('aria-valuenow')).toBe('16');
    await press(page, 'ArrowLeft', 1);
    await expect.poll(() => axis.getAttribute('aria-valuenow')).toBe('0');
  });

  it('keep what was pressed when the page is left in the midst of it', async () => {
    const { page } = await visit('draft');
    const hem = page.locator('[data-handle="edge:hem"]');
    await hem.focus();
    await press(page, 'ArrowDown', 3);
    await page.keyboard.down('ArrowDown');
    await page.reload();
    // four sixteenths from 4 in
    await expect.poll(() => hem.getAttribute('aria-valuetext')).toBe('4¼ in');
  });

  it('begin a new step when the handle was left between, or something was undone', async () => {
    const { page } = await visit('draft');
    const hem = page.locator('[data-handle="edge:hem"]');
    const number = () => hem.getAttribute('aria-valuetext');
    await hem.focus();
    await press(page, 'ArrowDown', 2);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+Tab');
    await press(page, 'ArrowDown', 2);
    await expect.poll(number).toBe('4¼ in');
    await page.keyboard.press('Control+z');
    await expect.poll(number).toBe('4⅛ in');
    await press(page, 'ArrowUp', 3);
    await expect.poll(number).toBe('3¹⁵⁄₁₆ in');
    await page.keyboard.press('Control+z');
    await expect.poll(number).toBe('4⅛ in');
    await page.keyboard.press('Control+z');
    await expect.poll(number).toBe('4 in');
    expect(await button(page, 'Undo').isDisabled()).toBe(true);
  });

  it.each([
    ['edge:top', 'ArrowUp'],
    ['node:hem:underarm', 'ArrowDown'],
    ['leg:front-bust:waist:outer', 'ArrowRight'],
    ['axis:back-side', 'ArrowLeft'],
    // a wedge this near the centre line stays on it
    ['axis:front-centre', 'ArrowRight'],
  ])('tell the number that the table shows: %s', async (id, key) => {
    const { page } = await visit('draft');
    const handle = page.locator(`[data-handle="${id}"]`);
    await handle.focus();
    await press(page, key, 2);
    const said = page.locator('.history [role="status"]');
    await expect.poll(() => said.textContent()).not.toBe('');
    expect(await said.textContent()).toContain(` ${await handle.getAttribute('aria-valuetext')}`);
  });
});
