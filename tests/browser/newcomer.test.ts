// What a newcomer is told on Draft: before anything is measured, and while a tool of the table is in hand.

import { describe, expect, it } from 'vitest';
import { expectQuiet, openTab, withBrowser } from './session';

const visit = withBrowser();

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
