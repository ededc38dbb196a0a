// How a large client book starts and is kept in the built app slowed down four times, printed and not judged:
// `npm run bench -- kept`.

import { packBody } from '../../src/app/storage/records/packing';
import { clientRecord, LAYOUT, OPEN_KEY, recordKey } from '../../src/app/storage/records/record';
import { type Client, DEMO_CLIENT, NAMED_STYLES, type SavedDraft } from '../../src/document';
import { drawBodies } from '../support/bodies/drawBodies';
import { type BareBrowser, openBareBrowser, type TraceEvent } from './bareBrowser';
import { withServedApp } from './servedApp';

const SLOWED = 4;
const COUNTS: readonly number[] = [1, 500, 2000];
const SEED = 1988;
/** Starts of which the middle one is told. */
const STARTS = 5;
/** How often the page was opened in a browser before: one that knows it has its scripts compiled. */
const VISITS = [
  ['in a new browser', 0],
  ['in one that was there twice', 2],
] as const;
/** How long a page stays open on a visit that is not timed. ms */
const VISIT_MS = 5000;
/** What the browser keeps waiting after the last key, and what comes after that. ms */
const KEPT_MS = 2500;
/** How long a new browser has work of its own. ms */
const BROWSER_MS = 5000;
/** Between one key and the next. ms */
const KEY_MS = 80;
/** How long a page that has started is left alone before it is typed into. */
const SETTLED_MS = 4000;
/** How long a page that starts is not asked for anything. */
const UNASKED_MS = 2500;

export async function benchKept(say: (line: string) => void): Promise<void> {
  await withServedApp(async (_, address) => {
    say(`the built app, slowed ${SLOWED} times; clients with 3 drafts each`);
    for (const count of COUNTS) {
      const items = bookOf(count);
      const letters = items.reduce((sum, { name, value }) => sum + name.length + value.length, 0);
      say(`${count} ${count === 1 ? 'client' : 'clients'}, ${(letters / 1e6).toFixed(2)} million letters`);
      for (const [name, visits] of VISITS) {
        const starts: number[] = [];
        for (let i = 0; i < STARTS; i += 1) starts.push(await startOf(address, items, visits));
        starts.sort((a, b) => a - b);
        say(
          `  start, ${name}: the open client's numbers after ${told(starts[Math.floor(STARTS / 2)])}, worst ${told(starts.at(-1))}`,
        );
      }
      const { start, typing, keeping } = await tasksOf(address, items);
      say(`  start: ${longest(start)}; all tasks ${told(workOf(start))} of the processor's time`);
      say(
        `  typing and keeping: ${longest(typing)} in ${typing.length} tasks; the tasks that write: ${longest(keeping)}`,
      );
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
      value: clientRecord(client, packBody),
    })),
    { name: OPEN_KEY, value: JSON.stringify(open) },
  ];
}

/** Marks the frame with the open client's numbers. Runs in the page; a frame asked for again and again would be work of its own. */
const MARK_SHOWN = `new MutationObserver((_, seen) => {
  const field = document.querySelector('.tape-row[data-field="waist"] input');
  if (!field || field.value === '') return;
  seen.disconnect();
  requestAnimationFrame(() => performance.mark('shown'));
}).observe(document, { childList: true, subtree: true });`;

const SHOWN_AT = `performance.getEntriesByName('shown')[0]?.startTime ?? null`;

