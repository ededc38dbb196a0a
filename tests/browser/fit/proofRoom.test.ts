// The proofs of a bodice with darts on a desk: heads of rows that a glance reads.

import { expect, it } from 'vitest';
import { layStyle, withBrowser } from '../session';

const visit = withBrowser();

it('writes the name of a seam or a dart in two lines at most', async () => {
  const { page } = await visit('draft', { viewport: { width: 1440, height: 900 } });
  await layStyle(page, 'Darted bodice to the waist');
  await page.evaluate(() => {
    location.hash = 'fit';
  });
  const heads = page.locator('.proof th[scope="row"]');
  await heads
    .getByText(/dart in front/i)
    .first()
    .waitFor({ timeout: 5000 });
  const lines = await heads.evaluateAll((cells) =>
    cells.map((cell) => {
      const range = document.createRange();
      range.selectNodeContents(cell.querySelector('button')?.firstChild ?? cell);
      const tops = [...range.getClientRects()].map(({ bottom }) => Math.round(bottom));
      return { name: cell.textContent, lines: new Set(tops).size };
    }),
  );
  expect(lines.length).toBeGreaterThan(4);
  expect(lines.filter((each) => each.lines > 2)).toEqual([]);
});
