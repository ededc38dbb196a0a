// A style outlives its client: kept, found after a reload, worn by another, and taken by the headless drafter.

import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { runDraft } from '../../cli/runDraft';
import { expectQuiet, layStyle, openTab, withBrowser } from '../session';

const visit = withBrowser();

async function keepStyle(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Style book' }).click();
  await page.getByRole('textbox', { name: 'Name of the style', exact: true }).fill(name);
  await page.getByRole('button', { name: 'Keep the style' }).click();
  await page.getByText(`${name} is kept`).waitFor();
  await page.getByRole('button', { name: 'Close' }).click();
}

/** The style book opens with them, and follows what another tab keeps. */
async function expectStyles(page: Page, names: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: /^Style book: / }).click();
  await expect
    .poll(() => page.locator('.style-picture .title').allTextContents())
    .toEqual(expect.arrayContaining([...names]));
  await page.getByRole('button', { name: 'Close' }).click();
}

describe('a style of the maker’s own', () => {
  it('is kept, worn by the next client after a reload, and written out for the headless drafter', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    await openTab(page, 'Garment');
    await page.getByRole('textbox', { name: 'Hem', exact: true }).fill('5 1/4');
    await page.getByRole('textbox', { name: 'Hem', exact: true }).press('Enter');
    await page.getByRole('button', { name: 'Style book' }).click();
    await page.getByRole('textbox', { name: 'Name of the style' }).fill('Harbour');
    await page.getByRole('button', { name: 'Keep the style' }).click();
    await page.getByText('Harbour is kept').waitFor();

    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Write out Harbour' }).click();
    const file = await asked;
    expect(file.suggestedFilename()).toBe('Harbour-style.json');
    const [style, out] = [
      join(mkdtempSync(join(tmpdir(), 'style-')), 'Harbour-style.json'),
      mkdtempSync(join(tmpdir(), 'out-')),
    ];
    await file.saveAs(style);
    expect(JSON.parse(readFileSync(style, 'utf8')).hemBelow).toBeCloseTo(5.25 * 25.4, 9);
    const ran = await runDraft(['--style', style, '--out', out]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(readFileSync(join(out, 'sheet.html'), 'utf8')).toContain('Harbour');

    await page.getByRole('button', { name: 'Close' }).click();
    // what is kept a moment later is kept at once when the page is left
    await page.reload();
    await page.getByRole('button', { name: /client book$/ }).click();
    await page.getByRole('button', { name: 'Copy Wren Abernathy' }).click();
    await page.getByRole('button', { name: 'New draft' }).click();
    await page.getByRole('button', { name: 'Close' }).click();
    await openTab(page, 'Garment');
    await expect.poll(() => page.getByRole('textbox', { name: 'Hem', exact: true }).inputValue()).toBe('4');
    await layStyle(page, 'Harbour');
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Hem', exact: true }).inputValue())
      .toBe('5 1/4');
    expectQuiet(visitor);
  });

  it('is not lost to another tab that keeps one of its own', async () => {
    const { page: first, context } = await visit('draft');
    const second = await context.newPage();
    await second.goto(`${inject('appUrl')}#draft`);
    await second.getByRole('button', { name: 'Style book' }).waitFor();
    await keepStyle(first, 'Harbour');
    await keepStyle(second, 'Lantern');
    for (const page of [first, second]) await expectStyles(page, ['Harbour', 'Lantern']);
    await first.reload();
    await expectStyles(first, ['Harbour', 'Lantern']);
  }, 120_000);
});
