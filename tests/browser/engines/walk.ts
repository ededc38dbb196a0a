// The main path as a maker goes it, in any engine: the nine numbers typed, a wedge pulled with the pointer, the fit looked at, the
// sheets printed, and all of it there after a reload. And the shortest way from a number of the invented client to the sheets.

import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { type ReadPattern, readPattern } from '../../paper/readPattern';
import { NINE_NUMBERS } from '../../support/bodies/nineNumbers';
import type { EngineWindow, Place } from './engine';

type Field = keyof typeof NINE_NUMBERS;

const HANDLE = '[data-handle="axis:front-bust"]';

/** How far the wedge is pulled, CSS px. */
const PULL_PX = 36;

interface Sought {
  readonly selector: string;
  /** What is written on it, or on its label. */
  readonly text?: string;
}

export interface Walked {
  readonly printed: ReadPattern;
  /** What the browser keeps in the end: the names and texts of its storage. */
  readonly kept: Readonly<Record<string, string>>;
}

export async function walkMainPath(view: EngineWindow, address: string, downloads: string): Promise<Walked> {
  await view.goTo(`${address}#measure`);
  await click(view, { selector: 'button', text: 'Begin with your own client' });
  await shown(view, { selector: '.needed' });
  await typeTape(view);
  await click(view, { selector: 'button', text: 'Next: Draft' });
  await shown(view, { selector: '.draft-canvas' });
  await expect.poll(() => textOf(view, '[data-sewn="waist"]')).toBe('27½');

  await pullWedge(view);
  const pulled = await axisOf(view);
  expect(await textOf(view, '[data-sewn="waist"]')).toBe('27½');

  await click(view, { selector: 'a[href="#fit"]' });
  await shown(view, { selector: '.closed-up' });
  await click(view, { selector: 'label', text: 'As worn' });
  await shown(view, { selector: 'section.worn canvas, section.worn img' });

  await click(view, { selector: 'a[href="#cut"]' });
  await click(view, { selector: 'button', text: 'Download the PDF' });
  const printed = await readPattern(await downloaded(downloads));

  await view.reload();
  await click(view, { selector: 'a[href="#draft"]' });
  await shown(view, { selector: HANDLE });
  expect(await axisOf(view)).toBe(pulled);
  await click(view, { selector: 'a[href="#measure"]' });
  await shown(view, { selector: '.tape-row' });
  expect(await tapeOf(view)).toEqual(NINE_NUMBERS);
  expect(await view.complaints()).toEqual([]);
  return { printed, kept: await view.ask(() => ({ ...localStorage }), null) };
}

/** @returns what was printed of the invented client with another waist, which is there after a reload */
export async function walkShortPath(
  view: EngineWindow,
  address: string,
  downloads: string,
): Promise<ReadPattern> {
  const waist = '.tape-row[data-field="waist"] input';
  await view.goTo(`${address}#measure`);
  // The press selects the number that stands there.
  await click(view, { selector: waist });
  await view.type('28');
  await view.press('Enter');
  await click(view, { selector: 'a[href="#draft"]' });
  await expect.poll(() => textOf(view, '[data-sewn="waist"]')).toBe('26');
  await click(view, { selector: 'a[href="#cut"]' });
  await click(view, { selector: 'button', text: 'Download the PDF' });
  const printed = await readPattern(await downloaded(downloads));
  await view.reload();
  await click(view, { selector: 'a[href="#measure"]' });
  await shown(view, { selector: waist });
  expect((await tapeOf(view)).waist).toBe('28');
  expect(await view.complaints()).toEqual([]);
  return printed;
}

