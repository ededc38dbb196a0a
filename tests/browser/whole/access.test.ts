// Every step for every hand and eye: axe, reach of targets, focus, and room, in the light and in the dark and on three screens.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { foundByAxe } from '../axe';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser();

type Step = 'measure' | 'draft' | 'fit' | 'cut';
const HEADINGS = { measure: 'Measure', draft: 'Draft', fit: 'Fit', cut: 'Cut' } as const;

/** What is there once a step is drawn. */
const DRAWN = {
  measure: '.tape-form',
  draft: '.draft-canvas',
  fit: '.closed-up',
  cut: '.cut-step .plan-drawing',
} as const;

/**
 * Room for targets and sideways scroll hang on the screen and are asked on each. What axe asks hangs on what is there, and what a
 * tablet shows is on a desk or on a phone too; colours hang on the theme, and are asked for in the dark where a screen is
 * narrowest. contrast.test.ts reads them on a wide one.
 */
const SCREENS = [
  { name: 'a desk', axe: 'in the light', viewport: { width: 1440, height: 900 }, hasTouch: false },
  { name: 'a tablet', axe: 'not', viewport: { width: 1024, height: 768 }, hasTouch: true },
  {
    ...{ name: 'a phone', axe: 'in both', viewport: { width: 390, height: 844 } },
    ...{ hasTouch: true, isMobile: true },
  },
] as const;

/** What axe finds on a screen. */
const axeOn = async (page: Page, when: (typeof SCREENS)[number]['axe']): Promise<string[]> =>
  when === 'not' ? [] : foundByAxe(page, when === 'in both');

async function go(page: Page, step: Step): Promise<void> {
  await page.getByRole('link', { name: HEADINGS[step], exact: true }).click();
  await page
    .getByRole('main')
    .and(page.locator(`[data-step="${step}"]`))
    .waitFor();
  // A step is fetched when it is first asked for: there is nothing to look at before it is drawn.
  await page.locator(DRAWN[step]).waitFor();
}

/** Goes from Cut to sizes and casts, with everything unfolded. */
async function openSizes(page: Page): Promise<void> {
  await page.locator('.sizes-card summary').click();
  await page.getByRole('button', { name: 'Open sizes and casts' }).click();
  await page.getByRole('dialog', { name: 'Sizes and casts' }).waitFor();
  await page.locator('.bodies tbody tr .met').last().waitFor();
  await page.locator('.size-steps').waitFor();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.sizes details')) fold.open = true;
  });
}

const pageWidth = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);

/** The element that has the focus, with its text. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent}`);

/** What can be set or pressed, as a screen reader calls it. */
const ROLES = new Set(['button', 'checkbox', 'combobox', 'radio', 'slider', 'textbox']);

/** Controls smaller than `least` px either way, with their size. */
const tooSmall = (page: Page, least: number): Promise<string[]> =>
  page.evaluate((px) => {
    const own = 'button, select, input, summary, [role="slider"] .hit-area, nav a';
    return [...document.querySelectorAll(own)].flatMap((element) => {
      // a tick or a dot takes the whole of its label
      const target = element.matches('input[type="radio"], input[type="checkbox"]')
        ? (element.closest('label') ?? element)
        : element;
      const { width, height } = target.getBoundingClientRect();
      if (width === 0 || (width >= px - 0.5 && height >= px - 0.5)) return [];
      return [`${target.outerHTML.slice(0, 90)} is ${width.toFixed(1)} × ${height.toFixed(1)}`];
    });
  }, least);

