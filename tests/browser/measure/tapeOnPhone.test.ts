// On a phone the field in hand has a card above the rows, which neither hides it nor moves what is tapped next.

import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

describe('the card of the field in hand', () => {
  it('stays in view on a phone with the field and the keys of fractions', async () => {
    const { page } = await visit('measure', PHONE);
    for (const [name, how] of [
      [/^Hip girth/, /^Round the fullest part of the seat/],
      [/^Underarm to waist/, /^From close under the arm/],
    ] as const) {
      const field = page.getByRole('textbox', { name });
      await field.tap();
      const card = page.locator('.field-in-hand');
      await card.getByText(how).waitFor();
      const box = async (selector: string) =>
        page.locator(selector).evaluate((element) => element.getBoundingClientRect().toJSON());
      // The page is scrolled once card and keys are there.
      const isBetween = async (): Promise<boolean> => {
        const [top, keys] = [await box('.field-in-hand'), await box('.fraction-keys')];
        const own = await field.evaluate((element) => element.getBoundingClientRect().toJSON());
        return top.height < 0.25 * 844 && own.top >= top.bottom && own.bottom <= keys.top;
      };
      await expect.poll(isBetween).toBe(true);
    }
  });

  it('lets a swipe over the rows scroll, and changes no number', async () => {
    const { page, context } = await visit('measure', PHONE);
    const numbers = (): Promise<string[]> =>
      page
        .locator('.tape-form input')
        .evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value));
    const before = await numbers();
    const finger = await context.newCDPSession(page);
    const touch = (type: string, x: number, y: number) =>
      finger.send('Input.dispatchTouchEvent', {
        type: type as 'touchStart',
        touchPoints: type === 'touchEnd' ? [] : [{ x, y }],
      });
    for (let i = 0; i < 25; i += 1) {
      const [x, up] = [30 + 14 * (i % 25), i % 2 === 0];
      await touch('touchStart', x, up ? 700 : 300);
      for (let k = 1; k <= 6; k += 1) await touch('touchMove', x, (up ? 700 : 300) + (up ? -60 : 60) * k);
      await touch('touchEnd', 0, 0);
    }
    expect(await numbers()).toEqual(before);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await expect.poll(() => page.locator('.fraction-keys').count()).toBe(0);
  });
});
