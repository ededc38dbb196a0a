// A newcomer: her way from the first look to a pattern for a client of her own, and what she is told on Draft.

import { describe, expect, it } from 'vitest';
import { readPattern } from '../../paper/readPattern';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { expectQuiet, layStyle, openTab, withBrowser } from '../session';

const visit = withBrowser();

/** The numbers that are needed, by the names of their fields. */
const NEEDED = {
  'Bust girth': '36',
  'Under-bust girth': '31 1/2',
  'Waist girth': '28 3/4',
  'Hip girth': '39 1/2',
  'Neck to bust point': '10 1/2',
  'Neck to under-bust': '13 1/4',
  'Neck to waist, front': '15 3/4',
  'Neck to hip, front': '23 3/4',
  'Bust point to bust point': '7',
} as const;

describe('a newcomer', () => {
  it('makes a pattern for a client of her own, by what the screen offers next', async () => {
    const visitor = await visit('measure');
    const { page } = visitor;
    await page.getByRole('button', { name: 'Begin with your own client' }).click();
    await page.getByText('9 numbers are still needed').waitFor();
    const client = page.getByRole('textbox', { name: 'Client', exact: true });
    await client.fill('Ottilie');
    await client.press('Enter');
    await page.getByRole('button', { name: /^Ottilie.*client book$/ }).waitFor();
    for (const [name, text] of Object.entries(NEEDED)) {
      await page.getByRole('textbox', { name: new RegExp(`^${name}`) }).click();
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
    await page.getByText('9 of 28 taken, all 9 that are needed').waitFor();
    await page.getByRole('button', { name: 'Next: Draft' }).click();
    await page.locator('.draft-canvas').waitFor();
    await page.getByText('Nothing to mend').waitFor();
    // Her style needs a number more: every step says so, and the way leads into its field.
    await layStyle(page, 'Princess bodice with shoulders');
    const steps = page.getByRole('navigation');
    await expect.poll(() => steps.textContent()).toMatch(/1 to take.*not yet/s);
    await page.getByRole('link', { name: 'Go to the measurements' }).click();
    const shoulder = page.getByRole('textbox', { name: 'Across back shoulder needed' });
    await expect.poll(() => shoulder.evaluate((field) => field === document.activeElement)).toBe(true);
    await page.getByText('One number is still needed').waitFor();
    await page.keyboard.type('15');
    await page.keyboard.press('Enter');
    await page.getByText('10 of 28 taken, all 9 that are needed').waitFor();
    await page.getByRole('button', { name: 'Next: Draft' }).click();
    await page.getByText('Nothing to mend').waitFor();
    await page.getByRole('button', { name: 'Next: Fit' }).click();
    await page.getByRole('heading', { name: 'It holds' }).waitFor();
    await page.getByRole('link', { name: 'Next: Cut' }).click();
    await page.locator('.plan-drawing').waitFor();
    const print = page.getByRole('button', { name: 'Download the PDF' });
    const [file] = await Promise.all([page.waitForEvent('download'), print.click()]);
    expect(file.suggestedFilename()).toMatch(/^Ottilie-.*Letter\.pdf$/);
    const { pages } = await readPattern(await downloadBytes(file));
    expect(pages.length).toBeGreaterThan(3);
    expectQuiet(visitor);
  });
});

describe('Draft before anything is measured', () => {
  it('shows the way to the measurements once, and takes nothing in', async () => {
    const visitor = await visit('measure');
    const { page } = visitor;
    await page.getByRole('button', { name: 'Begin with your own client' }).click();
    await page.getByRole('link', { name: 'Draft', exact: true }).click();
    await page.getByText('The draft needs').waitFor();
    await page.getByRole('link', { name: 'Go to the measurements' }).waitFor();
    await openTab(page, 'Garment');
    const safety = page.getByRole('region', { name: 'The wearer’s safety' });
    await safety.getByText('The waist is to be taken in by 2 in; it is not measured yet.').waitFor();
    expectQuiet(visitor);
  });
});

describe('a tool of the table', () => {
  it('says what it waits for, adding and bending', async () => {
    const { page } = await visit('draft');
    const said = page.getByRole('toolbar', { name: 'Table' }).getByRole('status');
    const add = page.getByRole('button', { name: 'Add a wedge here' });
    const bend = page.getByRole('button', { name: 'Bend the axis' });
    await expect.poll(() => said.textContent()).toBe('');
    await add.click();
    await expect.poll(() => said.textContent()).toMatch(/^Press on the panel/);
    await page.keyboard.press('Escape');
    await bend.click();
    await expect.poll(() => said.textContent()).toMatch(/^Pull the points on the wedge’s axis/);
    await bend.click();
    await expect.poll(() => said.textContent()).toBe('');
  });
});