describe.each(SCREENS)('on $name', ({ name: _, axe, ...rest }) => {
  const { viewport, hasTouch } = rest;
  it('has nothing that axe finds, gives every target its room, never scrolls sideways, focuses the heading of a step and names all apart', {
    timeout: 180_000,
  }, async () => {
    const visitor = await visit('measure', rest);
    const { page, context } = visitor;
    const least = hasTouch ? 44 : 24;
    const cdp = await context.newCDPSession(page);
    for (const step of ['draft', 'fit', 'cut', 'measure'] as const) {
      await go(page, step);
      await expect
        .poll(() => focused(page), { message: `${step}: the focus is on its heading` })
        .toBe(`H1 ${HEADINGS[step]}`);
      expect.soft(await axeOn(page, axe), `${step}: axe`).toEqual([]);
      expect.soft(await tooSmall(page, least), `${step}: targets`).toEqual([]);
      expect.soft(await pageWidth(page), `${step}: width`).toBeLessThanOrEqual(viewport.width);
      const { nodes } = await cdp.send('Accessibility.getFullAXTree');
      const names = nodes
        .filter(({ ignored, role }) => !ignored && ROLES.has(String(role?.value)))
        .map(({ role, name }) => `${role?.value} ${name?.value}`);
      expect.soft(names.length, `${step}: names`).toBeGreaterThan(10);
      expect
        .soft(
          names.filter((name, i) => names.indexOf(name) < i),
          `${step}: names that are given twice`,
        )
        .toEqual([]);
    }
    await page.getByRole('button', { name: /client book$/ }).click();
    await page.getByRole('dialog', { name: 'Client book' }).waitFor();
    expect.soft(await axeOn(page, axe), 'client book').toEqual([]);
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Help', exact: true }).click();
    await page.getByRole('dialog', { name: 'Help' }).locator('.licences summary').first().waitFor();
    expect.soft(await axeOn(page, axe), 'help: axe').toEqual([]);
    expect.soft(await tooSmall(page, least), 'help: targets').toEqual([]);
    await page.getByRole('button', { name: 'Close' }).click();
    await go(page, 'cut');
    await openSizes(page);
    expect.soft(await axeOn(page, axe), 'sizes and casts: axe').toEqual([]);
    expect.soft(await tooSmall(page, least), 'sizes and casts: targets').toEqual([]);
    const across = await page
      .locator('.dialog:has(.sizes)')
      .evaluate((dialog) => dialog.scrollWidth - dialog.clientWidth);
    expect.soft(across, 'sizes and casts: width').toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Close' }).click();
    if (axe !== 'not') {
      await go(page, 'draft');
      await page.getByRole('button', { name: 'Style book' }).click();
      await page.getByRole('button', { name: 'Keep the style' }).click();
      await page.getByRole('button', { name: 'Write over it' }).waitFor();
      expect.soft(await axeOn(page, axe), 'style book').toEqual([]);
    }
    expectQuiet(visitor);
  });

  it('keeps its header as it is under a long name', async () => {
    const { page } = await visit('measure', rest);
    const height = async (): Promise<number | undefined> =>
      (await page.locator('header.shell').boundingBox())?.height;
    const before = await height();
    const name = page.getByRole('textbox', { name: 'Client', exact: true });
    await name.fill('Konstantina-Alexandra Papadopoulou-Featherstonehaugh of Upper Slaughter');
    await name.press('Enter');
    await page.getByRole('button', { name: /^Konstantina.* client book$/ }).waitFor();
    expect(await height()).toBe(before);
    expect(await pageWidth(page)).toBeLessThanOrEqual(viewport.width);
  });
});

// They are the same on any screen, so that axe is asked once.
describe.each([{ ...SCREENS[0], axe: 'not' } as const, SCREENS[2]])(
  'the forms of the fittings on $name',
  ({ name: _, axe, ...rest }) => {
    const { viewport, hasTouch } = rest;
    it('have nothing that axe finds, and room for every target', { timeout: 180_000 }, async () => {
      const { page } = await visit('fit', rest);
      for (const kind of [
        'Length',
        'Edge',
        'Bust point',
        'Gaps of the lacing',
        'What do you see?',
        'Seam or dart',
      ]) {
        await page.getByRole('button', { name: kind, exact: true }).click();
        await page.locator('.alteration-form').waitFor();
        if (kind === 'Seam or dart') await page.getByRole('textbox', { name: /^On each edge/ }).fill('3/16');
        expect(await axeOn(page, axe), kind).toEqual([]);
        expect(await tooSmall(page, hasTouch ? 44 : 24), kind).toEqual([]);
        if (kind !== 'Seam or dart') await page.getByRole('button', { name: 'Cancel' }).click();
      }
      await page.getByRole('button', { name: 'Make it' }).click();
      await page.locator('.alterations li').waitFor();
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll<HTMLDetailsElement>('.fittings details'))
          fold.open = true;
      });
      expect(await axeOn(page, axe), 'the list').toEqual([]);
      expect(await pageWidth(page)).toBeLessThanOrEqual(viewport.width);
    });
  },
);

