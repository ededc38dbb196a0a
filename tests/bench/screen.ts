// How smooth the built app is in a real browser slowed down four times, printed and not judged: `npm run bench -- screen`.

import type { Page } from 'playwright-core';
import { withServedApp } from './servedApp';

const SLOWED = 4;
/** Each part of the script takes so long. ms */
const PART_MS = 5000;

export async function benchScreen(say: (line: string) => void): Promise<void> {
  await withServedApp(async (browser, address) => {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    // The runner writes calls of this into the functions that are handed to the page.
    await page.addInitScript('globalThis.__name = (named) => named;');
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    say(`the built app, slowed ${SLOWED} times, 1440 × 900`);
    say(`the browser alone, a dot pulled over an empty page: ${await aloneSaid(page)}`);
    await page.goto(`${address}#draft`);
    await page.locator('.draft-canvas').waitFor();
    say(`first paint: ${(await firstPaint(page)).toFixed(0)} ms`);
    await page.waitForTimeout(4000);
    for (const [name, part] of PARTS) say(`${name}: ${framesSaid(await framesOf(page, await part(page)))}`);
    await page.getByRole('button', { name: 'See it as worn' }).click();
    await page.locator('.worn-small canvas').waitFor({ timeout: 120_000 });
    await page.waitForTimeout(4000);
    for (const [name, part] of PARTS.slice(0, 2))
      say(`${name} beside the garment as worn: ${framesSaid(await framesOf(page, await part(page)))}`);
    say(`typing a measurement: ${await typing(page)}`);
  });
}

/** Frames of a page that has next to nothing to do: what the browser and the machine lose by themselves. */
async function aloneSaid(page: Page): Promise<string> {
  await page.goto('about:blank');
  await page.setContent(
    '<svg style="position:fixed;inset:0" width="100%" height="100%"><circle id="dot" r="6" cx="400" cy="400"/></svg>',
  );
  await page.evaluate(() => {
    const dot = document.getElementById('dot');
    addEventListener('pointermove', ({ clientX }) => dot?.setAttribute('cx', String(clientX)));
  });
  await page.waitForTimeout(4000);
  return framesSaid(await framesOf(page, await pull(page, '#dot')));
}

/** What is done and timed, once it was looked up where: looking something up in the page is work of the page too. */
type Part = (page: Page) => Promise<() => Promise<void>>;

const PARTS: readonly (readonly [string, Part])[] = [
  ['pulling an axis', (page) => pull(page, '[data-handle="axis:front-bust"] .hit-area')],
  ['pulling a leg', (page) => pull(page, '[data-handle="leg:front-bust:waist:outer"] .hit-area')],
  [
    'zooming with the wheel',
    async (page) => {
      const { x, y } = await middleOf(page, '.draft-canvas');
      await page.mouse.move(x, y);
      return () => during(async (t) => page.mouse.wheel(0, Math.sin(t / 300) > 0 ? -24 : 24));
    },
  ],
  [
    'moving the table',
    async (page) => {
      const { x, top } = await middleOf(page, '.draft-canvas');
      const y = top + 14;
      return async () => {
        await page.mouse.move(x, y);
        await page.mouse.down();
        await during(async (t) => page.mouse.move(x + 120 * Math.sin(t / 400), y + 40 * Math.sin(t / 300)));
        await page.mouse.up();
      };
    },
  ],
];

async function pull(page: Page, target: string): Promise<() => Promise<void>> {
  const { x, y } = await middleOf(page, target);
  return async () => {
    await page.mouse.move(x, y);
    await page.mouse.down();
    await during(async (t) => page.mouse.move(x + 40 * Math.sin(t / 500), y));
    await page.keyboard.press('Escape');
    await page.mouse.up();
  };
}

async function middleOf(page: Page, target: string): Promise<{ x: number; y: number; top: number }> {
  const box = await page.locator(target).boundingBox();
  if (!box) throw new Error(`${target} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, top: box.y };
}

/** Does something again and again for {@link PART_MS}, about as often as a screen is drawn. */
async function during(step: (elapsed: number) => Promise<void>): Promise<void> {
  const start = performance.now();
  for (let t = 0; t < PART_MS; t = performance.now() - start) {
    await step(t);
    await new Promise((go) => setTimeout(go, 8));
  }
}

/** Time from frame to frame while something is done, ms. */
async function framesOf(page: Page, work: () => Promise<void>): Promise<number[]> {
  await page.evaluate(() => {
    const held = window as unknown as { frames: number[]; frame: number };
    held.frames = [];
    let last = performance.now();
    const next = (now: number): void => {
      held.frames.push(now - last);
      last = now;
      held.frame = requestAnimationFrame(next);
    };
    held.frame = requestAnimationFrame(next);
  });
  await work();
  return page.evaluate(() => {
    const held = window as unknown as { frames: number[]; frame: number };
    cancelAnimationFrame(held.frame);
    return held.frames.slice(2);
  });
}

function framesSaid(frames: readonly number[]): string {
  const sorted = [...frames].sort((a, b) => a - b);
  const share = (part: number): string => (sorted[Math.floor(part * (sorted.length - 1))] ?? 0).toFixed(1);
  const worst = frames.indexOf(sorted.at(-1) ?? 0);
  const after = frames.slice(0, worst).reduce((sum, frame) => sum + frame, 0) / 1000;
  return `${sorted.length} frames, median ${share(0.5)} ms, p95 ${share(0.95)} ms, p99 ${share(0.99)} ms, worst ${share(1)} ms after ${after.toFixed(1)} s`;
}

const firstPaint = (page: Page): Promise<number> =>
  page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN);

/** From a key to the frame that shows what it did, as the browser measures it. */
async function typing(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'Measure' }).click();
  const field = page.getByRole('textbox', { name: 'Waist girth' });
  await field.focus();
  await page.evaluate(() => {
    const held = window as unknown as { keys: number[] };
    held.keys = [];
    addEventListener(
      'keydown',
      () => {
        const start = performance.now();
        // the frame after the next one begins when the next one has been drawn
        requestAnimationFrame(() => {
          const channel = new MessageChannel();
          channel.port1.onmessage = () => held.keys.push(performance.now() - start);
          channel.port2.postMessage(null);
        });
      },
      true,
    );
  });
  for (const key of '28.75 27.25 29.5 30.125') {
    await field.press(key === ' ' ? 'ControlOrMeta+a' : key);
    await page.waitForTimeout(60);
  }
  return framesSaid(await page.evaluate(() => (window as unknown as { keys: number[] }).keys)).replace(
    'frames',
    'keys',
  );
}
