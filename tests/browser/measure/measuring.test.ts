// Numbers typed as fast as a newcomer types land where they were typed, by Enter and by Tab, and a pasted list fills the fields.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { MEASUREMENT_WORDS } from '../../../src/document';
import { MEASUREMENTS, type MeasurementName } from '../../../src/engine';
import { NINE_NUMBERS } from '../../support/bodies/nineNumbers';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

/** Pace of a newcomer's keys, ms. */
const PACE = { delay: 60 };
const DESK = { viewport: { width: 1440, height: 900 } };
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

const ORDER = (['round', 'down', 'fit', 'across', 'shoulders'] as const).flatMap((group) =>
  MEASUREMENTS.filter((each) => each.group === group).map(({ name }) => name),
);
const NEEDED = new Set(MEASUREMENTS.filter(({ needed }) => needed).map(({ name }) => name));

/** A number for each measurement, with spaces, fractions and decimals; unlike each other. */
const inInches = (i: number): string => ['34 1/2', '36 3/4', '31.5', '29½', '37 5/16'][i % 5] ?? '';
const inCm = (i: number): string => `${60 + i},${i % 10}`;

const values = (page: Page): Promise<Record<string, string>> =>
  page
    .locator('.tape-row[data-field]')
    .evaluateAll((rows) =>
      Object.fromEntries(
        rows.map((row) => [row.getAttribute('data-field'), row.querySelector('input')?.value]),
      ),
    );

async function ownClient(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Begin with your own client' }).click();
  await page.locator('.needed').first().waitFor();
  await page.getByRole('checkbox', { name: 'Front arcs' }).check();
  await page.getByRole('checkbox', { name: 'Shoulders and arms' }).check();
}

const first = (page: Page) => page.getByRole('textbox', { name: /^Over-bust girth/ });

describe('typing the tape’s numbers', () => {
  // Neither key hangs on the unit, nor on the screen; Tab with inches is below.
  it.each([
    ['Enter', 'in', PHONE],
    ['Tab', 'cm', DESK],
  ] as const)('all of them by %s, in %s', async (key, unit, options) => {
    const visitor = await visit('measure', options);
    const { page } = visitor;
    await ownClient(page);
    if (unit === 'cm') await page.getByRole('radio', { name: 'cm' }).check({ force: true });
    await first(page).click();
    const typed: Record<string, string> = {};
    for (const [i, name] of ORDER.entries()) {
      const text = unit === 'in' ? inInches(i) : inCm(i);
      typed[name] = text;
      await page.keyboard.type(text, PACE);
      await page.keyboard.press(key, PACE);
    }
    expect(await values(page)).toEqual(typed);
    if (key === 'Enter')
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.textContent))
        .toContain('Next: Draft');
    expectQuiet(visitor);
  });

  it('the nine that are needed, leaving the others by Tab, and the way on says what is missing', async () => {
    const { page } = await visit('measure', DESK);
    await page.getByRole('button', { name: 'Begin with your own client' }).click();
    const next = page.getByRole('button', { name: 'Next: Draft' });
    await page.getByText('9 numbers are still needed').waitFor();
    await next.click();
    const focused = (): Promise<string | undefined> =>
      page.evaluate(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field') ?? '');
    expect(await focused()).toBe('bust');
    await first(page).click();
    const body: Partial<Record<MeasurementName, string>> = NINE_NUMBERS;
    for (const name of ORDER.slice(0, ORDER.indexOf('frontOverBustArc'))) {
      expect(await focused()).toBe(name);
      if (NEEDED.has(name)) await page.keyboard.type(body[name] ?? '', PACE);
      await page.keyboard.press('Tab');
    }
    await page.getByText('9 of 28 taken, all 9 that are needed').waitFor();
    await next.click();
    await page.locator('.draft-canvas').waitFor();
  });
});

