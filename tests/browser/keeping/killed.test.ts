// The page's process is killed in the middle of a save, and of the move of an earlier book: what was kept before is there when the
// page is opened again, whole, and what had been written is too.

import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

/** At which change of the storage the process dies, counted from the start of the page, and on which side of it. */
interface Death {
  readonly call: number;
  readonly side: 'before' | 'after';
}

/** So many deaths, spread over the changes up to one. */
const deaths = (count: number, most: number): Death[] =>
  Array.from({ length: count }, (_, i) => ({
    call: 1 + (Math.floor((i * most) / Math.min(count, 2 * most)) % most),
    side: i % 2 === 0 ? 'before' : 'after',
  }));

interface Doomed {
  readonly page: Page;
  /** Waits until the page hangs, and kills its process. */
  readonly kill: () => Promise<void>;
}

/** What a page writes into its console where it begins to hang: it is heard outside all the same. */
const HANGS = 'hangs at a change of the storage';

/** The longest that anything takes on a busy machine: the way there is a whole start of the page. ms */
const MOST_MS = 240_000;

/** A page that hangs at a change of the storage, so that it is there that its process is killed. */
async function doomed(context: BrowserContext, { call, side }: Death): Promise<Doomed> {
  context.setDefaultTimeout(MOST_MS);
  const page = await context.newPage();
  // Attached while the page still answers.
  const session = await context.newCDPSession(page);
  await page.addInitScript(
    ([call, side, said, longMs]) => {
      let calls = 0;
      const hang = (): void => {
        const { console: heard } = window;
        heard.log(said);
        for (const end = performance.now() + longMs; performance.now() < end; );
      };
      for (const name of ['setItem', 'removeItem'] as const) {
        const change = Storage.prototype[name] as (...values: string[]) => void;
        Storage.prototype[name] = function (...values: string[]) {
          calls += 1;
          if (calls === call && side === 'before') hang();
          change.apply(this, values);
          if (calls === call && side === 'after') hang();
        };
      }
    },
    [call, side, HANGS, 10 * MOST_MS] as const,
  );
  const hangs = page.waitForEvent('console', {
    predicate: (message) => message.text() === HANGS,
  });
  // Told where it is waited for.
  hangs.catch(() => undefined);
  const kill = async (): Promise<void> => {
    await hangs;
    const crashed = page.waitForEvent('crash');
    session.send('Page.crash').catch(() => undefined);
    await crashed;
    await page.close();
  };
  return { page, kill };
}

/** Times that the process is killed in either test: a few, or as many as `KILLS` says. */
const KILLS = Number(process.env.KILLS ?? 4);
const TIMEOUT_MS = MOST_MS + KILLS * 60_000;

/** Changes of the storage in a save: the client's record, and the history. */
const SAVE_CALLS = 2;

/** Clients of the earlier book, and the changes of the storage while it is moved: the mark, twice, each client, a style, the book. */
const MOVED = 12;
const MOVE_CALLS = MOVED + 4;

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth' });

describe('a process that is killed', () => {
  it(
    'in the middle of a save leaves what was kept before, or what was written',
    async () => {
      const { page: first, context } = await visit('measure');
      await waist(first).fill('28');
      await waist(first).press('Enter');
      await first.reload();
      expect(await waist(first).inputValue()).toBe('28');
      await first.close();
      const seen = { before: 0, after: 0 };
      let kept = '28';
      let last: { death: Death; typed: string } | null = null;
      /** Opens a page, which shows what was kept before the last death, or what was typed then. */
      const opens = async (page: Page): Promise<void> => {
        await page.goto(`${inject('appUrl')}#measure`);
        const found = await waist(page).inputValue();
        expect(await page.locator('.keeping').count()).toBe(0);
        if (last === null) return expect(found).toBe(kept);
        const { death, typed } = last;
        expect([kept, typed], JSON.stringify(death)).toContain(found);
        seen[found === typed ? 'after' : 'before'] += 1;
        // The record is the first that is written.
        expect(found === typed, JSON.stringify(death)).toBe(death.call > 1 || death.side === 'after');
        kept = found;
      };
      for (const [i, death] of deaths(KILLS, SAVE_CALLS).entries()) {
        const { page, kill } = await doomed(context, death);
        await opens(page);
        const typed = `${29 + (i % 9)} 1/4`;
        await waist(page).fill(typed);
        // The page may hang before the key reaches it.
        waist(page)
          .press('Enter', { timeout: 0 })
          .catch(() => undefined);
        await kill();
        last = { death, typed };
      }
      await opens(await context.newPage());
      expect(Math.min(seen.before, seen.after)).toBeGreaterThan(0);
    },
    TIMEOUT_MS,
  );

  it(
    'in the middle of the move of an earlier book leaves every client',
    async () => {
      const book = JSON.parse(readFileSync('tests/document/model/fixtures/book-v5.json', 'utf8'));
      const clients = Array.from({ length: MOVED }, (_, i) => ({
        ...book.clients[i % book.clients.length],
        id: `mover-${i}`,
        name: `Mover ${i + 1}`,
      }));
      const value = JSON.stringify({ ...book, clients, openClient: 'mover-3' });
      const { page: first, context } = await visit('measure');
      await first.close();
      for (const { call, side } of deaths(Math.min(KILLS, 2 * MOVE_CALLS), MOVE_CALLS)) {
        // A page of the same origin that runs nothing.
        const own = await context.newPage();
        await own.goto(`${inject('appUrl')}staywright.svg`);
        await own.evaluate((text) => {
          localStorage.clear();
          localStorage.setItem('staywright.book', text);
        }, value);
        await own.close();
        const { page, kill } = await doomed(context, { call, side });
        // It hangs while it is loaded.
        page.goto(`${inject('appUrl')}#measure`, { timeout: 0 }).catch(() => undefined);
        await kill();
        const next = await context.newPage();
        await next.goto(`${inject('appUrl')}#measure`);
        const there = (): Promise<string[]> =>
          next.evaluate(() =>
            Object.keys(localStorage)
              .filter((key) => /\.(client|book)/.test(key))
              .sort(),
          );
        const whole = clients.map(({ id }) => `staywright.client.${id}`).sort();
        await expect.poll(there, { message: `${call} ${side}`, timeout: MOST_MS }).toEqual(whole);
        expect(await next.getByRole('textbox', { name: 'Client' }).inputValue()).toBe('Mover 4');
        await next.close();
      }
    },
    TIMEOUT_MS,
  );
});
