// Contrast of texts as it is on the screen, read from its pixels, so that opacity and whatever lies under or over a text count
// too: every step is shown with its texts and without them, and a pixel of a text is compared with what lies there without it.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { withBrowser } from '../session';

const visit = withBrowser();

const DRAWN = {
  measure: '.tape-form',
  draft: '.draft-canvas',
  fit: '.closed-up',
  cut: '.plan-drawing',
} as const;

/** As WCAG 2.2, 1.4.3 has it. */
const LEAST = { usual: 4.5, large: 3 } as const;

/** Pixels of the screen to one of the page, so that the strokes of letters cover whole ones. */
const SCALE = 2;

interface Written {
  readonly text: string;
  readonly large: boolean;
  /** Of the window, px: left, top, right, bottom. */
  readonly box: readonly [number, number, number, number];
}

/** Texts in the window, or in the dialog over it, but for those of what cannot be pressed just now, which need no contrast. */
const writtenOn = (page: Page): Promise<Written[]> =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(
      document.querySelector('dialog[open]') ?? document.body,
      NodeFilter.SHOW_TEXT,
    );
    const found: Written[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = (node.textContent ?? '').trim();
      if (!element || text === '' || element.closest('script, style, .unseen, :disabled')) continue;
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      const { fontSize, fontWeight } = getComputedStyle(element);
      const px = Number.parseFloat(fontSize);
      const large = !element.closest('svg') && (px >= 24 || (px >= 18.66 && Number(fontWeight) >= 700));
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const { left, top, right, bottom } of range.getClientRects())
        if (right - left > 2 && left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight)
          found.push({ text, large, box: [left, top, right, bottom] });
    }
    return found;
  });

interface Reading {
  /** The page that is read. */
  readonly page: Page;
  /** An empty one, which compares the pictures. */
  readonly reader: Page;
}

/** The greatest contrast of a pixel of each text with what lies there without it; 0 of one that is not seen. */
async function contrasts(
  reader: Page,
  shots: readonly Buffer[],
  texts: readonly Written[],
): Promise<number[]> {
  return reader.evaluate(
    async ({ pictures, boxes, scale }) => {
      const [shown, bare] = await Promise.all(
        pictures.map(async (base64) => {
          const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
          const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
          const canvas = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
          canvas?.drawImage(picture, 0, 0);
          return canvas?.getImageData(0, 0, picture.width, picture.height);
        }),
      );
      if (!shown || !bare) throw new Error('no picture');
      const part = (value = 0): number => {
        const each = value / 255;
        return each <= 0.04045 ? each / 12.92 : ((each + 0.055) / 1.055) ** 2.4;
      };
      const luminance = ({ data }: ImageData, i: number): number =>
        0.2126 * part(data[i]) + 0.7152 * part(data[i + 1]) + 0.0722 * part(data[i + 2]);
      return boxes.map(([left, top, right, bottom]) => {
        let most = 0;
        for (let y = Math.floor(top * scale); y < bottom * scale; y += 1)
          for (let x = Math.floor(left * scale); x < right * scale; x += 1) {
            const i = 4 * (y * shown.width + x);
            if (shown.data[i] === bare.data[i] && shown.data[i + 1] === bare.data[i + 1]) continue;
            const [a, b] = [luminance(shown, i), luminance(bare, i)];
            most = Math.max(most, (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05));
          }
        return most;
      });
    },
    {
      pictures: shots.map((shot) => shot.toString('base64')),
      boxes: texts.map(({ box }) => box),
      scale: SCALE,
    },
  );
}

/** Texts of the window that have too little contrast, with what they have; and how many were read. */
async function readTexts({ page, reader }: Reading): Promise<{ read: number; faint: string[] }> {
  const texts = await writtenOn(page);
  const shown = await page.screenshot({ animations: 'disabled' });
  const without = await page.addStyleTag({
    content:
      '*{-webkit-text-fill-color:transparent!important}svg :is(text,tspan){fill:transparent!important}',
  });
  const bare = await page.screenshot({ animations: 'disabled' });
  await without.evaluate((style) => (style as Element).remove());
  const ratios = await contrasts(reader, [shown, bare], texts);
  const seen = texts.flatMap((each, i) => {
    const ratio = ratios[i] ?? 0;
    return ratio === 0 ? [] : [{ ...each, ratio }];
  });
  return {
    read: seen.length,
    faint: seen
      .filter(({ ratio, large }) => ratio < (large ? LEAST.large : LEAST.usual))
      .map(({ text, ratio }) => `${text.slice(0, 40)}: ${ratio.toFixed(2)}`),
  };
}

describe('texts in the light and in the dark', () => {
  it('have the contrast they need in every step and in Help, and are found too faint where they are', {
    timeout: 120_000,
  }, async () => {
    const { page, context } = await visit('measure', {
      viewport: { width: 1024, height: 768 },
      deviceScaleFactor: SCALE,
      reducedMotion: 'reduce',
      // The texts are taken away by a style of the test's own.
      bypassCSP: true,
    });
    const reading: Reading = { page, reader: await context.newPage() };
    const look = async (place: string, least: number): Promise<void> => {
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        const { read, faint } = await readTexts(reading);
        expect.soft(read, `${place} in the ${colorScheme}`).toBeGreaterThan(least);
        expect.soft(faint, `${place} in the ${colorScheme}`).toEqual([]);
      }
    };
    for (const [step, drawn] of Object.entries(DRAWN)) {
      await page.evaluate((name) => {
        window.location.hash = name;
      }, step);
      await page.locator(drawn).first().waitFor();
      await look(step, 25);
      if (step !== 'measure') continue;
      const faded = await page.addStyleTag({ content: '.tape-form label{opacity:.45}' });
      expect((await readTexts(reading)).faint.length, 'made faint').toBeGreaterThan(5);
      await faded.evaluate((style) => (style as Element).remove());
    }
    await page.locator('.help-button').click();
    await page.getByRole('dialog', { name: 'Help' }).waitFor();
    await look('Help', 0);
  });
});