describe('a pasted list', () => {
  it('fills the fields in order, says so, and is undone as one', async () => {
    const visitor = await visit('measure', DESK);
    const { page, context } = visitor;
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await ownClient(page);
    await page.evaluate(() => navigator.clipboard.writeText('35 1/2\n37\n31¾\nabout 30\n\n40\n10.75\n'));
    await first(page).click();
    await page.keyboard.press('Control+v');
    await page.getByText('5 numbers were pasted, from over-bust girth to neck to bust point.').waitFor();
    await page.getByText('No length, and left out: “about 30”.').waitFor();
    expect(await values(page)).toMatchObject({
      overBust: '35 1/2',
      bust: '37',
      underBust: '31 3/4',
      waist: '',
      highHip: '',
      hip: '40',
      neckToBust: '10 3/4',
    });
    await page.locator('.pasted').getByRole('button', { name: 'Undo' }).click();
    expect(Object.values(await values(page)).filter((text) => text !== '')).toEqual([]);
    expectQuiet(visitor);
  });
});

describe('the keys of fractions', () => {
  it('write what the number keyboard of a phone has not, the sign too', async () => {
    const { page } = await visit('measure', PHONE);
    await ownClient(page);
    await page.getByRole('checkbox', { name: 'Her two sides differ' }).check();
    await first(page).tap();
    await page.keyboard.type('34', PACE);
    const keys = page.getByRole('toolbar', { name: 'Keys of fractions' });
    await keys.getByRole('button', { name: '1/2', exact: true }).tap();
    expect(await first(page).inputValue()).toBe('34 1/2');
    await keys.getByRole('button', { name: '11/16', exact: true }).tap();
    expect(await first(page).inputValue()).toBe('34 11/16');
    await keys.getByRole('button', { name: 'Next' }).tap();
    const bust = page.getByRole('textbox', { name: /^Bust girth/ });
    expect(await bust.evaluate((field) => field === document.activeElement)).toBe(true);
    await page.getByRole('radio', { name: 'cm' }).check({ force: true });
    const lower = page.getByRole('textbox', { name: /^Right hip line lower by/ });
    await lower.tap();
    await page.keyboard.type('1,2', PACE);
    await keys.getByRole('button', { name: /^Turn the sign over/ }).tap();
    expect(await lower.inputValue()).toBe('-1,2');
  });
});

describe('the room of the rows', () => {
  it.each([
    [1440, 900],
    [1024, 768],
  ])('all numbers, the tall figure and the way on are in view, %i × %i', async (width, height) => {
    const { page } = await visit('measure', { viewport: { width, height } });
    await page.getByRole('textbox', { name: /^Hip girth/ }).click();
    const below = await page
      .locator('.tape-row[data-field], .next-step button, .figure-whole svg')
      .evaluateAll((all) =>
        all
          .filter((each) => each.getBoundingClientRect().bottom > window.innerHeight)
          .map((each) => each.textContent),
      );
    expect(below).toEqual([]);
    const figure = await page.locator('.figure-whole svg').boundingBox();
    if (height === 900) expect(figure?.height).toBeGreaterThan(590);
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(height);
  });

  it('has no button between two numbers in the order of Tab, and Alt with the arrow opens the row’s menu', async () => {
    const { page } = await visit('measure', DESK);
    await first(page).click();
    await page.keyboard.press('Alt+ArrowDown');
    await page.getByRole('menuitem', { name: 'Second reading' }).waitFor();
    await page.keyboard.press('Escape');
    expect(await first(page).evaluate((field) => field === document.activeElement)).toBe(true);
    await page.keyboard.press('Alt+ArrowDown');
    await page.keyboard.press('Enter');
    await page.keyboard.type('35 3/4', PACE);
    await page.keyboard.press('Enter');
    await page.keyboard.type('38', PACE);
    await page.keyboard.press('Enter');
    expect(await values(page)).toMatchObject({ bust: '38' });
    await page.locator('[data-field="overBust"]').getByText(`read twice: 35½, 35¾`).waitFor();
    expect(MEASUREMENT_WORDS.overBust.label).toBe('Over-bust girth');
  });
});
