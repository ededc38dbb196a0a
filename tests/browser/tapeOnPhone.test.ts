// On a phone the tape is shown beneath the field that is tapped, and neither hides it nor moves what is tapped next.

import { describe, expect, it } from 'vitest';
import { withBrowser } from './session';

const visit = withBrowser();

describe('the tape beneath a field', () => {
  it('is in view with the field on a phone, and stays while a button is tapped', async () => {
    const { page } = await visit('measure', { viewport: { width: 390, height: 844 }, hasTouch: true });
    const hip = page.getByRole('textbox', { name: /^Hip girth/ });
    await hip.tap();
    const figure = page.locator('.figure-here .body-figure');
    expect(await figure.count()).toBe(1);
    await figure.scrollIntoViewIfNeeded();
    const [field, drawn] = [await hip.boundingBox(), await figure.boundingBox()];
    expect(drawn?.height).toBeLessThan(0.35 * 844);
    expect(drawn?.y).toBeGreaterThan((field?.y ?? Number.NaN) + (field?.height ?? Number.NaN));
    expect((drawn?.y ?? Number.NaN) + (drawn?.height ?? 0) - (field?.y ?? 0)).toBeLessThan(0.5 * 844);
    await page.getByRole('button', { name: 'Second reading of hip girth' }).tap();
    await page.getByRole('textbox', { name: /^Second reading of hip girth/ }).waitFor();
    await page.getByRole('textbox', { name: /^Waist girth/ }).tap();
    expect(await figure.count()).toBe(1);
    expect(await page.locator('.measurement', { has: figure }).getByText('Waist girth').count()).toBe(1);
  });

  it('is beside the form where there is room', async () => {
    const { page } = await visit('measure', { viewport: { width: 1024, height: 768 } });
    await page.getByRole('textbox', { name: /^Hip girth/ }).click();
    expect(await page.locator('.figure-here').isVisible()).toBe(false);
    expect(await page.locator('.client-card .body-figure').isVisible()).toBe(true);
  });
});
