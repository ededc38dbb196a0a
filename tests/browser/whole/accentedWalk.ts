// A walk through the app in accented text on a phone: looks at every state it comes to, and remembers each text in plain
// letters and each state wider than the window.

import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { type Book, DEMO_BOOK, DEMO_CLIENT } from '../../../src/document';
import type { Visitor } from '../session';
import { lookAt } from './plainTexts';

export interface Walk {
  readonly page: Page;
  /** Looks at the state the page is in. */
  readonly look: (state: string) => Promise<void>;
  /** What was found so far. */
  readonly found: () => string[];
}

const BOOK_KEY = 'staywright.book';

/** A phone on which days are written in digits, so that no name of a month is in them; with a book, if one is given. */
export const phone = (address: string, book: Book | string = DEMO_BOOK): BrowserContextOptions => ({
  viewport: { width: 390, height: 844 },
  locale: 'ja-JP',
  storageState: {
    cookies: [],
    origins: [
      {
        origin: new URL(address).origin,
        localStorage: [{ name: BOOK_KEY, value: typeof book === 'string' ? book : JSON.stringify(book) }],
      },
    ],
  },
});

/** @param typed names that are typed on the walk; the names that come with the book need not be given */
export function startWalk({ page }: Visitor, typed: readonly string[] = []): Walk {
  const names = [DEMO_CLIENT.name, ...DEMO_CLIENT.drafts.map(({ name }) => name), ...typed];
  const found = new Map<string, string>();
  return {
    page,
    look: async (state) => {
      const { texts, overflowPx } = await lookAt(page, names);
      for (const text of texts) if (!found.has(text)) found.set(text, state);
      if (overflowPx > 0) found.set(`${overflowPx} px wider than the window`, state);
    },
    found: () => [...found].map(([text, state]) => `${state}: ${text}`),
  };
}

/** Presses every checkbox and radio button within a part of the page, one after the other, and looks each time. */
export async function pressAll({ page, look }: Walk, within: string): Promise<void> {
  const boxes = page.locator(within).locator('input[type=checkbox], input[type=radio]');
  for (let i = 0; i < (await boxes.count()); i += 1) {
    const box = boxes.nth(i);
    if (!(await box.isEnabled())) continue;
    await box.evaluate((input: HTMLInputElement) => input.click());
    await look(`box ${i + 1} of ${within} pressed`);
  }
}

/** Chooses every option of every select within a part of the page, and looks each time. */
export async function chooseAll({ page, look }: Walk, within: string): Promise<void> {
  const selects = page.locator(within).locator('select');
  for (let i = 0; i < (await selects.count()); i += 1) {
    const options = await selects
      .nth(i)
      .evaluate((select: HTMLSelectElement) => [...select.options].map(({ value }) => value));
    for (const option of options) {
      // Also in a part that is folded up just then.
      await selects.nth(i).evaluate((select: HTMLSelectElement, value) => {
        select.value = value;
        select.dispatchEvent(new Event('change', { bubbles: true }));
      }, option);
      await look(`${option} chosen in select ${i + 1} of ${within}`);
    }
  }
}

/** Writes texts one after the other into every field within a part of the page, looks, and writes back what was there. */
export async function writeInAll({ page, look }: Walk, within: string, ...texts: string[]): Promise<void> {
  const fields = page.locator(within).locator('.length-field input');
  for (let i = 0; i < (await fields.count()); i += 1) {
    if (!(await fields.nth(i).isVisible())) continue;
    const before = await fields.nth(i).inputValue();
    for (const text of texts) {
      await write(fields.nth(i), text);
      await look(`${text} in field ${i + 1} of ${within}`);
    }
    await write(fields.nth(i), before);
  }
}

/** Writes a text into a field and leaves it. */
export async function write(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.blur();
}

/** Unfolds all that can be unfolded. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