describe('the way through', () => {
  it('shows where the focus is on everything Tab comes to', async () => {
    const { page } = await visit('draft');
    await page.locator('.draft-canvas').waitFor();
    let [stops, unseen] = [0, [] as string[]];
    for (; stops < 80; stops += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const element = document.activeElement;
        if (!element || element === document.body) return null;
        const shown = element.matches('[role="slider"]')
          ? (element.querySelector('.hit-area') ?? element)
          : element.matches('input[type="radio"]')
            ? (element.nextElementSibling ?? element)
            : element;
        const { outlineStyle, outlineWidth, stroke, strokeWidth } = getComputedStyle(shown);
        const outlined = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
        const stroked =
          shown.matches('.hit-area') && stroke !== 'none' && Number.parseFloat(strokeWidth) >= 2;
        return { seen: outlined || stroked, what: element.outerHTML.slice(0, 80) };
      });
      if (!at) break;
      if (!at.seen) unseen = [...unseen, at.what];
    }
    expect(stops).toBeGreaterThan(20);
    expect(unseen).toEqual([]);
  });

  it.each([
    [1440, 900],
    [800, 700],
  ])('leaves nothing that Tab goes back to under the header, %i × %i', async (width, height) => {
    const { page } = await visit('measure', { viewport: { width, height } });
    await page.getByRole('button', { name: 'Next: Draft' }).focus();
    const hidden: string[] = [];
    for (let i = 0; i < 24; i += 1) {
      await page.keyboard.press('Shift+Tab');
      const at = await page.evaluate(() => {
        const [element, header] = [document.activeElement, document.querySelector('header')];
        if (!element || header?.contains(element)) return null;
        const under = element.getBoundingClientRect().top < (header?.getBoundingClientRect().bottom ?? 0);
        return under ? element.outerHTML.slice(0, 80) : null;
      });
      if (at) hidden.push(at);
    }
    expect(hidden).toEqual([]);
  });

  it.each([
    ['measure', 'Client book', '.open-book'],
    ['measure', 'Help', '.help-button'],
    ['draft', 'Style book', '.style-choice > button'],
    ['draft', 'Real size on this screen', '.table-tools button:has-text("Real size")'],
  ])('gives the focus back when a dialog is left: %s, %s', async (step, name, opener) => {
    const { page } = await visit(step);
    const leave = {
      escape: () => page.keyboard.press('Escape'),
      close: () => page.getByRole('button', { name: 'Close' }).press('Enter'),
    };
    for (const way of ['escape', 'close'] as const) {
      await page.locator(opener).press('Enter');
      const dialog = page.getByRole('dialog', { name });
      await dialog.waitFor();
      await expect.poll(() => dialog.evaluate((each) => each.contains(document.activeElement))).toBe(true);
      await leave[way]();
      await dialog.waitFor({ state: 'detached' });
      expect(await page.locator(opener).evaluate((each) => each === document.activeElement)).toBe(true);
    }
  });

  it('says the consequence of a change aloud', async () => {
    const { page } = await visit('draft');
    const ease = page.getByRole('textbox', { name: 'Ease at the waist' });
    await ease.fill('-3');
    await ease.press('Enter');
    const said = page.locator('.history [role="status"]');
    await expect.poll(() => said.textContent()).toContain('waist laced 26½ in');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => said.textContent()).toContain('waist laced 27½ in');
  });

  it('stands still for those who ask for less motion', async () => {
    const { page } = await visit('draft', { reducedMotion: 'reduce' });
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((element) => {
          const { transitionDuration, animationName } = getComputedStyle(element);
          return (
            animationName !== 'none' ||
            transitionDuration.split(',').some((each) => Number.parseFloat(each) > 0)
          );
        }).length,
    );
    expect(moving).toBe(0);
  });
});
