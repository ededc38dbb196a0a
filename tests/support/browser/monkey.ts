// Random work on the built app by a seed: presses, numbers good and bad, handles pulled and keyed, steps and windows changed.

import type { Locator, Page } from 'playwright-core';
import { chance, pick, type Random, randomFrom, uniform } from '../random';

/** What is pressed, typed into or pulled. Files are left alone, and so is what is downloaded or loads the page. */
const TARGETS =
  'main button, main input, main select, main summary, main [data-handle], header button, header input, header a, .keeping button, dialog button, dialog input, dialog select';
const LEFT_ALONE = /download|backup|pdf|print|file|load|picture|svg|dxf|html/i;

const TEXTS = ['34 1/2', '28', '', '31/2', '9999', '-3', 'abc', '34⅐', '1 3/8', '0', '87,5 cm', '0.0001'];
const KEYS = [
  'ArrowLeft',
  'ArrowRight',
  'ArrowUp',
  'ArrowDown',
  'Escape',
  'Enter',
  'Tab',
  'Control+z',
  'Control+y',
];
const STEPS = ['measure', 'draft', 'fit', 'cut'];
const SIZES = [
  { width: 1440, height: 900 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
];

/** Does so many things to the page; calls back after each, with what was done. */
export async function runMonkey(
  page: Page,
  seed: number,
  count: number,
  after: (did: string) => Promise<void>,
): Promise<void> {
  const random = randomFrom(seed);
  for (let i = 0; i < count; i += 1) await after(await act(page, random));
}

async function act(page: Page, random: Random): Promise<string> {
  if (chance(random, 0.12)) {
    const step = pick(random, STEPS);
    await page.evaluate((name) => {
      window.location.hash = name;
    }, step);
    return `go to ${step}`;
  }
  if (chance(random, 0.03)) {
    await page.reload();
    await page.locator('header.shell').waitFor();
    return 'load the page again';
  }
  if (chance(random, 0.04)) {
    const size = pick(random, SIZES);
    await page.setViewportSize(size);
    return `window ${size.width} × ${size.height}`;
  }
  if (chance(random, 0.15)) {
    const key = pick(random, KEYS);
    await page.keyboard.press(key);
    return `key ${key}`;
  }
  const at = random();
  const target = await page.evaluate(reach, { at, targets: TARGETS, leftAlone: LEFT_ALONE.source });
  if (!target) return 'nothing to press';
  const { x, y, kind, name } = target;
  await page.mouse.move(x, y);
  if (kind === 'handle') {
    await page.mouse.down();
    await page.mouse.move(x + uniform(random, -80, 80), y + uniform(random, -80, 80), { steps: 4 });
    await page.mouse.up();
    return `pull ${name}`;
  }
  if (kind === 'choice') {
    // A list that is open lies outside the page, so that it is chosen from by keys.
    await page.evaluate(
      (found) => document.querySelectorAll<HTMLElement>('select')[found]?.focus(),
      target.at,
    );
    const key = pick(random, ['ArrowDown', 'ArrowUp', 'End', 'Home']);
    await page.keyboard.press(key);
    return `choose by ${key} of ${name}`;
  }
  await page.mouse.click(x, y);
  if (kind !== 'text') return `press ${name}`;
  const text = pick(random, TEXTS);
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Delete');
  await page.keyboard.type(text);
  const end = pick(random, ['Enter', 'Tab', 'Escape', '']);
  if (end !== '') await page.keyboard.press(end);
  return `type “${text}” ${end} into ${name}`;
}

/** Runs in the page: one of what can be pressed now, brought into view, and where it is. */
function reach({ at, targets, leftAlone }: { at: number; targets: string; leftAlone: string }) {
  const dialog = document.querySelector('dialog[open]');
  const nameOf = (element: Element): string =>
    element.getAttribute('aria-label') ??
    element.getAttribute('data-handle') ??
    (element instanceof HTMLInputElement
      ? (element.labels?.[0]?.textContent ?? '')
      : (element.textContent ?? ''));
  const all = [...(dialog ?? document).querySelectorAll(targets)].filter(
    (element) =>
      element.checkVisibility() &&
      !element.matches(':disabled, [type="file"], [type="date"]') &&
      !new RegExp(leftAlone, 'i').test(nameOf(element)),
  );
  const element = all[Math.floor(at * all.length)];
  if (!element) return null;
  element.scrollIntoView({ block: 'center', inline: 'center' });
  const { x, y, width, height } = element.getBoundingClientRect();
  const kind = element.matches('[data-handle]')
    ? ('handle' as const)
    : element.matches('input[type="text"]')
      ? ('text' as const)
      : element instanceof HTMLSelectElement
        ? ('choice' as const)
        : ('press' as const);
  return {
    x: x + width / 2,
    y: y + height / 2,
    kind,
    name: nameOf(element).trim().slice(0, 60),
    at: [...document.querySelectorAll('select')].indexOf(element as HTMLSelectElement),
  };
}

/** Presses Undo or Redo until there is nothing more, or so many times; gives how often. */
export async function pressAll(
  page: Page,
  word: 'Undo' | 'Redo',
  most = Number.POSITIVE_INFINITY,
): Promise<number> {
  const button = page.locator('.history button', { hasText: word });
  let times = 0;
  while (times < most && (await button.isEnabled())) {
    await button.click();
    times += 1;
  }
  return times;
}

/** Marks that follow what was done and stay when it is undone: what was printed and laid, and when it was changed. */
const NOT_UNDONE: ReadonlySet<string> = new Set(['lays', 'prints', 'changed']);

/** Closes what is open, the uppermost first, as Escape does: no press reaches what lies under another. */
async function closeAll(page: Page): Promise<void> {
  while ((await page.locator('dialog[open]').count()) > 0) {
    await page.evaluate(() => {
      const uppermost = [...document.querySelectorAll('dialog[open]')].at(-1);
      uppermost?.dispatchEvent(new Event('cancel', { cancelable: true }));
    });
    await page.waitForTimeout(50);
  }
}

/** Whether something comes into view after a press. */
const comes = (wanted: Locator): Promise<boolean> =>
  wanted.waitFor({ timeout: 5000 }).then(
    () => true,
    () => false,
  );

/** Closes what is open and gives the book, as a backup has it, without what no undo takes back. */
export async function bookOf(page: Page): Promise<unknown> {
  await closeAll(page);
  const backup = page.getByRole('dialog').getByRole('button', { name: 'Download a backup' });
  // Where a menu is open, the first press only closes it; on a busy machine the book is there some time after the press.
  do if ((await page.locator('dialog[open]').count()) === 0) await page.locator('.open-book').click();
  while (!(await comes(backup)));
  const [asked] = await Promise.all([page.waitForEvent('download'), backup.click()]);
  await closeAll(page);
  const chunks: Buffer[] = [];
  for await (const chunk of await asked.createReadStream()) chunks.push(chunk as Buffer);
  const read = JSON.parse(Buffer.concat(chunks).toString('utf8'), (key, value) =>
    NOT_UNDONE.has(key) ? undefined : value,
  );
  return read.book ?? read;
}
