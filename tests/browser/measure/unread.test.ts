// What was typed on Measure and cannot be read, as the other steps tell of it, and a unit typed into a field.

import { describe, expect, it } from 'vitest';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

describe('a measurement that cannot be read', () => {
  it('is told on every other step, with the number that is gone on with and the way back', async () => {
    const visitor = await visit('measure');
    const { page } = visitor;
    const bust = page.getByRole('textbox', { name: /^Bust girth/ });
    await bust.fill('banana');
    await page.keyboard.press('Tab');
    const said = page.getByText('Bust girth on Measure cannot be read; the draft goes on with 37 in.');
    for (const step of ['Draft', 'Fit', 'Cut']) {
      await page.getByRole('link', { name: step, exact: true }).click();
      await said.waitFor();
    }
    await said.getByRole('link', { name: 'Measure', exact: true }).click();
    await expect.poll(() => bust.evaluate((input) => input === document.activeElement)).toBe(true);
    expect(await bust.inputValue()).toBe('banana');
    await expect.poll(() => said.count()).toBe(0);
    await bust.fill('39 3/4');
    await page.keyboard.press('Tab');
    await page.getByRole('link', { name: 'Draft', exact: true }).click();
    await page.locator('.draft-canvas').waitFor();
    await expect.poll(() => said.count()).toBe(0);
    expectQuiet(visitor);
  });
});

describe('a unit typed into a field', () => {
  it.each([1440, 390])('takes the place of the field’s own and is not cut off, %s wide', async (width) => {
    const { page } = await visit('measure', { viewport: { width, height: 900 } });
    const hip = page.getByRole('textbox', { name: /^Hip girth/ });
    const suffix = page.locator('.length-field', { has: page.getByLabel(/^Hip girth/) }).locator('.unit');
    const room = (): Promise<number> => hip.evaluate((input) => input.clientWidth - input.scrollWidth);
    await expect.poll(() => suffix.count()).toBe(1);
    for (const text of ['1067mm', '106.7 cm', '42 1/16 in', '42 1/16"']) {
      await hip.fill(text);
      await page.keyboard.press('Tab');
      await expect.poll(() => suffix.count()).toBe(0);
      expect(await room(), text).toBe(0);
    }
    await hip.fill('42');
    await expect.poll(() => suffix.count()).toBe(1);
  });
});