async function typeTape(view: EngineWindow): Promise<void> {
  await click(view, { selector: '.tape-row[data-field="overBust"] input' });
  const focused = (): Promise<string> =>
    view.ask(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field') ?? '', null);
  for (const [field, number] of Object.entries(NINE_NUMBERS)) {
    // The numbers between that are not needed are left by Tab.
    for (let i = 0; i < 6 && (await focused()) !== field; i += 1) await view.press('Tab');
    expect(await focused()).toBe(field);
    await view.type(number);
    await view.press('Enter');
  }
  await expect.poll(() => tapeOf(view)).toEqual(NINE_NUMBERS);
}

const tapeOf = (view: EngineWindow): Promise<Record<Field, string>> =>
  view.ask(
    () =>
      Object.fromEntries(
        [...document.querySelectorAll('.tape-row[data-field]')]
          .map((row) => [row.getAttribute('data-field'), row.querySelector('input')?.value ?? ''])
          .filter(([, value]) => value !== ''),
      ),
    null,
  );

/** mm from the centre line, as the handle says it. */
const axisOf = (view: EngineWindow): Promise<number> =>
  view.ask((handle) => Number(document.querySelector(handle)?.getAttribute('aria-valuenow')), HANDLE);

async function pullWedge(view: EngineWindow): Promise<void> {
  const before = await axisOf(view);
  const from = await placeOf(view, { selector: `${HANDLE} .hit-area` });
  const scale = await view.ask(() => {
    const canvas = document.querySelector('.draft-canvas') as SVGSVGElement;
    return canvas.getBoundingClientRect().width / canvas.viewBox.baseVal.width;
  }, null);
  const path = Array.from({ length: 9 }, (_, i) => ({ x: from.x + (PULL_PX * i) / 8, y: from.y }));
  await view.pull(path);
  // The pointer stands on whole px, and the axis on sixteenths of an inch.
  await expect
    .poll(async () => Math.abs((await axisOf(view)) - before - PULL_PX / scale))
    .toBeLessThan(25.4 / 16 + 1 / scale);
}

const textOf = (view: EngineWindow, selector: string): Promise<string | null> =>
  view.ask((sought) => document.querySelector(sought)?.textContent ?? null, selector);

/** Waits until it is there. */
async function shown(view: EngineWindow, sought: Sought): Promise<void> {
  await expect
    .poll(() => view.ask(find, sought), { message: JSON.stringify(sought), timeout: 60_000 })
    .not.toBeNull();
}

/** Where it is, once it stands still. */
async function placeOf(view: EngineWindow, sought: Sought): Promise<Place> {
  let last: Place | null = null;
  let place: Place | null = null;
  await expect
    .poll(
      async () => {
        last = place;
        place = await view.ask(find, sought);
        return place !== null && last !== null && Math.hypot(place.x - last.x, place.y - last.y) < 1;
      },
      { message: JSON.stringify(sought), timeout: 60_000 },
    )
    .toBe(true);
  return place as unknown as Place;
}

const click = async (view: EngineWindow, sought: Sought): Promise<void> =>
  view.pull([await placeOf(view, sought)]);

/** Runs in the page: the middle of the first that fits and is shown, brought into view. */
function find({ selector, text }: Sought): Place | null {
  const fits = [...document.querySelectorAll(selector)].find(
    (each) =>
      (text === undefined || each.textContent?.trim() === text) &&
      each.getBoundingClientRect().width > 0 &&
      !each.matches(':disabled'),
  );
  if (!fits) return null;
  fits.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  const { x, y, width, height } = fits.getBoundingClientRect();
  return { x: x + width / 2, y: y + height / 2 };
}

/** The file that was saved, once it is whole; it is taken out of the folder. */
async function downloaded(folder: string): Promise<Uint8Array> {
  const files = (): string[] => readdirSync(folder).filter((name) => !name.startsWith('.'));
  const bytes = (): Uint8Array => {
    const [name = '', ...others] = files();
    expect(others).toEqual([]);
    return name.endsWith('.pdf') ? new Uint8Array(readFileSync(join(folder, name))) : new Uint8Array();
  };
  await expect
    .poll(() => new TextDecoder('latin1').decode(bytes().slice(-8)).trim(), { timeout: 60_000 })
    .toMatch(/%%EOF$/);
  const whole = bytes();
  for (const name of files()) rmSync(join(folder, name));
  return whole;
}
