// The whole pattern on one page, and the projector's picture, read back.

import { describe, expect, it } from 'vitest';
import {
  gridSideMm,
  layOutOnePage,
  type OnePageChoice,
  onePagePdf,
  onePageSentence,
  planPanels,
  planProjected,
  projectorPdf,
} from '../../../src/paper';
import { boxOfText, cornersOf } from '../../../src/paper/panel/textBlock';
import { DEMO_SHEET, demoPattern } from '../demoPattern';
import { rasteredPdf } from '../rasteredPage';
import { type ReadPage, type ReadPoint, readPattern, sampled, toLines } from '../readPattern';

const input = demoPattern();
const ROLL: OnePageChoice = { widthMm: 914.4, heightMm: null, marginMm: 10 };

const cutLines = (page: ReadPage, widthMm: number): ReadPoint[][] =>
  page.lines
    .filter((line) => Math.abs(line.widthMm - widthMm) < 0.03 && !line.dashed)
    .map(({ points }) => [...points]);

/** How far lines are apart once both are moved so that their boxes lie together, mm. */
function apart(drawn: readonly ReadPoint[][], wanted: readonly ReadPoint[][]): number {
  const corner = (lines: readonly ReadPoint[][]): ReadPoint => ({
    x: Math.min(...lines.flat().map(({ x }) => x)),
    y: Math.min(...lines.flat().map(({ y }) => y)),
  });
  const home = (lines: readonly ReadPoint[][]): ReadPoint[][] => {
    const { x, y } = corner(lines);
    return lines.map((line) => line.map((point) => ({ x: point.x - x, y: point.y - y })));
  };
  const [a, b] = [home(drawn), home(wanted)];
  const far = (ones: readonly ReadPoint[][], others: readonly ReadPoint[][]): number =>
    Math.max(...ones.flatMap((line) => sampled(line, 2)).map((point) => toLines(point, others)));
  return Math.max(far(a, b), far(b, a));
}

const rings = (choice: OnePageChoice): ReadPoint[][] => {
  const laid = layOutOnePage(input, choice);
  if (!laid.ok) throw new Error(laid.fault.code);
  return laid.page.panels.map(({ piece, offset }) =>
    [...piece.cutLine, piece.cutLine[0] as ReadPoint].map(({ x, y }) => ({
      x: x + offset.x,
      y: y + offset.y,
    })),
  );
};

describe('one page', () => {
  it.each([
    ['a roll', ROLL],
    ['a narrow roll', { widthMm: 300, heightMm: null, marginMm: 10 }],
    ['A0', { widthMm: 841, heightMm: 1189, marginMm: 10 }],
  ] as const)(
    'of %s has both squares and every panel at full size, inside its margins',
    async (_, choice) => {
      const { pages, printScaling } = await readPattern(await onePagePdf(input, choice));
      // The record has no room beside the squares of a narrow roll, and lies behind the page.
      expect(pages).toHaveLength(choice.widthMm > 320 ? 1 : 2);
      expect(printScaling).toBe('None');
      const [page] = pages as [ReadPage];
      expect(page.widthMm).toBeCloseTo(choice.widthMm, 2);
      if (choice.heightMm !== null) expect(page.heightMm).toBeCloseTo(choice.heightMm, 2);
      const sides = page.lines
        .filter(({ points, widthMm }) => points.length === 5 && widthMm < 0.2)
        .map(({ points }) => (points[1]?.x ?? 0) - (points[0]?.x ?? 0));
      expect(sides[0]).toBeCloseTo(100, 2);
      expect(sides[1]).toBeCloseTo(101.6, 2);
      const cut = cutLines(page, 0.5);
      expect(apart(cut, rings(choice))).toBeLessThan(0.05);
      for (const { x, y } of cut.flat()) {
        expect(Math.min(x, y)).toBeGreaterThan(choice.marginMm);
        expect(x).toBeLessThan(page.widthMm - choice.marginMm);
        expect(y).toBeLessThan(page.heightMm - choice.marginMm);
      }
      const said = page.texts.map(({ text }) => text).join(' ');
      for (const part of ['Wren Abernathy', 'Winter ball bodice', '24 November 2026', 'Back 3', '100 %'])
        expect(said).toContain(part);
    },
  );

  it('is drawn larger for its printer, and longer with it', async () => {
    const correction = { across: 1.02, down: 1.05 };
    const { pages } = await readPattern(await onePagePdf(input, ROLL, correction));
    const [page] = pages as [ReadPage];
    expect(page.widthMm).toBeCloseTo(914.4, 2);
    const square =
      page.lines.find(({ points, widthMm }) => points.length === 5 && widthMm < 0.2)?.points ?? [];
    expect((square[1]?.x ?? 0) - (square[0]?.x ?? 0)).toBeCloseTo(102, 2);
    expect((square[2]?.y ?? 0) - (square[1]?.y ?? 0)).toBeCloseTo(105, 2);
  });

  it.each([
    [{ ...ROLL, widthMm: 100 }, 'pageTooNarrow', /at least 23 cm/],
    [{ ...ROLL, widthMm: 5090 }, 'pageTooLong', /508 cm/],
    [{ ...ROLL, widthMm: Number.NaN }, 'pageNotANumber', /numbers/],
    [{ ...ROLL, marginMm: 60 }, 'marginOutOfRange', /0 and 5 cm/],
    [{ widthMm: 297, heightMm: 420, marginMm: 10 }, 'pageTooSmall', /do not fit/],
  ] as const)('%j is refused with a sentence', (choice, code, sentence) => {
    const laid = layOutOnePage(input, choice);
    expect(laid.ok ? null : laid.fault.code).toBe(code);
    expect(laid.ok ? '' : onePageSentence(laid.fault, 'cm')).toMatch(sentence);
  });

  it('longer than a PDF page may be is refused', () => {
    const many = Array.from({ length: 12 }, (_, i) =>
      input.draft.pieces.map((piece) => ({ ...piece, id: `${piece.id}-${i}` })),
    ).flat();
    const laid = layOutOnePage(
      { ...input, draft: { ...input.draft, pieces: many } },
      { ...ROLL, widthMm: 230 },
    );
    expect(laid.ok ? null : laid.fault.code).toBe('pageTooLong');
  });

  it('is the same to the byte each time', async () => {
    expect(await onePagePdf(input, ROLL)).toEqual(await onePagePdf(input, ROLL));
  });
});

