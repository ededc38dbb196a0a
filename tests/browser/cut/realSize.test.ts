// The card that measures the screen is seen whole where it is held to, and the button that ends it never leaves the window.

import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

/** ISO/IEC 7810 ID-1, mm. */
const [LONG, SHORT] = [85.6, 53.98];

describe('measuring the screen', () => {
  it.each([
    { width: 390, height: 844, upright: true, pxPerMm: 6 },
    { width: 720, height: 450, upright: false, pxPerMm: 7.5 },
    { width: 1440, height: 900, upright: false, pxPerMm: 4 },
  ])('has room in a window of $width × $height', async ({ width, height, upright, pxPerMm }) => {
    const { page } = await visit('draft', { viewport: { width, height } });
    const more = page.getByRole('button', { name: 'More tools' });
    await page.locator('.table-tools').waitFor();
    if (await more.isVisible()) await more.click();
    await page.getByRole('button', { name: 'Real size' }).click();
    const slider = page.getByRole('slider', { name: 'Size' });
    const card = page.locator('.card-outline');
    const box = async () => {
      const found = await card.evaluate((rect) => {
        const own = rect.getBoundingClientRect();
        return { x: own.left, y: own.top, width: own.width, height: own.height };
      });
      return found;
    };
    await slider.fill('3');
    const small = await box();
    await slider.fill(String(pxPerMm));
    const large = await box();
    expect(large.x - small.x).toBeCloseTo(pxPerMm - 3, 0);
    expect(large.y - small.y).toBeCloseTo(pxPerMm - 3, 0);
    expect(large.width).toBeCloseTo((upright ? SHORT : LONG) * pxPerMm, 0);
    expect(large.height).toBeCloseTo((upright ? LONG : SHORT) * pxPerMm, 0);
    const frame = await page.locator('.measure-screen').boundingBox();
    expect(large.x + large.width).toBeLessThan((frame?.x ?? 0) + (frame?.width ?? 0));
    for (const size of ['3', '10']) {
      await slider.fill(size);
      const button = await page.getByRole('button', { name: 'It fits: show real size' }).boundingBox();
      expect((button?.y ?? 0) + (button?.height ?? Number.NaN)).toBeLessThanOrEqual(height);
      expect((button?.x ?? 0) + (button?.width ?? Number.NaN)).toBeLessThanOrEqual(width);
    }
  });
});
