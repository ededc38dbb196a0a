// Darts and the side panel in one under a real pointer and the keyboard: made, pulled, bent, proved and printed.

import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, openTab, withBrowser } from '../session';

const visit = withBrowser();

async function choose(page: Page, wedge: string, ends: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${wedge}( dart)?$`) }).click();
  // The radio lies unseen over its words.
  await page.getByRole('radio', { name: ends, exact: true }).check({ force: true });
}

/** Pulls a handle by so many px and leaves the pointer down. */
async function pull(page: Page, handle: Locator, dx: number, dy: number): Promise<void> {
  const box = await handle.locator('.hit-area').boundingBox();
  if (!box) throw new Error('no handle');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx, y + dy, { steps: 6 });
}

describe('a dart on the table', () => {
  it('is made of a wedge, and its point pulled up and down with its number beside it', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    const panels = page.locator('.draft-canvas .block-front .panel');
    await expect.poll(() => panels.count()).toBe(3);
    await choose(page, 'Side-front', 'Closed');
    await expect.poll(() => panels.count()).toBe(2);
    await expect.poll(() => page.locator('.draft-canvas .block-front .drill').count()).toBe(2);
    const lower = page.getByRole('slider', { name: 'Side-front dart, lower point' });
    expect(await lower.getAttribute('aria-valuetext')).toBe('3 in below the waist');
    await pull(page, lower, 0, -30);
    await expect
      .poll(() => page.locator('.value-tooltip').textContent())
      .toMatch(/^\d.* in below the waist◂ .+ in of Front 2 · .+ in of Front 2 ▸$/);
    await page.mouse.up();
    const pulled = await lower.getAttribute('aria-valuetext');
    expect(pulled).toMatch(/^[12].* in below the waist$/);
    const typed = page.getByRole('textbox', { name: 'Lower point below the waist' });
    await typed.fill('3 1/8');
    await typed.press('Enter');
    await expect.poll(() => lower.getAttribute('aria-valuetext')).toBe('3⅛ in below the waist');
    await lower.focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => lower.getAttribute('aria-valuetext')).toBe('3¹⁄₁₆ in below the waist');
    for (let i = 0; i < 3; i += 1) await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => lower.getAttribute('aria-valuetext')).toBe('3 in below the waist');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => panels.count()).toBe(3);
    expectQuiet(visitor);
  });

  it('is drawn to a level line when a point is pulled near it', async () => {
    const { page } = await visit('draft');
    await choose(page, 'Side-front', 'Closed');
    const upper = page.getByRole('slider', { name: 'Side-front dart, upper point' });
    const [at, line] = await Promise.all([
      upper.locator('.hit-area').boundingBox(),
      page.locator('.draft-canvas line.level-underBust').boundingBox(),
    ]);
    if (!at || !line) throw new Error('not drawn');
    await pull(page, upper, 0, line.y - (at.y + at.height / 2) - 3);
    await expect
      .poll(() => page.locator('.value-tooltip .number').textContent())
      .toContain('on a level line');
    await page.keyboard.press('Escape');
    await page.mouse.up();
  });

  it('stays in the book, and shows its place in the proof', async () => {
    const { page } = await visit('draft');
    await choose(page, 'Side-front', 'Open at hem');
    await page.locator('.history').getByText('open at the hem').first().waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Side-front dart' }).waitFor();
    await page.getByRole('link', { name: 'Fit', exact: true }).click();
    // They come later and move the rows below; then another row would lie under the pointer and show its own place.
    await page.locator('.fittings').waitFor();
    await page.getByRole('button', { name: 'Dart in Front 2', exact: true }).click();
    await expect.poll(() => page.locator('.edge.pointed-out').count()).toBe(2);
  });
});

describe('an axis', () => {
  it('is bent at one level by its handle there', async () => {
    const { page } = await visit('draft');
    await page.getByRole('button', { name: 'Side-front', exact: true }).click();
    await page.getByRole('button', { name: 'Bend the axis' }).click();
    const waist = page.getByRole('slider', {
      name: 'Side-front wedge: axis from the centre line at the waist',
    });
    const field = (level: string) =>
      page.getByRole('textbox', { name: `Axis from the centre line at the ${level}` });
    const before = await Promise.all(['under-bust', 'waist'].map((level) => field(level).inputValue()));
    await pull(page, waist, 25, 0);
    await page.mouse.up();
    await expect.poll(() => field('waist').inputValue()).not.toBe(before[1]);
    expect(await field('under-bust').inputValue()).toBe(before[0]);
    await page.getByRole('button', { name: 'Straighten the axis' }).click();
    await expect.poll(() => field('waist').inputValue()).toBe(before[1]);
  });
});

describe('a side panel in one', () => {
  it('is drawn on both blocks, tied, and cut as one piece', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    await openTab(page, 'Garment');
    await page.getByRole('checkbox', { name: 'Side panel cut in one' }).check();
    await page.getByText('no side seam', { exact: true }).waitFor();
    await expect.poll(() => page.locator('.draft-canvas [data-piece="side"]').count()).toBe(2);
    await expect.poll(() => page.locator('.draft-canvas .side-line').count()).toBe(2);
    await page.getByRole('link', { name: 'Fit', exact: true }).click();
    await expect.poll(() => page.locator('.closed-panel[data-piece="side"]').count()).toBe(1);
    await page.getByRole('button', { name: 'Side panel + Back 2', exact: true }).waitFor();
    expectQuiet(visitor);
  });
});