describe('the projector’s picture', () => {
  it.each([0.6, 3])(
    'draws every panel at full size with a cut line of %d mm over a whole grid',
    async (lineMm) => {
      const bytes = await projectorPdf(input, { widthMm: 914.4, lineMm });
      const { pages } = await readPattern(bytes ?? new Uint8Array());
      const [page] = pages as [ReadPage];
      const side = gridSideMm('in');
      expect(side).toBeCloseTo(50.8, 9);
      for (const length of [page.widthMm, page.heightMm])
        expect(Math.abs(length / side - Math.round(length / side))).toBeLessThan(1e-4);
      const grid = page.lines.filter(({ widthMm }) => Math.abs(widthMm - 0.5) < 0.01);
      expect(grid.length).toBe(Math.round(page.widthMm / side) + Math.round(page.heightMm / side) + 2);
      const cut = cutLines(page, lineMm).filter(({ length }) => length > 5);
      expect(apart(cut, rings(ROLL))).toBeLessThan(0.05);
      expect(page.texts.map(({ text }) => text).join(' ')).toContain('Each square of the grid is 2 in');
    },
  );

  it('warns on a draft that must not be cut, and refuses weights that none can see', async () => {
    const fault = {
      code: 'panelTooNarrow',
      severity: 'error',
      at: {},
      values: { width: 12, least: 20 },
    } as const;
    const faulty = { ...input, draft: { ...input.draft, issues: [fault] } };
    const { pages } = await readPattern(
      (await projectorPdf(faulty, { widthMm: 900, lineMm: 1 })) ?? new Uint8Array(),
    );
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('do not cut');
    await expect(projectorPdf(input, { widthMm: 900, lineMm: 0 })).rejects.toThrow(RangeError);
  });

  it('is a small page where there is no piece', async () => {
    const none = demoPattern('A4', { ...DEMO_SHEET.style, hemBelow: -5000 });
    const { pages } = await readPattern(
      (await projectorPdf(none, { widthMm: 900, lineMm: 1 })) ?? new Uint8Array(),
    );
    expect(pages).toHaveLength(1);
  });
});

describe('words under a projector', () => {
  it('are larger than on paper where there is room, clear of every line and of the grid', async () => {
    const choice = { widthMm: 914.4, lineMm: 1.5 };
    const plan = planProjected(input, choice);
    const onPaper = planPanels(input, choice.widthMm - 20);
    const sizes = (panels: typeof plan.panels): number =>
      panels.flatMap(({ texts }) => texts.map(({ sizePt }) => sizePt)).reduce((sum, size) => sum + size, 0);
    expect(plan.panels.flatMap(({ texts }) => texts)).toHaveLength(
      onPaper.panels.flatMap(({ texts }) => texts).length,
    );
    expect(sizes(plan.panels)).toBeGreaterThan(1.2 * sizes(onPaper.panels));
    for (const { texts, lines } of plan.panels) {
      const drawn = lines.map(({ points }) => points);
      for (const text of texts) {
        const box = cornersOf(boxOfText(text));
        const edge = sampled([...box, box[0] as ReadPoint], 0.5);
        expect(Math.min(...edge.map((point) => toLines(point, drawn)))).toBeGreaterThan(0.2);
      }
    }
    // In dots: below the baseline of words without tails, where a line of the grid would pass, there is nothing but ground.
    const bytes = (await projectorPdf(input, choice)) as Uint8Array;
    const [page] = (await readPattern(bytes)).pages;
    const pdf = await rasteredPdf(bytes);
    const side = gridSideMm('in');
    let crossed = 0;
    for (const { text, at, widthMm, sizePt, level } of page?.texts ?? []) {
      const column = Math.ceil((at.x + 0.5) / side) * side;
      if (!level || /[gjpqy,;/½]/.test(text) || column > at.x + widthMm - 0.5) continue;
      crossed += 1;
      const part = { left: column - 0.4, top: at.y + 0.2, width: 0.8, height: sizePt * 0.05 };
      const { columns, rows, ink } = await pdf.raster(1, part, 300);
      for (let row = 0; row < rows; row += 1)
        for (let dot = 0; dot < columns; dot += 1) expect(ink(dot, row), text).toBeGreaterThan(0.85);
    }
    expect(crossed).toBeGreaterThan(3);
    await pdf.close();
  });
});
