// The cutting table under mouse, wheel and fingers: moved, scaled, fitted, compared, and a wedge added where one clicks.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { expectQuiet, tapHandle, withBrowser } from '../session';

const visit = withBrowser();

interface Seen {
  readonly left: number;
  readonly top: number;
  readonly pxPerMm: number;
}

const seen = (page: Page): Promise<Seen> =>
  page.locator('.draft-canvas').evaluate((svg) => {
    const { x, y, width } = (svg as unknown as SVGSVGElement).viewBox.baseVal;
    return { left: x, top: y, pxPerMm: svg.getBoundingClientRect().width / width };
  });

/** Bare paper of the table near its top-left corner, on the screen. */
async function paper(page: Page): Promise<{ x: number; y: number }> {
  const box = await page.locator('.draft-canvas').boundingBox();
  if (!box) throw new Error('no table');
  return { x: box.x + box.width / 2, y: box.y + 12 };
}

describe('the table in hand', () => {
  it('makes itself ready for a pull without a trace', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    await page.locator('.draft-canvas').waitFor();
    const changes = await page.locator('main').evaluate(
      (main) =>
        new Promise<string[]>((settled) => {
          const seenChanges: string[] = [];
          const watch = new MutationObserver((all) =>
            seenChanges.push(...all.map(({ type, attributeName }) => `${type} ${attributeName ?? ''}`)),
          );
          watch.observe(main, { subtree: true, attributes: true, childList: true, characterData: true });
          setTimeout(() => settled(seenChanges), 2500);
        }),
    );
    expect(changes).toEqual([]);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    expectQuiet(visitor);
  });

  it('moves with a pull on the paper, and is brought back whole', async () => {
    const visitor = await visit('draft');
    const { page } = visitor;
    const at = await paper(page);
    const before = await seen(page);
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x + 50, at.y + 30, { steps: 5 });
    await page.mouse.up();
    const after = await seen(page);
    expect(after.left).toBeCloseTo(before.left - 50 / before.pxPerMm, 1);
    expect(after.top).toBeCloseTo(before.top - 30 / before.pxPerMm, 1);
    await page.getByRole('button', { name: 'Whole drawing' }).click();
    expect(await seen(page)).toEqual(before);
    expectQuiet(visitor);
  });

  it('scales about the pointer with the wheel, and the ledger follows its lines', async () => {
    const { page } = await visit('draft');
    const waist = page.locator('.draft-canvas line.level-waist');
    // The box of a line has its stroke in it, which does not grow with the zoom: its middle is the line.
    const middle = async (): Promise<number> => {
      const box = await waist.boundingBox();
      return box ? box.y + box.height / 2 : Number.NaN;
    };
    const at = await waist.boundingBox();
    if (!at) throw new Error('no waist line');
    const line = await middle();
    const before = await seen(page);
    await page.mouse.move(at.x + at.width / 2, line);
    await page.mouse.wheel(0, -240);
    await expect.poll(async () => (await seen(page)).pxPerMm).toBeGreaterThan(before.pxPerMm * 1.2);
    expect(await middle()).toBeCloseTo(line, 0);
    expect(await page.evaluate(() => window.scrollY)).toBe(0);
  });

  it('is pinched by two fingers', async () => {
    const { page, context } = await visit('draft', {
      viewport: { width: 1024, height: 768 },
      hasTouch: true,
    });
    const at = await paper(page);
    const before = await seen(page);
    const hand = await context.newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number) =>
      hand.send('Input.dispatchTouchEvent', {
        type,
        touchPoints:
          type === 'touchEnd'
            ? []
            : [
                { x: at.x - apart, y: at.y + 20, id: 1 },
                { x: at.x + apart, y: at.y + 20, id: 2 },
              ],
      });
    await touch('touchStart', 40);
    for (const apart of [50, 60, 70, 80]) await touch('touchMove', apart);
    await touch('touchEnd', 80);
    await expect.poll(async () => (await seen(page)).pxPerMm / before.pxPerMm).toBeCloseTo(2, 1);
  });

  it('brings a handle into view that the keyboard comes to', async () => {
    const { page } = await visit('draft');
    for (let i = 0; i < 6; i += 1) await page.getByRole('button', { name: 'Zoom in' }).click();
    await page
      .getByRole('slider', { name: 'Top edge above its usual place, ½ in under the over-bust line' })
      .focus();
    // the focus is seen from a key on
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+Tab');
    const [area, frame] = await Promise.all([
      page.locator('[data-handle="edge:top"] .hit-area').boundingBox(),
      page.locator('.table-frame').boundingBox(),
    ]);
    expect(area?.x).toBeGreaterThanOrEqual(frame?.x ?? Number.POSITIVE_INFINITY);
    expect(area?.y).toBeGreaterThanOrEqual(frame?.y ?? Number.POSITIVE_INFINITY);
  });

  it('calls a wedge by its name for as long as it is pulled, and by its new place when it is let go', async () => {
    const { page } = await visit('draft');
    const axis = page.locator('[data-handle="axis:front-bust"]');
    const box = await axis.locator('.hit-area').boundingBox();
    if (!box) throw new Error('no handle');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const name = (): Promise<string | null> => axis.getAttribute('aria-label');
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 70, y, { steps: 6 });
    // the cards follow when the pull rests
    await page.waitForTimeout(700);
    expect(await name()).toBe('Bust wedge: distance from the centre line');
    expect(await page.getByRole('heading', { name: 'Bust wedge' }).count()).toBe(1);
    await page.mouse.up();
    await expect.poll(name).toBe('Inner front wedge: distance from the centre line');
    await page.getByRole('heading', { name: 'Inner front wedge' }).waitFor();
    await page.getByRole('button', { name: /^Undo: bust wedge/ }).waitFor();
  });

  it.each([
    ['keeps where a pull was let go', 'release'],
    ['forgets a pull that is broken off', 'Escape'],
  ])('%s, on a machine that cannot follow', async (_, end) => {
    const { page, context } = await visit('draft');
    const handle = page.locator('[data-handle="axis:front-bust"]');
    const area = await handle.locator('.hit-area').boundingBox();
    if (!area) throw new Error('no hit area');
    const [x, y] = [area.x + area.width / 2, area.y + area.height / 2];
    const before = Number(await handle.getAttribute('aria-valuenow'));
    const { pxPerMm } = await seen(page);
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 12 });
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 1; i <= 10; i += 1) await page.mouse.move(x + 4 * i, y);
    if (end === 'Escape') await page.keyboard.press('Escape');
    await page.mouse.up();
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const undo = page.getByRole('button', { name: 'Undo' });
    if (end === 'Escape') {
      expect(await undo.isDisabled()).toBe(true);
      await page.waitForTimeout(300);
      expect(Number(await handle.getAttribute('aria-valuenow'))).toBe(before);
      return;
    }
    expect(await undo.isDisabled()).toBe(false);
    const after = Number(await handle.getAttribute('aria-valuenow'));
    // to the line of the grid nearest to 40 px from where it was pressed
    expect(Math.abs(after - before - 40 / pxPerMm)).toBeLessThan(25.4 / 16 + 0.1);
    const sewn = page.locator('[data-sewn="waist"]');
    const kept = await sewn.textContent();
    await page.reload();
    await handle.waitFor();
    expect(Number(await handle.getAttribute('aria-valuenow'))).toBe(after);
    expect(await sewn.textContent()).toBe(kept);
  });

  it('says the number and the panels on both sides under a pull, and is drawn to the bust-point line', async () => {
    const { page } = await visit('draft');
    const axis = page.locator('[data-handle="axis:front-bust"] .hit-area');
    const box = await axis.boundingBox();
    if (!box) throw new Error('no handle');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 30, y, { steps: 4 });
    const tooltip = page.locator('.value-tooltip');
    await expect.poll(() => tooltip.textContent()).toMatch(/in◂ Front 1 .+ in · Front 2 .+ in ▸$/);
    await page.mouse.move(x + 3, y, { steps: 4 });
    await expect.poll(() => tooltip.textContent()).toContain('3⅝ in, on the bust-point line');
    await page.keyboard.down('Alt');
    await page.mouse.move(x + 4, y);
    await expect.poll(() => tooltip.textContent()).not.toContain('bust-point line');
    await page.keyboard.up('Alt');
    await page.mouse.up();
  });

  it.each([
    { width: 1440, height: 900, hasTouch: false },
    { width: 1024, height: 768, hasTouch: true },
    { width: 390, height: 844, hasTouch: true },
  ])('says it off what is pulled and watched, $width wide', async ({ width, height, hasTouch }) => {
    const { page, context } = await visit('draft', { viewport: { width, height }, hasTouch });
    const hand = await context.newCDPSession(page);
    const press = (type: 'Start' | 'Move' | 'End', x: number, y: number) =>
      hasTouch
        ? hand.send('Input.dispatchTouchEvent', {
            type: `touch${type}`,
            touchPoints: type === 'End' ? [] : [{ x, y }],
          })
        : hand.send('Input.dispatchMouseEvent', {
            type: type === 'Start' ? 'mousePressed' : type === 'Move' ? 'mouseMoved' : 'mouseReleased',
            x,
            y,
            button: 'left',
            buttons: type === 'End' ? 0 : 1,
            clickCount: 1,
          });
    for (const [id, dx, dy] of [
      ['axis:front-bust', -12, 0],
      ['leg:front-bust:waist:outer', 10, 0],
      ['edge:top', 0, 12],
      ['node:top:centreFront', 0, 12],
    ] as const) {
      const mark = page.locator(`[data-handle="${id}"] .mark`);
      // The first touch of a finger chooses, the second pulls.
      if (hasTouch) await tapHandle(page, hand, id);
      const box = await mark.boundingBox();
      if (!box) throw new Error(`${id} is not on the table`);
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await press('Start', x, y);
      for (let i = 1; i <= 4; i += 1) await press('Move', x + (dx * i) / 4, y + (dy * i) / 4);
      const tooltip = await page.locator('.value-tooltip').boundingBox();
      const [held, waist] = [
        await mark.boundingBox(),
        await page.locator('.level-waist').first().boundingBox(),
      ];
      if (!tooltip || !held || !waist) throw new Error(`nothing is said of ${id}`);
      expect(tooltip.x).toBeGreaterThanOrEqual(0);
      expect(tooltip.x + tooltip.width).toBeLessThanOrEqual(width);
      expect(tooltip.y).toBeGreaterThanOrEqual(0);
      expect(tooltip.y + tooltip.height).toBeLessThanOrEqual(height);
      const apart =
        tooltip.x > held.x + held.width ||
        tooltip.x + tooltip.width < held.x ||
        tooltip.y > held.y + held.height ||
        tooltip.y + tooltip.height < held.y;
      expect(apart, id).toBe(true);
      // the widths of the panels beside a wedge are read along the waist
      if (id.includes('bust'))
        expect(tooltip.y < waist.y && tooltip.y + tooltip.height > waist.y, id).toBe(false);
      // a finger hides what is right below it
      if (hasTouch && tooltip.x < x && tooltip.x + tooltip.width > x)
        expect(tooltip.y, id).toBeLessThan(y + dy);
      await press('End', x + dx, y + dy);
      await page.getByRole('button', { name: /^Undo/ }).click();
    }
  });

  it('takes the nearest of the handles whose hit areas overlap under a finger', async () => {
    const { page, context } = await visit('draft', { viewport: { width: 390, height: 844 }, hasTouch: true });
    const finger = await context.newCDPSession(page);
    for (const id of ['edge:top', 'node:top:centreFront']) {
      const handle = page.locator(`[data-handle="${id}"]`);
      const box = await handle.locator('.hit-area').boundingBox();
      if (!box) throw new Error(`${id} is not on the table`);
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const before = await handle.getAttribute('aria-valuenow');
      await tapHandle(page, finger, id);
      await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
      for (let i = 1; i <= 5; i += 1)
        await finger.send('Input.dispatchTouchEvent', {
          type: 'touchMove',
          touchPoints: [{ x, y: y + 6 * i }],
        });
      await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      await expect.poll(() => handle.getAttribute('aria-valuenow')).not.toBe(before);
      expect(await page.evaluate(() => document.activeElement?.getAttribute('data-handle'))).toBe(id);
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => handle.getAttribute('aria-valuenow')).toBe(before);
    }
  });

  it('leaves adding a wedge by Escape, with nothing added', async () => {
    const { page } = await visit('draft');
    const add = page.getByRole('button', { name: 'Add a wedge here' });
    await add.click();
    await page.getByText('Press on the panel that the new wedge is to part').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => add.getAttribute('aria-pressed')).toBe('false');
    const table = await page.locator('.draft-canvas').boundingBox();
    await page.mouse.click((table?.x ?? 0) + 200, (table?.y ?? 0) + 300);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  });

  it('adds a wedge where a panel is clicked', async () => {
    const { page } = await visit('draft');
    await page.getByRole('button', { name: 'Add a wedge here' }).click();
    const panel = await page.locator('.draft-canvas [data-piece="front-3"]').boundingBox();
    if (!panel) throw new Error('no panel');
    await page.mouse.move(panel.x + panel.width / 2, panel.y + panel.height / 2);
    await page.locator('.add-guide').waitFor();
    await page.mouse.click(panel.x + panel.width / 2, panel.y + panel.height / 2);
    await page.locator('[data-piece="front-4"]').first().waitFor();
    await page.locator('.add-guide').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => page.locator('[data-piece="front-4"]').count()).toBe(0);
  });

  it('draws the saved draft under the present one', async () => {
    const { page } = await visit('draft');
    await page.getByRole('button', { name: 'Save to compare' }).click();
    const compare = page.getByRole('button', { name: /^Compare with/ });
    await compare.click();
    const earlier = page.locator('.draft-canvas .earlier-outlines');
    // its first panel at centre front: the back moves along with the width of the blocks
    const first = async (): Promise<string> => (await earlier.getAttribute('d'))?.split('Z')[0] ?? '';
    const drawn = await first();
    expect(drawn.length).toBeGreaterThan(100);
    const ease = page.getByRole('textbox', { name: 'Ease at the waist' });
    await ease.fill('-3');
    await ease.press('Enter');
    expect(await first()).toBe(drawn);
    await page.reload();
    await compare.click();
    await earlier.waitFor({ state: 'attached' });
    expect(await first()).toBe(drawn);
    await compare.click();
    await earlier.waitFor({ state: 'detached' });
  });

  it('shows real size once the screen was measured', async () => {
    const { page } = await visit('draft');
    await page.getByRole('button', { name: 'Real size' }).click();
    await page.getByRole('dialog', { name: 'Real size on this screen' }).waitFor();
    await page.getByRole('slider', { name: 'Size' }).fill('4.2');
    await page.getByRole('button', { name: 'It fits: show real size' }).click();
    await expect.poll(async () => (await seen(page)).pxPerMm).toBeCloseTo(4.2, 6);
    await page.reload();
    await page.getByRole('button', { name: 'Real size' }).click();
    await expect.poll(async () => (await seen(page)).pxPerMm).toBeCloseTo(4.2, 6);
  });
});
