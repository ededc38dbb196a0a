// What was done stays done: undo across a reload, a change left half way, and two tabs over one book.

import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { expectQuiet, withBrowser } from './session';

const visit = withBrowser();

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth' });

async function type(page: Page, text: string): Promise<void> {
  await waist(page).fill(text);
  await waist(page).press('Enter');
}

describe('the book in the browser', () => {
  it('undoes and redoes across a reload, and says what', async () => {
    const visitor = await visit('measure');
    const { page } = visitor;
    await type(page, '28');
    await type(page, '27');
    await page.getByRole('button', { name: 'Undo: waist girth' }).click();
    await page.reload();
    expect(await waist(page).inputValue()).toBe('28');
    await page.getByRole('button', { name: 'Redo: waist girth' }).click();
    await expect.poll(() => waist(page).inputValue()).toBe('27');
    await page.getByRole('button', { name: 'Undo: waist girth' }).click();
    await page.getByRole('button', { name: 'Undo: waist girth' }).click();
    await expect.poll(() => waist(page).inputValue()).toBe('29 1/2');
    expectQuiet(visitor);
  });

  it('keeps a number half typed when the page goes away', async () => {
    const { page } = await visit('measure');
    await waist(page).fill('28 1/4');
    await page.reload();
    expect(await waist(page).inputValue()).toBe('28 1/4');
  });

  it('never lets one tab write over another’s book unasked', async () => {
    const { page: first, context } = await visit('measure');
    const second = await context.newPage();
    await second.goto(`${inject('appUrl')}#measure`);
    await type(first, '28');
    const choice = second.getByRole('button', { name: 'Go on with the other’s' });
    await choice.waitFor();
    await type(second, '31');
    await second.waitForTimeout(500);
    await first.reload();
    expect(await waist(first).inputValue()).toBe('28');
    await choice.click();
    await expect.poll(() => waist(second).inputValue()).toBe('28');
    // what the second tab had is put aside and can be had
    await second.getByRole('button', { name: 'Download it' }).waitFor();
  });
});
