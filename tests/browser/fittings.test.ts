// From the mock-up into the pattern: a seam is pressed in the drawing, altered by typing, seen, switched off, undone and kept.

import { expect, it } from 'vitest';
import { expectQuiet, withBrowser } from './session';

const visit = withBrowser();

it('brings a quarter inch out of one seam into the draft', async () => {
  const visitor = await visit('fit');
  const { page } = visitor;
  await page.getByRole('button', { name: 'Gaps of the lacing' }).waitFor();
  const reach = page.locator('[data-piece="front-1"] .edge-reach').first();
  await reach.waitFor({ state: 'attached' });
  const at = await reach.evaluate((path: SVGPathElement) => {
    const { x, y } = path.getPointAtLength(path.getTotalLength() * 0.6);
    const { a, b, c, d, e, f } = path.getScreenCTM() as DOMMatrix;
    return { x: a * x + c * y + e, y: b * x + d * y + f };
  });
  await page.mouse.click(at.x, at.y);
  await page.getByRole('button', { name: 'Alter here' }).click();
  await page.getByLabel('Height').selectOption('waist');
  await page.getByRole('textbox', { name: /^On each edge/ }).fill('1/4');
  await page.getByRole('button', { name: 'Make it' }).click();
  const line = page.getByRole('checkbox', {
    name: 'Front 1 / Front 2, waist: taken in ¼ in on each edge, both sides',
  });
  await line.waitFor();
  await page.getByRole('region', { name: 'Girths' }).locator('summary').click();
  const waist = page.getByRole('row', { name: /^waist/i }).first();
  // A quarter inch on two edges of both halves.
  await expect.poll(() => waist.textContent()).toMatch(/27½\s*−1\s*26½\s*under/);
  expect(await page.locator('.unaltered-lines').count()).toBe(1);

  await line.uncheck();
  await expect.poll(() => page.locator('.unaltered-lines').count()).toBe(0);
  await expect.poll(() => waist.textContent()).toMatch(/27½\s*27½\s*under/);
  await page.getByRole('button', { name: 'Undo: switched an alteration of a seam off' }).click();
  await expect.poll(() => line.isChecked()).toBe(true);

  // The edge is pulled towards the side, out of its panel: let out, and a second alteration.
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 6, at.y);
  await page.mouse.move(at.x + 12, at.y, { steps: 3 });
  await page.mouse.up();
  await expect.poll(() => page.locator('.alterations li').count()).toBe(2);
  expect(await page.locator('.alterations li').last().textContent()).toMatch(
    /let out .+ in on Front 1 alone/,
  );
  await page.reload();
  await line.waitFor();
  expect(await page.locator('.alterations li').count()).toBe(2);
  expectQuiet(visitor);
});
