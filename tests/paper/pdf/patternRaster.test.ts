// The printed pattern in dots, words left out: scale, lines on every sheet, lines that meet where sheets are joined. Measured at
// 600 dots to the inch, of which one is 0.042 mm.

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import type { Style } from '../../../src/engine';
import {
  type Correction,
  type Layout,
  layOut,
  onePagePdf,
  type PaperName,
  patternPdf,
} from '../../../src/paper';
import { TALL_CINCHER } from '../../support/styles/tallCincher';
import { DEMO_SHEET, demoPattern, quickPattern } from '../demoPattern';
import { columnOf, crossings, type RasteredPdf, rasteredPdf, rowOf } from '../rasteredPage';
import { readPattern } from '../readPattern';

const DPI = 600;
const WITHIN_MM = 0.1;
const MARGIN = 10;
const OVERLAP = 10;
const STRIP = 6;

const open: RasteredPdf[] = [];
const opened = async (bytes: Uint8Array): Promise<RasteredPdf> => {
  const pdf = await rasteredPdf(bytes, 'strokes');
  open.push(pdf);
  return pdf;
};
afterAll(async () => {
  for (const pdf of open) await pdf.close();
});

/**
 * Width and height of a square whose top left corner lies about there, mm: from stroke to stroke along rows and columns of
 * dots that cross nothing else.
 */
async function squareOn(
  pdf: RasteredPdf,
  near: { readonly left: number; readonly top: number },
  size: { readonly across: number; readonly down: number },
): Promise<{ readonly across: number; readonly down: number }> {
  const part = { left: near.left - 2, top: near.top - 2, width: size.across + 4, height: size.down + 4 };
  const raster = await pdf.raster(1, part, DPI);
  const spans = (sideMm: number, lineAt: (at: number) => number[]): number[] =>
    [0.25, 0.5, 0.7, 0.9].flatMap((share) => {
      const strokes = crossings(lineAt(Math.round((2 + share * sideMm) * raster.perMm)), raster.perMm);
      const [first, last] = [strokes[0], strokes.at(-1)];
      return first && last ? [last.at - first.at] : [];
    });
  const across = spans(size.down, (row) => rowOf(raster, row));
  const down = spans(size.across, (column) => columnOf(raster, column));
  expect(across).toHaveLength(4);
  expect(down).toHaveLength(4);
  for (const all of [across, down]) expect(Math.max(...all) - Math.min(...all)).toBeLessThan(0.05);
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  return { across: mean(across), down: mean(down) };
}

/** Top left corners of the two squares, mm on the page, as pdf.js reads them from the strokes: the first that are so large. */
async function cornersOn(bytes: Uint8Array): Promise<{ readonly left: number; readonly top: number }[]> {
  const [first] = (await readPattern(bytes)).pages;
  return (first?.lines ?? [])
    .filter(({ points: { length } }) => length === 5)
    .map(({ points }) => ({
      left: Math.min(...points.map(({ x }) => x)),
      top: Math.min(...points.map(({ y }) => y)),
      side: Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)),
    }))
    .filter(({ side }) => side > 85 && side < 115)
    .slice(0, 2);
}

const CORRECTIONS: readonly (readonly [string, Correction | undefined])[] = [
  ['as it is', undefined],
  ['larger across, smaller down', { across: 1.0204, down: 0.985 }],
  ['for a printer that shrinks', { across: 1.035, down: 1.035 }],
];

describe.each(CORRECTIONS)('the calibration squares, drawn %s', (_, correction) => {
  const across = correction?.across ?? 1;
  const down = correction?.down ?? 1;
  const corrected = correction ? { correction } : {};

  const expectSquares = async (bytes: Awaited<ReturnType<typeof patternPdf>>): Promise<void> => {
    const pdf = await opened(bytes);
    const corners = await cornersOn(bytes);
    expect(corners).toHaveLength(2);
    // 4 in of 25.4 mm each
    for (const [i, side] of [100, 101.6].entries()) {
      const square = await squareOn(pdf, corners[i] as (typeof corners)[number], {
        across: side * across,
        down: side * down,
      });
      expect(Math.abs(square.across - side * across)).toBeLessThan(WITHIN_MM);
      expect(Math.abs(square.down - side * down)).toBeLessThan(WITHIN_MM);
    }
  };

  it.each(['A4', 'Letter', 'A3'] as const)('measure 100 mm and 4 in on %s', async (paper) => {
    await expectSquares(await patternPdf({ ...quickPattern(paper), ...corrected }));
  });

  it('measure so on one page of a roll', async () => {
    const roll = { widthMm: 914.4, heightMm: null, marginMm: 10 };
    await expectSquares(await onePagePdf(demoPattern(), roll, correction));
  });
});

