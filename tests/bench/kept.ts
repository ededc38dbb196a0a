// How a large client book starts and is kept in the built app slowed down four times, printed and not judged:
// `npm run bench -- kept`.

import type { Browser, Page } from 'playwright-core';
import { pack } from '../../src/app/storage/records/packing';
import { clientRecord, LAYOUT, OPEN_KEY, recordKey } from '../../src/app/storage/records/record';
import { type Client, DEMO_CLIENT, NAMED_STYLES, type SavedDraft } from '../../src/document';
import { drawBodies } from '../support/bodies/drawBodies';
import { openBareBrowser } from './bareBrowser';
import { withServedApp } from './servedApp';

const SLOWED = 4;
const COUNTS: readonly number[] = [1, 500, 2000];
const SEED = 1988;
/** Starts of which the middle one is told. */
const STARTS = 5;
/** What the browser keeps waiting after the last key, and what comes after that. ms */
const KEPT_MS = 2500;
/** How long a page that starts is not asked for anything. */
const UNASKED_MS = 2500;

export async function benchKept(say: (line: string) => void): Promise<void> {
  await withServedApp(async (browser, address) => {
    say(`the built app, slowed ${SLOWED} times; clients with 3 drafts each`);
    for (const count of COUNTS) {
      const items = bookOf(count);
      const letters = items.reduce((sum, { name, value }) => sum + name.length + value.length, 0);
      say(`${count} ${count === 1 ? 'client' : 'clients'}, ${(letters / 1e6).toFixed(2)} million letters`);
      const starts: number[] = [];
      for (let i = 0; i < STARTS; i += 1) starts.push(await startOf(address, items));
      starts.sort((a, b) => a - b);
      say(
        `  start: the open client's numbers after ${told(starts[Math.floor(STARTS / 2)])}, worst ${told(starts.at(-1))}`,
      );
      const { longest: first, busiest, work } = await tasksOfStart(browser, address, items);
      say(`  start: longest task ${told(first)}, of the processor's time ${told(busiest)} of ${told(work)}`);
      const page = await opened(browser, address, items);
      await page.waitForTimeout(4000);
      const { typing, keeping, work: writes, tasks } = await worked(browser, page);
      say(
        `  typing and keeping: longest task ${told(typing)} of ${tasks}; the task that writes ${told(keeping)}, of the processor's time ${told(writes)}`,
      );
      await page.context().close();
    }
  });
}

const told = (ms: number | undefined): string => `${(ms ?? Number.NaN).toFixed(0)} ms`;

/** Invented clients on drawn bodies, as they lie in the storage. */
function bookOf(count: number): { name: string; value: string }[] {
  const styles = [...NAMED_STYLES.values()];
  const clients = drawBodies(count, SEED).map((measurements, i): Client => {
    const drafts = [0, 1, 2].map((n): SavedDraft => {
      const named = styles[(i + n) % styles.length];
      const [first] = DEMO_CLIENT.drafts;
      if (!named || !first) throw new Error('there is no style');
      return { ...first, id: `draft-${i}-${n}`, name: `Draft ${n + 1} of ${i + 1}`, style: named.style };
    });
    const { invented: _, ...client } = DEMO_CLIENT;
    const id = `client-${String(i).padStart(5, '0')}-0000-4000-8000-000000000000`;
    return { ...client, id, name: `Client ${i + 1}`, measurements, drafts, openDraft: drafts[0]?.id ?? '' };
  });
  const open = { layout: LAYOUT, open: clients.at(-1)?.id ?? '' };
  return [
    ...clients.map((client) => ({
      name: recordKey('client', client.id),
      value: clientRecord(client, pack),
    })),
    { name: OPEN_KEY, value: JSON.stringify(open) },
  ];
}

async function opened(
  browser: Browser,
  address: string,
  localStorage: { name: string; value: string }[],
  before: (page: Page) => Promise<void> = async () => undefined,
): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    storageState: { cookies: [], origins: [{ origin: new URL(address).origin, localStorage }] },
  });
  const page = await context.newPage();
  // The runner writes calls of this into the functions that are handed to the page.
  await page.addInitScript('globalThis.__name = (named) => named;');
  await page.addInitScript(MARK_SHOWN);
  await page.addInitScript(() => {
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = function (key, value) {
      performance.mark(`write ${key}`);
      setItem.call(this, key, value);
    };
  });
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await before(page);
  await page.goto(`${address}#measure`);
  await page.getByRole('textbox', { name: /^Waist girth/ }).waitFor();
  return page;
}

