// Names on a PDF, as dots, beside the same names as a browser writes them with the same fonts.

import { describe, expect, it } from 'vitest';
import { fontFiles } from '../../../src/cli/output/fontFiles';
import { draftingSheetHtml, patternSvg } from '../../../src/paper';
import { type Glyphs, glyphsFor } from '../../../src/paper/glyphs/glyphs';
import { pdfFile } from '../../../src/paper/pdf/file/pdfFile';
import { textTag } from '../../../src/paper/svg/svgTags';
import { withBrowser } from '../../browser/session';
import { demoPattern, WITH_FACE } from '../demoPattern';
import { rasteredPdf } from '../rasteredPage';
import { NAMES } from './names';

const visit = withBrowser();

const SIZE_PT = 24;
const LINE_MM = 14;

/** Ink in cells over the box that holds it all, each from 0 to 1, and how much wider than high the box is. */
interface Picture {
  readonly cells: readonly number[];
  readonly aspect: number;
}

const COLUMNS = 60;
const ROWS = 16;

function pictureOf(columns: number, rows: number, ink: (column: number, row: number) => number): Picture {
  let [left, right, top, bottom] = [columns, 0, rows, 0];
  for (let y = 0; y < rows; y += 1)
    for (let x = 0; x < columns; x += 1)
      if (ink(x, y) > 0.5) {
        [left, right] = [Math.min(left, x), Math.max(right, x + 1)];
        [top, bottom] = [Math.min(top, y), Math.max(bottom, y + 1)];
      }
  const cells = new Array<number>(COLUMNS * ROWS).fill(0);
  const [width, height] = [right - left, bottom - top];
  for (let y = top; y < bottom; y += 1)
    for (let x = left; x < right; x += 1) {
      const cell =
        Math.floor(((y - top) / height) * ROWS) * COLUMNS + Math.floor(((x - left) / width) * COLUMNS);
      cells[cell] = (cells[cell] ?? 0) + (ink(x, y) * COLUMNS * ROWS) / (width * height);
    }
  return { cells, aspect: width / height };
}

/** How alike the ink of two pictures lies: 1 where it is the same, 0 where one tells nothing of the other. */
function likeness(a: Picture, b: Picture): number {
  const mean = ({ cells }: Picture): number => cells.reduce((sum, each) => sum + each, 0) / cells.length;
  const [meanA, meanB] = [mean(a), mean(b)];
  let [both, ofA, ofB] = [0, 0, 0];
  for (const [i, each] of a.cells.entries()) {
    const [fromA, fromB] = [each - meanA, (b.cells[i] ?? 0) - meanB];
    both += fromA * fromB;
    ofA += fromA * fromA;
    ofB += fromB * fromB;
  }
  return both / Math.sqrt(ofA * ofB);
}

async function printed(glyphs: Glyphs): Promise<Picture[]> {
  const file = await pdfFile('Names', 'names', { ...WITH_FACE, glyphs });
  const heightMm = LINE_MM * (NAMES.length + 1);
  const canvas = file.page(200, heightMm);
  for (const [i, text] of NAMES.entries())
    canvas.text({ text, start: { x: 10, y: LINE_MM * (i + 1) }, turnRad: 0, sizePt: SIZE_PT, bold: false });
  const pdf = await rasteredPdf(file.bytes());
  const whole = await pdf.raster(1, { left: 0, top: 0, width: 200, height: heightMm }, 200);
  const rows = Math.floor(LINE_MM * whole.perMm);
  const pictures = NAMES.map((_, i) => {
    const top = Math.round(LINE_MM * (i + 0.3) * whole.perMm);
    return pictureOf(whole.columns, rows, (column, row) => whole.ink(column, top + row));
  });
  await pdf.close();
  return pictures;
}

