// A bust dart from the side seam in the built app: chosen, set, pulled, walked and kept in the history.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { foundByAxe } from '../axe';
import { expectQuiet, layStyle, withBrowser } from '../session';

const visit = withBrowser();

const SCREENS = [
  ['a desk', { viewport: { width: 1440, height: 900 } }],
  ['a phone', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
] as const;

describe.each(SCREENS)('a bust dart on %s', (screen, options) => {
  it('opens in the side seam, where its place and its point are set', { timeout: 120_000 }, async () => {
    const visitor = await visit('draft', options);
    const { page } = visitor;
    await layStyle(page, NAMED_STYLES.get('darted-bodice')?.title ?? '');
    await page.getByRole('button', { name: 'Bust dart', exact: true }).click();
    await page.getByRole('radio', { name: 'Side seam', exact: true }).check({ force: true });
    const opening = page.getByRole('slider', { name: 'Bust dart: where it opens, below the armhole' });
    const short = page.getByRole('slider', {
      name: 'Bust dart: how far its point ends short of the bust point',
    });
    await expect.poll(() => opening.getAttribute('aria-valuetext')).toBe('2 in');
    expect(await short.getAttribute('aria-valuetext')).toBe('1 in');
    expect(await page.getByText(/It opens .+ in at the side seam, .+° about the bust point/).count()).toBe(1);
    expect(await foundByAxe(page)).toEqual([]);
    const below = page.getByRole('textbox', { name: /^Where the dart opens in the side seam/ });
    await below.fill('2 1/2');
    await below.press('Enter');
    await expect.poll(() => opening.getAttribute('aria-valuetext')).toBe('2½ in');
    await opening.focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => opening.getAttribute('aria-valuetext')).toBe('2⁷⁄₁₆ in');
    if (screen === 'a desk') {
      const box = await opening.locator('.hit-area').boundingBox();
      const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x, y - 20, { steps: 5 });
      await page.mouse.up();
      await expect.poll(() => opening.getAttribute('aria-valuetext')).toMatch(/^1.* in$/);
    }
    await below.fill('8');
    await below.press('Enter');
    await page
      .getByText(/cannot open so far below the armhole|no clear way from the side seam/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await page.getByRole('link', { name: 'Fit', exact: true }).click();
    await page.getByRole('row', { name: /Side seam above the dart/ }).waitFor();
    // Held at the top edge it is shut.
    const open = page.getByText('The dart that opens in the side seam stays open here', { exact: false });
    expect(await open.count()).toBe(0);
    await page.getByRole('radio', { name: 'at the waist' }).check({ force: true });
    await open.waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      options.viewport.width,
    );
    expectQuiet(visitor);
  });
});
