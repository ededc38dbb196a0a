// A button that is text alone, on a line of its own, begins where the text above it does.

import type { Locator } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

/** Left edge of the first line of a text, px. */
const textLeft = (element: Locator): Promise<number> =>
  element.evaluate((node) => {
    const range = document.createRange();
    range.selectNodeContents(node);
    return range.getClientRects()[0]?.left ?? Number.NaN;
  });

describe('a text button on its own line', () => {
  it('is not indented under the wedges', async () => {
    const { page } = await visit('draft', { viewport: { width: 390, height: 844 } });
    await page.getByRole('button', { name: 'Bust', exact: true }).click();
    const heading = await textLeft(page.getByRole('heading', { name: 'Bust wedge' }));
    const balance = page.getByRole('button', { name: 'Balance all from the girths' });
    expect(await textLeft(balance)).toBeCloseTo(heading, 0);
  });
});
