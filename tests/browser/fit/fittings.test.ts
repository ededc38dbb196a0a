// From the mock-up into the pattern: a seam is pressed in the drawing, altered by typing, seen, switched off, undone and kept.

import { expect, it } from 'vitest';
import { inches } from '../../../src/engine';
import { type ReadPage, readPattern } from '../../paper/readPattern';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { widthsOnPaper } from '../../support/judges/panelsOnPaper';
import { expectQuiet, withBrowser } from '../session';

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
  expect(await page.evaluate(() => getSelection()?.toString())).toBe('');
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

it('takes a press on a mark as one on the seam at its level', async () => {
  const visitor = await visit('fit');
  const { page } = visitor;
  await page.getByRole('button', { name: 'Gaps of the lacing' }).waitFor();
  const marks = page.locator('[data-piece="front-3"] .balance-mark');
  await marks.first().waitFor();
  const heights: (string | null)[] = [];
  for (const mark of await marks.all()) {
    const box = await mark.boundingBox();
    if (!box) continue;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    heights.push(await page.locator('.pressed-seam span').textContent());
  }
  expect(heights.filter((text) => /, waist$/.test(text ?? ''))).toHaveLength(2);
  expect(new Set(heights).size).toBe(heights.length);
  expectQuiet(visitor);
});

it('prints a mock-up, brings ⅜ in out of a seam into the draft, and has it on the next print', async () => {
  const visitor = await visit('fit');
  const { page } = visitor;
  const printed = async (behind: readonly string[]): Promise<ReadPage> => {
    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download the page' }).click();
    const { pages } = await readPattern(await downloadBytes(await asked));
    const titles = pages.slice(1).map(({ texts }) => texts[0]?.text.replace(/ · page \d+$/, ''));
    expect(titles).toEqual(behind);
    return pages[0] as ReadPage;
  };
  await page.getByRole('button', { name: 'Print a mock-up' }).click();
  await page.getByRole('radio', { name: 'One page' }).check();
  expect(await page.getByRole('radio', { name: 'Mock-up' }).isChecked()).toBe(true);
  const before = await printed(['Fitting form']);

  await page.getByRole('link', { name: 'Fit', exact: true }).click();
  await page.getByRole('button', { name: 'Seam or dart' }).press('Enter');
  await page.getByLabel('Seam or dart').selectOption('Front 2 / Front 3');
  await page.getByRole('textbox', { name: /^On each edge/ }).focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('3/16');
  await page.getByText('Both edges together: ⅜ in taken in.').waitFor();
  await page.getByText('Round the whole garment: waist −¾ in.').first().waitFor();
  await page.getByRole('button', { name: 'Make it' }).press('Enter');
  await page.getByRole('checkbox', { name: /^Front 2 \/ Front 3, waist: taken in/ }).waitFor();

  await page.getByRole('link', { name: 'Draft', exact: true }).click();
  await page.getByText('Broken lines: without the fittings').waitFor();
  await page.getByRole('link', { name: 'Cut', exact: true }).click();
  const after = await printed(['Record of this print', 'Fitting form']);
  for (const name of ['Front 1', 'Front 2', 'Front 3', 'Back 1', 'Back 2', 'Back 3']) {
    const [was, now] = [widthsOnPaper(before, name), widthsOnPaper(after, name)];
    const taken = name === 'Front 2' || name === 'Front 3' ? inches(3 / 16) : 0;
    for (const [level, asked] of [
      ['Bust', 0],
      ['Under-bust', 0],
      ['Waist', taken],
    ] as const)
      expect(
        Math.abs((was[level] ?? Number.NaN) - (now[level] ?? Number.NaN) - asked),
        `${name}, ${level}`,
      ).toBeLessThan(0.05);
  }

  await page.getByRole('button', { name: /client book$/ }).click();
  const past = page.getByRole('region', { name: 'Fittings and prints of Wren Abernathy' });
  await past.getByText(/Winter ball bodice, mock-up 2 on one page, one alteration$/).waitFor();
  await past.getByText(/Winter ball bodice, mock-up 1 on one page$/).waitFor();
  await past.getByText(/: Winter ball bodice, one alteration$/).click();
  await past.getByText('Front 2 / Front 3, waist: taken in ³⁄₁₆ in on each edge, both sides').waitFor();
  expectQuiet(visitor);
});
