// The garment as worn in a browser: sewn beside the page, turned, read and saved, under the page's own policy.

import { expect, it } from 'vitest';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { expectQuiet, withBrowser } from '../session';

const visit = withBrowser(undefined, 'to work');

it('sews the draft, is turned and read, and saves a picture', async () => {
  const visitor = await visit('fit');
  const { page } = visitor;
  await page.getByRole('radio', { name: 'As worn' }).check({ force: true });
  const part = page.getByRole('region', { name: 'As worn' });
  const canvas = part.locator('canvas');
  await canvas.waitFor({ timeout: 60_000 });
  await canvas.scrollIntoViewIfNeeded();
  await expect.poll(() => part.getByText(/^Stands off \S+ in/).count()).toBeGreaterThan(0);

  await part.getByRole('button', { name: 'Back', exact: true }).click();
  /** A place on the cloth as the page is scrolled now. */
  const onCloth = async (): Promise<{ x: number; y: number; wide: number }> => {
    await canvas.scrollIntoViewIfNeeded();
    const box = await canvas.boundingBox();
    if (!box) throw new Error('the canvas is there');
    return { x: box.x + 0.62 * box.width, y: box.y + 0.5 * box.height, wide: box.height };
  };
  const back = await onCloth();
  await page.mouse.move(back.x, back.y);
  await expect.poll(() => part.getByText(/^Back \d: /).count()).toBe(1);
  // Half a turn by keys, to the front.
  await canvas.focus();
  for (let i = 0; i < 24; i += 1) await page.keyboard.press('ArrowLeft');
  const { x, y, wide } = await onCloth();
  await page.mouse.move(x, y + 1);
  await expect.poll(() => part.getByText(/^Front \d: /).count()).toBe(1);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + wide, y, { steps: 4 });
  await page.mouse.up();
  await page.mouse.move(x, y);
  await expect.poll(() => part.getByText(/^Back \d: /).count()).toBe(1);

  const [file] = await Promise.all([
    page.waitForEvent('download'),
    part.getByRole('button', { name: 'Save picture' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('as worn.png');
  const bytes = await downloadBytes(file);
  expect(new TextDecoder().decode(bytes.subarray(1, 4))).toBe('PNG');
  // A picture of one colour is far smaller.
  expect(bytes.length).toBeGreaterThan(20_000);

  // A worst place leads to the number that cures it, and the garment can be had beside the table there.
  await part.getByRole('button', { name: 'Go to the bust wedge at the under-bust' }).click();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('tr')?.querySelector('th')?.textContent))
    .toBe('Under-bust');
  await page.getByRole('button', { name: 'See it as worn' }).click();
  await page.getByRole('region', { name: 'As worn' }).locator('canvas').waitFor({ timeout: 60_000 });
  expectQuiet(visitor);
}, 300_000);

it('draws a still without WebGL', async () => {
  const visitor = await visit('measure', { viewport: { width: 390, height: 844 } });
  const { page } = visitor;
  await page.addInitScript(() => {
    const own = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (
      this: HTMLCanvasElement,
      kind: string,
      ...rest: unknown[]
    ) {
      return kind === 'webgl2' ? null : Reflect.apply(own, this, [kind, ...rest]);
    } as typeof own;
  });
  await page.reload();
  await page.evaluate(() => {
    location.hash = 'fit';
  });
  await page.getByRole('radio', { name: 'As worn' }).check({ force: true });
  const part = page.getByRole('region', { name: 'As worn' });
  await part.getByText('Drawn without WebGL').waitFor({ timeout: 60_000 });
  const colours = await part.locator('canvas').evaluate(async (canvas: HTMLCanvasElement) => {
    await new Promise((resolve) => setTimeout(resolve, 300));
    const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? {
      data: new Uint8ClampedArray(),
    };
    const found = new Set<number>();
    for (let i = 0; i < data.length; i += 400)
      found.add(((data[i] ?? 0) << 16) | ((data[i + 1] ?? 0) << 8) | (data[i + 2] ?? 0));
    return found.size;
  });
  expect(colours).toBeGreaterThan(50);
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
  ).toBeLessThanOrEqual(0);

  // On a desk, where the picture has what is left of the window, the sentence stands between it and its legend.
  await page.setViewportSize({ width: 1440, height: 900 });
  await expect
    .poll(() =>
      part.evaluate((seen) => {
        const [picture, said, foot] = ['.worn-room', '.worn-view > .hint', '.worn-foot'].map((each) =>
          seen.querySelector(each)?.getBoundingClientRect(),
        );
        return picture && said && foot && picture.bottom <= said.top && said.bottom <= foot.top;
      }),
    )
    .toBe(true);
}, 180_000);
