// The main job in a real browser, as a maker does it: tape, wedges, proof, print, and all of it there again tomorrow.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { expectQuiet, tapHandle, withBrowser } from '../session';

const visit = withBrowser();

/** x in table mm of the outline of a panel at the waist line: its left and its right edge. */
async function edgesAtWaist(page: Page, piece: string): Promise<{ left: number; right: number }> {
  const [d, waist] = await Promise.all([
    page.locator(`.draft-canvas [data-piece="${piece}"]`).getAttribute('d'),
    page.locator('.draft-canvas line.level-waist').getAttribute('y1'),
  ]);
  const points = [...(d ?? '').matchAll(/([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
  const at = points.filter(({ y }) => Math.abs(y - Number(waist)) < 0.02).map(({ x }) => x);
  expect(at).toHaveLength(2);
  return { left: Math.min(...at), right: Math.max(...at) };
}

/** Pulls a handle sideways by mm on the table with a real mouse. */
async function pull(page: Page, handle: string, mm: number): Promise<void> {
  const box = await page.locator(`[data-handle="${handle}"] .hit-area`).boundingBox();
  const scale = await page.locator('.draft-canvas').evaluate((svg) => {
    const canvas = svg as unknown as SVGSVGElement;
    return canvas.getBoundingClientRect().width / canvas.viewBox.baseVal.width;
  });
  if (!box) throw new Error(`${handle} is not on the table`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 8; i += 1) await page.mouse.move(x + (mm * scale * i) / 8, y + (i % 2));
  await page.mouse.up();
}

const value = (page: Page, label: string): Promise<string> =>
  page.getByLabel(label, { exact: true }).inputValue();

describe('the main path', () => {
  it('takes measurements, pulls wedges, proves, prints, and finds everything again after a reload', async () => {
    const visitor = await visit('measure');
    const { page } = visitor;

    await page.getByRole('textbox', { name: 'Waist girth' }).fill('28-1/2"');
    await page.getByRole('textbox', { name: 'Waist girth' }).press('Enter');
    await page.getByRole('link', { name: 'Draft', exact: true }).click();
    await expect.poll(() => page.locator('[data-sewn="waist"]').textContent()).toBe('26½');

    // every front wedge by hand, so that the side seam alone answers
    for (const wedge of ['Centre-front', 'Side-front', 'Bust']) {
      await page.getByRole('button', { name: wedge, exact: true }).click();
      await page.getByRole('radio', { name: 'By hand' }).check();
    }
    await page.getByRole('button', { name: 'Bust', exact: true }).click();

    const fromCentre = 'Axis from the centre line at the waist';
    expect(await value(page, fromCentre)).toBe('3 5/8');
    const before = await edgesAtWaist(page, 'front-1');
    await pull(page, 'axis:front-bust', 25.4);
    await expect.poll(() => value(page, fromCentre)).toBe('4 5/8');
    const moved = await edgesAtWaist(page, 'front-1');
    expect(moved.right - before.right).toBeCloseTo(25.4, 1);
    expect(moved.left).toBeCloseTo(before.left, 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => value(page, fromCentre)).toBe('3 5/8');

    const intake = 'Intake at the waist';
    const ledger = page.locator('.ledger [data-level="waist"]');
    const [intakeBefore, side] = [await inches(page, intake), await sideTakes(ledger.textContent())];
    const sideBefore = await edgesAtWaist(page, 'front-3');
    // a leg moves by half of what its wedge takes
    await pull(page, 'leg:front-bust:waist:outer', 12.7);
    await expect
      .poll(async () => Math.abs((await inches(page, intake)) - intakeBefore - 1))
      .toBeLessThan(1 / 16 + 1e-9);
    const more = ((await inches(page, intake)) - intakeBefore) * 25.4;
    const legs = await edgesAtWaist(page, 'front-1');
    const sideAfter = await edgesAtWaist(page, 'front-3');
    expect(Math.abs(legs.right - before.right + more / 2)).toBeLessThan(0.85);
    expect(Math.abs(sideAfter.right - sideBefore.right - more)).toBeLessThan(1.7);
    expect(Math.abs((await sideTakes(ledger.textContent())) - side + more / 25.4)).toBeLessThan(0.13);
    await expect.poll(() => page.locator('[data-sewn="waist"]').textContent()).toBe('26½');

    await page.getByRole('link', { name: 'Fit', exact: true }).click();
    await page.getByRole('button', { name: 'Front 1 + 2', exact: true }).hover();
    await expect.poll(() => page.locator('.closed-up .edge.pointed-out').count()).toBe(2);
    await page.mouse.move(5, 5);
    await expect.poll(() => page.locator('.closed-up .edge.pointed-out').count()).toBe(0);
    await page.getByRole('button', { name: 'Side seam', exact: true }).click();
    await expect.poll(() => page.locator('.closed-up .edge.pointed-out').count()).toBe(2);

    await page.getByRole('link', { name: 'Cut', exact: true }).click();
    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download the PDF' }).click();
    const file = await asked;
    expect(file.suggestedFilename()).toBe('Wren-Abernathy-Winter-ball-bodice-Letter.pdf');
    const bytes = await downloadBytes(file);
    expect(new TextDecoder().decode(bytes.subarray(0, 5))).toBe('%PDF-');
    expect(bytes.length).toBeGreaterThan(5_000);

    await page.getByRole('link', { name: 'Draft', exact: true }).click();
    await page.getByRole('button', { name: 'Bust', exact: true }).click();
    const kept = await value(page, intake);
    await page.reload();
    await page.getByRole('button', { name: 'Bust', exact: true }).click();
    expect(await value(page, intake)).toBe(kept);
    await page.getByRole('link', { name: 'Measure', exact: true }).click();
    expect(await value(page, 'Waist girth')).toBe('28 1/2');
    expectQuiet(visitor);
  });

  it('moves a handle by keyboard, and Escape or Undo puts it back', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    const axis = page.getByRole('slider', { name: 'Bust wedge: distance from the centre line' });
    await axis.focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => axis.getAttribute('aria-valuetext')).toBe('3¹¹⁄₁₆ in');
    await page.keyboard.press('Shift+ArrowLeft');
    await expect.poll(() => axis.getAttribute('aria-valuetext')).toBe('3⁷⁄₁₆ in');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => axis.getAttribute('aria-valuetext')).toBe('3⅝ in');
    expectQuiet(visitor);
  });

  it('pulls with a finger', async () => {
    const visitor = await visit('draft', { viewport: { width: 1024, height: 768 }, hasTouch: true });
    const { page, context } = visitor;
    // by its id: a wedge that is moved off the bust point is called by another name
    const axis = page.locator('[data-handle="axis:front-bust"]');
    const box = await axis.boundingBox();
    if (!box) throw new Error('no handle');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const before = Number(await axis.getAttribute('aria-valuenow'));
    const finger = await context.newCDPSession(page);
    await tapHandle(page, finger, 'axis:front-bust');
    await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
    for (let i = 1; i <= 6; i += 1)
      await finger.send('Input.dispatchTouchEvent', {
        type: 'touchMove',
        touchPoints: [{ x: x + 5 * i, y }],
      });
    await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await expect
      .poll(async () => Number(await axis.getAttribute('aria-valuenow')))
      .toBeGreaterThan(before + 10);
    expectQuiet(visitor);
  });
});

/** A field's length in inches: whole, fraction or decimal. */
async function inches(page: Page, label: string): Promise<number> {
  const parts = (await value(page, label)).split(' ').map((part) => {
    const [above, below] = part.split('/').map(Number);
    return (above ?? Number.NaN) / (below ?? 1);
  });
  return parts.reduce((sum, part) => sum + part, 0);
}

const GLYPHS: Readonly<Record<string, number>> = {
  '½': 8,
  '¼': 4,
  '¾': 12,
  '⅛': 2,
  '⅜': 6,
  '⅝': 10,
  '⅞': 14,
};

/** What a ledger row says the side seam takes, in inches. */
async function sideTakes(row: Promise<string | null>): Promise<number> {
  const [, text = ''] = /side seams (\S+)/.exec((await row) ?? '') ?? [];
  const whole = Number(/\d+/.exec(text.replace(/[⁰¹²³⁴-⁹]+⁄.*/u, ''))?.[0] ?? 0);
  const glyph = [...text].map((each) => GLYPHS[each] ?? 0).reduce((sum, each) => sum + each, 0);
  const script = /([⁰¹²³⁴-⁹]+)⁄/u.exec(text)?.[1] ?? '';
  const sixteenths = Number([...script].map((each) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(each)).join('') || 0);
  return (text.startsWith('−') ? -1 : 1) * (whole + (glyph + sixteenths) / 16);
}
