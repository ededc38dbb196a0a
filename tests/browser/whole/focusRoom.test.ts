// On Measure the ring round what has the focus cuts through no sentence, and no sentence runs into a button.

import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

describe('the ring of the focus on Measure', () => {
  it.each([
    { width: 1440, hasTouch: false },
    { width: 390, hasTouch: true },
  ])('has room, $width wide, touched $hasTouch', async ({ width, hasTouch }) => {
    const { page } = await visit('measure', { viewport: { width, height: 900 }, hasTouch });
    for (const [name, text] of [
      [/^Bust girth/, '39 1/2'],
      [/^Waist girth/, '43'],
      [/^Hip girth/, '400'],
      [/^Neck to waist, front/, ''],
    ] as const) {
      await page.getByRole('textbox', { name }).fill(text);
      await page.keyboard.press('Tab');
    }
    await page
      .getByText(/^unusual; /)
      .first()
      .waitFor();
    await page.getByText(/^Hip girth must be between/).waitFor();
    await page
      .getByText(/would be usual$/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'More for waist girth' }).click();
    await page.getByRole('menuitem', { name: 'Second reading' }).click();
    const cut = await page.locator('.tape-form').evaluate((form) => {
      const lines = [...form.querySelectorAll('.tape-row :is(.said, .row-remark)')].flatMap((p) => {
        const range = document.createRange();
        range.selectNodeContents(p);
        return [...range.getClientRects()].map((rect) => ({ rect, text: p.textContent ?? '' }));
      });
      return [...form.querySelectorAll<HTMLElement>('.tape-row :is(input, .row-more)')].flatMap((control) => {
        control.focus({ preventScroll: true });
        const { outlineOffset, outlineWidth } = getComputedStyle(control);
        const ring = Number.parseFloat(outlineOffset) + Number.parseFloat(outlineWidth);
        const own = control.getBoundingClientRect();
        return lines
          .filter(
            ({ rect }) =>
              rect.right > own.left - ring &&
              rect.left < own.right + ring &&
              rect.bottom > own.top - ring + 0.5 &&
              rect.top < own.bottom + ring - 0.5,
          )
          .map(({ text }) => `${control.getAttribute('aria-label') ?? control.id}: ${text}`);
      });
    });
    expect(cut).toEqual([]);
  });
});