describe('names in 14 scripts', () => {
  it('lie on a PDF as a browser writes them', async () => {
    const glyphs = (await glyphsFor(NAMES, fontFiles)) as Glyphs;
    expect(NAMES).toHaveLength(30);
    const onPaper = await printed(glyphs);
    const { page } = await visit('cut');
    const files = [glyphs.regular, ...glyphs.others].map((each) => Buffer.from(each).toString('base64'));
    const seen: { columns: number; rows: number; dots: string }[] = await page.evaluate(
      async ({ files: fonts, names }) => {
        const families: string[] = [];
        for (const [i, font] of fonts.entries()) {
          const bytes = Uint8Array.from(atob(font), (each) => each.charCodeAt(0));
          document.fonts.add(await new FontFace(`f${i}`, bytes.buffer).load());
          families.push(`f${i}`);
        }
        const [columns, rows] = [1200, 100];
        return names.map((name) => {
          const canvas = new OffscreenCanvas(columns, rows);
          const brush = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
          brush.fillStyle = '#fff';
          brush.fillRect(0, 0, columns, rows);
          brush.fillStyle = '#000';
          brush.font = `50px ${families.join(',')}`;
          brush.direction = /^[\p{Script=Hebrew}\p{Script=Arabic}]/u.test(name) ? 'rtl' : 'ltr';
          brush.textAlign = 'left';
          brush.fillText(name, 20, 65);
          const { data } = brush.getImageData(0, 0, columns, rows);
          let dots = '';
          for (let i = 0; i < data.length; i += 4) dots += String.fromCharCode(data[i] ?? 255);
          return { columns, rows, dots };
        });
      },
      { files, names: [...NAMES] },
    );
    const onScreen = seen.map(({ columns, rows, dots }) =>
      pictureOf(columns, rows, (x, y) => 1 - dots.charCodeAt(y * columns + x) / 255),
    );
    for (const [i, name] of NAMES.entries()) {
      const [paper, screen] = [onPaper[i] as Picture, onScreen[i] as Picture];
      // Beside letters of another font the page's face, set at 95 % of its size, lies a little otherwise than on the screen.
      expect(likeness(paper, screen), name).toBeGreaterThan(0.7);
      // A wide name is narrowed to the room that was reckoned for it.
      expect(paper.aspect / screen.aspect, name).toBeGreaterThan(0.9);
      expect(paper.aspect / screen.aspect, name).toBeLessThan(1.05);
      // Another name does not lie like it.
      for (const [j, other] of onScreen.entries())
        if (j !== i) expect(likeness(paper, other), name).toBeLessThan(0.6);
    }
  });

  it('lie on drawings each in its own direction, left of what is written after them', async () => {
    const { context } = await visit('cut');
    const page = await context.newPage();
    const after = '2.5 ball';
    const tags = NAMES.map((name, i) =>
      textTag({
        ...{ text: `Front 1 · ${name} · ${after}`, sizePt: 11, bold: false },
        ...{ start: { x: 0, y: 8 * (i + 1) }, turnRad: 0 },
      }),
    );
    await page.setContent(`<svg viewBox="0 0 200 250" width="1000">${tags.join('')}</svg>`);
    const drawn = await page.evaluate(() =>
      [...document.querySelectorAll('text')].map((each) => {
        const text = each.textContent ?? '';
        const seen = [...text.matchAll(/[^ \u2066-\u2069·]/gu)].map(({ index }) => {
          const { x, width } = each.getExtentOfChar(index);
          return { index, left: x, right: x + width };
        });
        return { text, seen };
      }),
    );
    for (const [i, { text, seen }] of drawn.entries()) {
      expect(text.replace(/[\u2066-\u2069]/gu, '')).toBe(`Front 1 · ${NAMES[i]} · ${after}`);
      const from = text.indexOf(after);
      const before = seen.filter(({ index }) => index < from).map(({ right }) => right);
      const behind = seen.filter(({ index }) => index >= from).map(({ left }) => left);
      expect(Math.max(...before), text).toBeLessThanOrEqual(Math.min(...behind) + 0.01);
    }
    // What is read from right to left begins at the right.
    const lefts = (wanted: string) => drawn.find(({ text }) => text.includes(wanted))?.seen ?? [];
    const hebrew = lefts('מרים 38/40').filter(({ index }) => 'מרים'.includes(drawn[17]?.text[index] ?? ' '));
    expect(hebrew.length).toBe(4);
    for (const [i, each] of hebrew.entries())
      if (i > 0) expect(each.left).toBeLessThan(hebrew[i - 1]?.left ?? 0);
    const figures = lefts('מרים 38/40').filter(({ index }) =>
      '38/40'.includes(drawn[17]?.text[index] ?? ' '),
    );
    expect(Math.max(...figures.slice(0, 5).map(({ right }) => right))).toBeLessThan(hebrew[3]?.left ?? 0);
  });

  it('stand on drawings and drafting sheets as they were typed', () => {
    const input = demoPattern();
    for (const name of NAMES) {
      const own = { ...input, client: { ...input.client, name } };
      const [svg, html] = [patternSvg(own), draftingSheetHtml(own)].map((text) =>
        text.replace(/[\u2066-\u2069]/gu, ''),
      );
      expect(svg).toContain(`<title>${name}, `);
      expect(
        svg?.match(/<text [^>]*>[^<]*/g)?.filter((each) => each.endsWith(`>${name}`)).length,
      ).toBeGreaterThan(3);
      expect(html).toContain(`<h1><bdi>${name}</bdi></h1>`);
      expect(html).toMatch(new RegExp(`<title>[^<]*, ${name}, `));
    }
  });
});