/** A page in a browser of its own, which watches nothing, with a book laid ready and the processor slowed; not opened yet. */
async function readied(
  address: string,
  items: { name: string; value: string }[],
  visits = 0,
): Promise<BareBrowser & { readonly until: (script: string) => Promise<unknown> }> {
  const browser = await openBareBrowser();
  await after(BROWSER_MS);
  const { ask, run } = browser;
  const until = async (script: string): Promise<unknown> => {
    for (;;) {
      const found = await run(script);
      if (found !== null && found !== false) return found;
      await after(200);
    }
  };
  // A page of the same host, on which the book is laid ready.
  await ask('Page.navigate', { url: `${address}staywright.svg` });
  await until(`location.href.startsWith(${JSON.stringify(address)})`);
  await run(
    `for (const { name, value } of ${JSON.stringify(items)}) localStorage.setItem(name, value); true`,
  );
  for (let i = 0; i < visits; i += 1) {
    await ask('Page.navigate', { url: `${address}#measure` });
    await after(VISIT_MS);
    await ask('Page.navigate', { url: 'about:blank' });
    await after(1000);
  }
  await ask('Page.enable');
  await ask('Page.addScriptToEvaluateOnNewDocument', { source: MARK_SHOWN });
  await ask('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return { ...browser, until };
}

const after = (ms: number): Promise<void> => new Promise((go) => setTimeout(go, ms));

/** From the start of the page to the frame with the open client's numbers, ms. */
async function startOf(
  address: string,
  items: { name: string; value: string }[],
  visits: number,
): Promise<number> {
  const { ask, until, close } = await readied(address, items, visits);
  await ask('Page.navigate', { url: `${address}#measure` });
  await after(UNASKED_MS);
  const at = await until(SHOWN_AT);
  await close();
  return Number(at);
}

const longestOf = (all: readonly TraceEvent[]): number =>
  Math.max(0, ...all.map(({ dur = 0 }) => dur / 1000));
const busiestOf = (all: readonly TraceEvent[]): number =>
  Math.max(0, ...all.map(({ tdur = 0 }) => tdur / 1000));
const workOf = (all: readonly TraceEvent[]): number =>
  all.reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0);
const longest = (all: readonly TraceEvent[]): string =>
  `longest task ${told(longestOf(all))}, of the processor's time ${told(busiestOf(all))}`;

/** The tasks of a start, and those of typing three numbers and waiting until each is kept. */
async function tasksOf(
  address: string,
  items: { name: string; value: string }[],
): Promise<{ start: TraceEvent[]; typing: TraceEvent[]; keeping: TraceEvent[] }> {
  const { ask, run, until, traced, close } = await readied(address, items);
  const { tasks: start } = await traced(async () => {
    await ask('Page.navigate', { url: `${address}#measure` });
    await after(UNASKED_MS);
    await until(SHOWN_AT);
  });
  await after(SETTLED_MS);
  await run(MARK_WRITES);
  const [x, y] = JSON.parse(String(await run(WAIST_AT)));
  const { tasks: typing, marks } = await traced(async () => {
    for (const number of ['28 1/4', '29.5', '30 3/8']) {
      for (const type of ['mousePressed', 'mouseReleased'])
        await ask('Input.dispatchMouseEvent', { type, x, y, button: 'left', clickCount: 1 });
      await after(KEY_MS);
      await press(ask, { key: 'a', code: 'KeyA', modifiers: 2, commands: ['selectAll'] });
      for (const key of number) await press(ask, { key, text: key });
      await press(ask, { key: 'Enter', code: 'Enter', windowsVirtualKeyCode: 13, text: '\r' });
      await after(KEPT_MS);
    }
  });
  const writes = marks.filter(({ name }) => name.startsWith('write staywright.client.'));
  if (writes.length === 0) throw new Error('what was typed was not kept');
  const keeping = typing.filter(({ ts, dur = 0 }) =>
    writes.some((write) => write.ts >= ts && write.ts <= ts + dur),
  );
  await close();
  return { start, typing, keeping };
}

async function press(ask: BareBrowser['ask'], key: object): Promise<void> {
  await ask('Input.dispatchKeyEvent', { type: 'keyDown', ...key });
  await ask('Input.dispatchKeyEvent', { type: 'keyUp', ...key, text: undefined });
  await after(KEY_MS);
}

const MARK_WRITES = `{
  const { setItem } = Storage.prototype;
  Storage.prototype.setItem = function (key, value) {
    performance.mark('write ' + key);
    setItem.call(this, key, value);
  };
} true`;

const WAIST_AT = `{
  const field = document.querySelector('.tape-row[data-field="waist"] input');
  const { x, y, width, height } = field.getBoundingClientRect();
  JSON.stringify([x + width / 2, y + height / 2]);
}`;