/** Marks the frame with the open client's numbers. Runs in the page; a frame asked for again and again would be work of its own. */
const MARK_SHOWN = `new MutationObserver((_, seen) => {
  const field = document.querySelector('.tape-row[data-field="waist"] input');
  if (!field || field.value === '') return;
  seen.disconnect();
  requestAnimationFrame(() => performance.mark('shown'));
}).observe(document, { childList: true, subtree: true });`;

const SHOWN_AT = `performance.getEntriesByName('shown')[0]?.startTime ?? null`;

/** From the start of the page to the frame with the open client's numbers, ms; in a browser of its own, which watches nothing. */
async function startOf(address: string, items: { name: string; value: string }[]): Promise<number> {
  const { ask, run, close } = await openBareBrowser();
  const until = async (script: string): Promise<unknown> => {
    for (;;) {
      const found = await run(script);
      if (found !== null && found !== false) return found;
      await new Promise((go) => setTimeout(go, 200));
    }
  };
  // A page of the same host, on which the book is laid ready.
  await ask('Page.navigate', { url: `${address}staywright.svg` });
  await until(`location.href.startsWith(${JSON.stringify(address)})`);
  await run(
    `for (const { name, value } of ${JSON.stringify(items)}) localStorage.setItem(name, value); true`,
  );
  await ask('Page.enable');
  await ask('Page.addScriptToEvaluateOnNewDocument', { source: MARK_SHOWN });
  await ask('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await ask('Page.navigate', { url: `${address}#measure` });
  await new Promise((go) => setTimeout(go, UNASKED_MS));
  const at = await until(SHOWN_AT);
  await close();
  return Number(at);
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
  /** What the thread itself worked of it. */
  readonly tdur?: number;
}

const TRACED = {
  categories: ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline', 'blink.user_timing'],
};

/** How long after the first numbers the tasks of a start are told. */
const SETTLED_MS = 1000;

/** Ends a trace: the marks of some names, and the tasks of the thread on which they were made. */
async function traced(
  browser: Browser,
  isOnPage: (name: string) => boolean,
): Promise<{ marks: TraceEvent[]; tasks: TraceEvent[] }> {
  const { traceEvents: events } = JSON.parse((await browser.stopTracing()).toString('utf8')) as {
    traceEvents: TraceEvent[];
  };
  const marks = events.filter(({ name }) => isOnPage(name));
  const [thread] = marks;
  if (!thread) throw new Error('what is looked for was not done');
  const tasks = events.filter(
    ({ name, ph, pid, tid }) =>
      /RunTask$/.test(name) && ph === 'X' && pid === thread.pid && tid === thread.tid,
  );
  return { marks, tasks };
}

const longestOf = (all: readonly TraceEvent[]): number => Math.max(...all.map(({ dur = 0 }) => dur / 1000));
const busiestOf = (all: readonly TraceEvent[]): number => Math.max(...all.map(({ tdur = 0 }) => tdur / 1000));

/** The tasks of one start, until a moment after the open client's numbers: the longest, the busiest, and all the work, ms. */
async function tasksOfStart(
  browser: Browser,
  address: string,
  items: { name: string; value: string }[],
): Promise<{ longest: number; busiest: number; work: number }> {
  const page = await opened(browser, address, items, (each) => browser.startTracing(each, TRACED));
  await page.waitForFunction(() => performance.getEntriesByName('shown').length > 0);
  await page.waitForTimeout(SETTLED_MS);
  const { tasks } = await traced(browser, (name) => name === 'shown');
  await page.context().close();
  const outer = tasks.filter(({ name }) => name === 'ThreadControllerImpl::RunTask');
  const work = outer.reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0);
  return { longest: longestOf(tasks), busiest: busiestOf(tasks), work };
}

/** Types three numbers and waits until each is kept; gives the longest tasks of the page, ms. */
async function worked(
  browser: Browser,
  page: Page,
): Promise<{ typing: number; keeping: number; work: number; tasks: number }> {
  const waist = page.getByRole('textbox', { name: /^Waist girth/ });
  await browser.startTracing(page, TRACED);
  for (const number of ['28 1/4', '29.5', '30 3/8']) {
    await waist.click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type(number, { delay: 80 });
    await page.keyboard.press('Enter');
    await page.waitForTimeout(KEPT_MS);
  }
  const { marks: writes, tasks } = await traced(browser, (name) =>
    name.startsWith('write staywright.client.'),
  );
  const writing = tasks.filter(({ ts, dur = 0 }) =>
    writes.some((write) => write.ts >= ts && write.ts <= ts + dur),
  );
  return {
    typing: longestOf(tasks),
    keeping: longestOf(writing),
    work: busiestOf(writing),
    tasks: tasks.length,
  };
}