const styled = (name: string): Style => NAMED_STYLES.get(name)?.style ?? DEMO_SHEET.style;

const PATTERNS: readonly (readonly [string, PaperName, Style])[] = [
  ['the default style on A4', 'A4', DEMO_SHEET.style],
  ['the default style on Letter', 'Letter', DEMO_SHEET.style],
  ['a long line, nested, on Letter', 'Letter', styled('long-line')],
  ['a cincher with panels head down on Legal', 'Legal', TALL_CINCHER],
];

describe.each(PATTERNS)('the sheets of %s', (_, paper, style) => {
  let layout: Layout;
  let pdf: RasteredPdf;
  /** Row and column of each sheet by its printed name; pages between the first and the record. */
  let places: readonly { readonly row: number; readonly column: number }[];
  beforeAll(async () => {
    const input = demoPattern(paper, style);
    layout = layOut(input);
    const bytes = await patternPdf(input, undefined, layout);
    pdf = await opened(bytes);
    const { pages } = await readPattern(bytes);
    places = pages.slice(1, -1).map(({ texts }) => {
      const name = texts.find(({ text }) => /^[A-Z]\d+$/.test(text))?.text ?? '';
      return { row: name.charCodeAt(0) - 65, column: Number(name.slice(1)) - 1 };
    });
  });

  it('have lines of the pattern each', async () => {
    expect(places).toHaveLength(layout.sheets.length);
    for (const [i, page] of pdf.pages.entries()) {
      if (i === 0 || i > places.length) continue;
      const part = {
        left: MARGIN + 1,
        top: MARGIN + 1,
        width: page.widthMm - 2 * MARGIN - 2,
        height: page.heightMm - 2 * MARGIN - STRIP - 2,
      };
      const { columns, rows, ink, perMm } = await pdf.raster(i + 1, part, 150);
      let dark = 0;
      for (let row = 0; row < rows; row += 1)
        for (let column = 0; column < columns; column += 1) if (ink(column, row) > 0.85) dark += 1;
      // Trim lines and marks of the joints are grey; 10 mm of a cut line 0.5 mm thick are not.
      expect(dark / perMm ** 2, `page ${i + 1}`).toBeGreaterThan(10 * 0.5);
    }
  });

  it('meet within 0.1 mm at every joint', async () => {
    let met = 0;
    for (const [i, one] of places.entries())
      for (const [j, other] of places.entries()) {
        const way =
          other.row === one.row && other.column === one.column + 1
            ? 'across'
            : other.column === one.column && other.row === one.row + 1
              ? 'down'
              : null;
        if (!way) continue;
        const page = pdf.pages[i + 1] as RasteredPdf['pages'][number];
        const [width, height] = [page.widthMm - 2 * MARGIN, page.heightMm - 2 * MARGIN - STRIP];
        // A hair's breadth along the middle of the overlap, on both sheets.
        const band = 0.3;
        const [mine, theirs] = await Promise.all(
          way === 'across'
            ? [
                pdf.raster(
                  i + 2,
                  { left: MARGIN + width - OVERLAP / 2, top: MARGIN, width: band, height },
                  DPI,
                ),
                pdf.raster(j + 2, { left: MARGIN + OVERLAP / 2, top: MARGIN, width: band, height }, DPI),
              ]
            : [
                pdf.raster(
                  i + 2,
                  { left: MARGIN, top: MARGIN + height - OVERLAP / 2, width, height: band },
                  DPI,
                ),
                pdf.raster(j + 2, { left: MARGIN, top: MARGIN + OVERLAP / 2, width, height: band }, DPI),
              ],
        );
        const cuts = (raster: typeof mine): number[] =>
          crossings(way === 'across' ? columnOf(raster, 2) : rowOf(raster, 2), raster.perMm)
            .filter((stroke) => stroke.width > 0.45)
            .map(({ at }) => at);
        const [here, there] = [cuts(mine), cuts(theirs)];
        expect(there, `${way} from ${one.row} ${one.column}`).toHaveLength(here.length);
        for (const [n, at] of here.entries()) {
          met += 1;
          expect(Math.abs(at - (there[n] ?? Number.NaN))).toBeLessThan(WITHIN_MM);
        }
      }
    expect(met).toBeGreaterThan(3);
  });
});
