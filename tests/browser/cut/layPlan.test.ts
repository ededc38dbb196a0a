// The lay plan in the built app: what one works with is in view.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { easeAt, withBrowser } from '../session';

const visit = withBrowser();

/** How far a part of the page ends below the part that scrolls it, px; 0 where all of it is to be seen. */
const cutOff = (page: Page, selector: string): Promise<number> =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => {
      let view = element.parentElement;
      while (view && getComputedStyle(view).overflowY === 'visible') view = view.parentElement;
      const end = Math.min(view?.getBoundingClientRect().bottom ?? innerHeight, innerHeight);
      return Math.max(0, element.getBoundingClientRect().bottom - end);
    });

it.each([
  [1440, 900],
  [1024, 768],
])('has its button, time, length, drawing and files in view, %i × %i', async (width, height) => {
  const { page } = await visit('cut', { viewport: { width, height } });
  await page.getByRole('radio', { name: 'Lay plan' }).check({ force: true });
  const lay = page.getByRole('button', { name: 'Lay the panels' });
  await lay.waitFor();
  expect(await cutOff(page, '.lay-work .primary')).toBe(0);
  await lay.click();
  await page.locator('.lay-drawing').waitFor();
  for (const part of ['.lay-work progress', '.lay-drawing', '.lay-plan .actions'])
    expect(await cutOff(page, part), part).toBe(0);
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByRole('link', { name: 'Draft', exact: true }).click();
  const ease = await easeAt(page, 'bust');
  await ease.fill('1/2');
  await ease.press('Enter');
  await page.getByRole('link', { name: 'Cut', exact: true }).click();
  await page.getByText('This plan is old').waitFor();
  expect(await cutOff(page, '.lay-old')).toBe(0);
});
