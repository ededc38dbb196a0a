// What was done stays done: undo across a reload, a change left half way, and two tabs over one book.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { expectQuiet, withBrowser } from '../session';

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

  it('follows another tab, and lets neither write over the other’s change of one client unasked', async () => {
    const { page: first, context } = await visit('measure');
    const second = await context.newPage();
    await second.goto(`${inject('appUrl')}#measure`);
    await type(first, '28');
    await first.reload();
    await second.reload();
    await type(first, '28 1/4');
    await expect.poll(() => waist(second).inputValue()).toBe('28 1/4');
    await second.getByText('Wren Abernathy was changed in another tab').waitFor();
    // A number half typed is a change under way.
    await waist(second).fill('31');
    await type(first, '27');
    await waist(second).press('Enter');
    await second.getByRole('button', { name: 'Keep both of Wren Abernathy' }).click();
    await expect.poll(() => waist(second).inputValue()).toBe('31');
    await expect
      .poll(() => second.getByRole('textbox', { name: 'Client' }).inputValue())
      .toBe('Wren Abernathy 2');
    await second.reload();
    expect(await waist(second).inputValue()).toBe('31');
    await second.getByRole('button', { name: /client book$/ }).click();
    await second.locator('.client-list .open-row[aria-current="false"]').click();
    await expect.poll(() => waist(second).inputValue()).toBe('27');
  });

  it.each([
    [390, 844],
    [820, 700],
  ])('leads one who types far below to what there is to choose, at %i × %i', async (width, height) => {
    const { page: first, context } = await visit('measure');
    const record = (): Promise<string | undefined> =>
      first.evaluate(
        () => Object.entries(localStorage).find(([key]) => key.startsWith('staywright.client.'))?.[1],
      );
    /** Types in the first tab, and waits until it is kept. */
    const typeThere = async (text: string): Promise<void> => {
      const before = await record();
      await type(first, text);
      await expect.poll(record).not.toBe(before);
    };
    await typeThere('28');
    const second = await context.newPage();
    await second.setViewportSize({ width, height });
    await second.goto(`${inject('appUrl')}#measure`);
    const last = second.getByRole('textbox', { name: 'Waist to lap, seated' });
    await last.scrollIntoViewIfNeeded();
    await last.fill('5 1/4');
    await typeThere('27');
    await last.press('Enter');
    const way = second.locator('.notice-above');
    await way.waitFor();
    // It covers no part of the field that is typed in.
    const [bar, field] = [await way.boundingBox(), await second.locator(':focus').boundingBox()];
    expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeLessThanOrEqual(field?.y ?? 0);
    await way.getByRole('button', { name: 'Show it' }).click();
    await way.waitFor({ state: 'detached' });
    await expect
      .poll(() => second.evaluate(() => document.activeElement?.closest('.keeping') !== null))
      .toBe(true);
  });

  it('reads a book of the first layout, and keeps it client by client', async () => {
    const kept = readFileSync('tests/document/model/fixtures/book-v5.json', 'utf8');
    const origin = new URL(inject('appUrl')).origin;
    const localStorage = [{ name: 'staywright.book', value: kept }];
    const { page } = await visit('measure', {
      storageState: { cookies: [], origins: [{ origin, localStorage }] },
    });
    await page.getByRole('textbox', { name: 'Client' }).waitFor();
    await expect
      .poll(() =>
        page.evaluate(() =>
          Object.keys(localStorage)
            .map((key) => key.split('.')[1])
            // The history lies there as well, once what keeps it was fetched.
            .filter((kind) => kind !== 'history')
            .sort(),
        ),
      )
      .toEqual(['client', 'client', 'open', 'style']);
    await page.reload();
    await page.getByRole('button', { name: /client book$/ }).click();
    await page.getByRole('button', { name: /^Orla Fenwick/ }).click();
    await expect.poll(() => page.getByRole('textbox', { name: 'Client' }).inputValue()).toBe('Orla Fenwick');
  });
});
