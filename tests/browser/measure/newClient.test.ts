// Whoever adds a client from the book, whichever step is in view, begins with her name.

import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

describe('a client added from the book', () => {
  it.each(['measure', 'draft'])('has her name under the focus, from %s', async (step) => {
    const { page } = await visit(step);
    await page.getByRole('button', { name: /client book$/ }).click();
    await page.getByRole('button', { name: 'New client' }).click();
    await page.getByText('Choose a field to see where the tape goes.').waitFor();
    const name = page.getByRole('textbox', { name: 'Client', exact: true });
    await expect.poll(() => name.evaluate((field) => field === document.activeElement)).toBe(true);
    await page.keyboard.type('Maud');
    expect(await name.inputValue()).toBe('Maud');
  });
});
