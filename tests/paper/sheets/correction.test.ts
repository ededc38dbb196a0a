// A print corrected for its printer, read back: what the printer makes of it has the size that was meant.

import { describe, expect, it } from 'vitest';
import { type Correction, correctionFrom, correctionText, layOut, patternPdf } from '../../../src/paper';
import { quickPattern } from '../demoPattern';
import { type ReadPage, type ReadPoint, readPattern, sampled, toLines } from '../readPattern';

const words = (page: ReadPage): string[] => page.texts.map(({ text }) => text);

/** A page as it comes out of a printer that makes everything this much smaller: short side, long side. */
function printed(page: ReadPage, { across, down }: Correction): ReadPage {
  const lying = page.widthMm > page.heightMm;
  const [x, y] = lying ? [down, across] : [across, down];
  const lines = page.lines.map((line) => ({
    ...line,
    points: line.points.map((point) => ({ x: point.x / x, y: point.y / y })),
  }));
  return { ...page, widthMm: page.widthMm / x, heightMm: page.heightMm / y, lines };
}

const squares = (page: ReadPage): { across: number; down: number }[] =>
  page.lines
    .filter(
      ({ points }) => points.length === 5 && points[0]?.x === points[4]?.x && points[0]?.y === points[4]?.y,
    )
    .map(({ points }) => {
      const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
      return { across: Math.max(...xs) - Math.min(...xs), down: Math.max(...ys) - Math.min(...ys) };
    })
    .filter(({ across }) => across > 90);

describe('a correction', () => {
  it.each([
    [100, { across: 98, down: 99 }, { across: 100 / 98, down: 100 / 99 }],
    [101.6, { across: 101.6, down: 110 }, { across: 1, down: 101.6 / 110 }],
    [100, { across: 89, down: 100 }, null],
    [100, { across: 100, down: 112 }, null],
    [100, { across: 0, down: 100 }, null],
    [100, { across: Number.NaN, down: 100 }, null],
  ])('of a %d mm square that measures %j is %j', (side, measured, wanted) => {
    expect(correctionFrom(side, measured)).toEqual(wanted);
  });

  it('goes on from the last one', () => {
    const next = correctionFrom(100, { across: 99, down: 100 }, { across: 1.02, down: 0.98 });
    expect(next?.across).toBeCloseTo((1.02 * 100) / 99, 12);
    expect(next?.down).toBe(0.98);
    expect(correctionFrom(100, { across: 95, down: 100 }, { across: 1.06, down: 1 })).toBeNull();
    expect(correctionText({ across: 1.0204, down: 1 })).toBe('2.04 % larger across, unchanged down');
  });
});

describe.each([
  ['portrait', { across: 1.02, down: 1.035 }],
  ['landscape', { across: 1.02, down: 1.035 }],
  ['landscape', { across: 0.97, down: 1.01 }],
] as const)('a %s print drawn %j', (orientation, correction) => {
  const asked = quickPattern('A4');
  const input = { ...asked, paper: { ...asked.paper, orientation }, correction };

  it('has squares of 100 mm and 4 in once it is printed, on paper of the true size', async () => {
    const { pages } = await readPattern(await patternPdf(input));
    const [first] = pages;
    // ISO 216
    expect(first?.widthMm).toBeCloseTo(210, 2);
    expect(first?.heightMm).toBeCloseTo(297, 2);
    const asDrawn = squares(first as ReadPage);
    expect(asDrawn[0]?.across).toBeCloseTo(100 * correction.across, 1);
    expect(asDrawn[0]?.down).toBeCloseTo(100 * correction.down, 1);
    const [metric, imperial] = squares(printed(first as ReadPage, correction));
    for (const [square, side] of [
      [metric, 100],
      [imperial, 101.6],
    ] as const) {
      expect(Math.abs((square?.across ?? 0) - side)).toBeLessThan(0.1);
      expect(Math.abs((square?.down ?? 0) - side)).toBeLessThan(0.1);
    }
    expect(words(first as ReadPage).join(' ')).toContain(correctionText(correction));
  });

  it('gives back the engine’s cut lines to 0.15 mm when the printed sheets are put together', async () => {
    const { pages } = await readPattern(await patternPdf(input));
    const layout = layOut(input);
    const [margin, overlap, strip] = [10, 10, 6];
    const cut = pages.slice(1).flatMap((page) => {
      const out = printed(page, correction);
      const name = words(page).find((text) => /^[A-Z]\d+$/.test(text)) ?? '';
      const [row, column] = [name.charCodeAt(0) - 65, Number(name.slice(1)) - 1];
      const [width, height] = [out.widthMm - 2 * margin, out.heightMm - 2 * margin - strip];
      return out.lines
        .filter(({ widthMm, dashed }) => Math.abs(widthMm - 0.5) < 0.03 && !dashed)
        .map(({ points }) =>
          points.map(({ x, y }) => ({
            x: x - margin + column * (width - overlap),
            y: y - margin + row * (height - overlap),
          })),
        );
    });
    const wanted = layout.panels.map(({ piece, offset }) =>
      [...piece.cutLine, piece.cutLine[0] as ReadPoint].map(({ x, y }) => ({
        x: x + offset.x,
        y: y + offset.y,
      })),
    );
    const apart = (ones: readonly ReadPoint[][], others: readonly ReadPoint[][]): number =>
      Math.max(...ones.flatMap((line) => sampled(line)).map((point) => toLines(point, others)));
    expect(cut.length).toBeGreaterThan(10);
    expect(apart(wanted, cut)).toBeLessThan(0.15);
    expect(apart(cut, wanted)).toBeLessThan(0.15);
  });
});

describe('a print', () => {
  it('that is corrected out of all measure is refused', async () => {
    const wild = { ...quickPattern(), correction: { across: 1.2, down: 1 } };
    await expect(patternPdf(wild)).rejects.toThrow(RangeError);
  });

  it('has the pages of the sheets that are not left out, named as ever', async () => {
    const input = quickPattern();
    const all = (await readPattern(await patternPdf(input))).pages;
    const some = (await readPattern(await patternPdf({ ...input, leftOut: ['A1', 'B2'] }))).pages;
    const names = (pages: readonly ReadPage[]): string[] =>
      pages.slice(1).map((page) => words(page).find((text) => /^[A-Z]\d+$/.test(text)) ?? '');
    expect(names(some)).toEqual(names(all).filter((name) => name !== 'A1' && name !== 'B2'));
    expect(words(some[0] as ReadPage).join(' ')).toContain('Not printed this time: A1, B2.');
  });

  it('tells of each page before it is drawn, and stops where it is told', async () => {
    const input = quickPattern();
    const count = layOut(input).sheets.length + 1;
    const told: string[] = [];
    await patternPdf(input, (drawn, of) => void told.push(`${drawn}/${of}`));
    expect(told).toEqual(Array.from({ length: count }, (_, i) => `${i + 1}/${count}`));
    await expect(
      patternPdf(input, (drawn) => {
        if (drawn === 2) throw new Error('enough');
      }),
    ).rejects.toThrow('enough');
  });
});
