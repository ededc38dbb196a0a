// The printed pattern, read back by a PDF library that had no part in making it.

import { beforeAll, describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { draft, inches } from '../../../src/engine';
import { identifyPiece } from '../../../src/engine/terms/identity';
import { type Layout, layOut, paperChoice, patternPdf } from '../../../src/paper';
import { DEMO_SHEET, demoPattern, type PrintInput, quickPattern } from '../demoPattern';
import {
  type ReadPage,
  type ReadPattern,
  type ReadPoint,
  readPattern,
  sampled,
  toLines,
} from '../readPattern';

// A4: ISO 216, 210 × 297 mm. Letter: ANSI/ASME Y14.1 size A, 8.5 × 11 in, an inch being 25.4 mm.
const PAPERS = [
  { name: 'A4', short: 210, long: 297 },
  { name: 'Letter', short: 8.5 * 25.4, long: 11 * 25.4 },
] as const;

const MARGIN = 10;
const OVERLAP = 10;
const STRIP = 6;
const CUT_MM = 0.5;

/** Where a page lies on the plan, from its printed name and the paper alone. */
function placeOf(page: ReadPage): { row: number; column: number; width: number; height: number } {
  const name = page.texts.find(({ text }) => /^[A-Z]\d+$/.test(text))?.text ?? '';
  const [row, column] = [name.charCodeAt(0) - 65, Number(name.slice(1)) - 1];
  return { row, column, width: page.widthMm - 2 * MARGIN, height: page.heightMm - 2 * MARGIN - STRIP };
}

const ontoPlan = (page: ReadPage, points: readonly ReadPoint[]): ReadPoint[] => {
  const { row, column, width, height } = placeOf(page);
  return points.map(({ x, y }) => ({
    x: x - MARGIN + column * (width - OVERLAP),
    y: y - MARGIN + row * (height - OVERLAP),
  }));
};

const cutLines = (page: ReadPage): ReadPoint[][] =>
  page.lines
    .filter(({ widthMm, dashed }) => Math.abs(widthMm - CUT_MM) < 0.01 && !dashed)
    .map(({ points }) => ontoPlan(page, points));

const line = (page: ReadPage): string => page.texts.map(({ text }) => text).join(' ');

describe.each(PAPERS)('a pattern on $name', ({ name, short, long }) => {
  let input: PrintInput;
  let layout: Layout;
  let read: ReadPattern;
  let sheets: readonly ReadPage[];
  let first: ReadPage;

  beforeAll(async () => {
    input = demoPattern(name);
    layout = layOut(input);
    read = await readPattern(await patternPdf(input));
    // The record of the print comes last.
    [first, ...sheets] = read.pages.slice(0, -1) as [ReadPage, ...ReadPage[]];
  });

  it('has pages exactly as large as the paper and asks not to be scaled', () => {
    for (const page of read.pages) {
      expect(Math.min(page.widthMm, page.heightMm)).toBeCloseTo(short, 2);
      expect(Math.max(page.widthMm, page.heightMm)).toBeCloseTo(long, 2);
    }
    expect(read.printScaling).toBe('None');
  });

  it('shows a 100 mm and a 4 in square on the first page, true to 0.1 mm', () => {
    const squares = first.lines
      .filter(
        ({ points }) => points.length === 5 && points[0]?.x === points[4]?.x && points[0]?.y === points[4]?.y,
      )
      .map(({ points, widthMm }) => {
        const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
        const [across, down] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
        return { across, down, widthMm };
      })
      .filter(({ across }) => across > 99);
    expect(squares).toHaveLength(2);
    for (const [i, side] of [100, 101.6].entries()) {
      expect(Math.abs((squares[i]?.across ?? 0) - side)).toBeLessThan(0.1);
      expect(Math.abs((squares[i]?.down ?? 0) - side)).toBeLessThan(0.1);
      expect(squares[i]?.widthMm).toBeLessThanOrEqual(0.2);
    }
  });

  it('names client, draft, day, unit, paper, allowances and every sheet on the first page', () => {
    const said = line(first);
    for (const part of [
      'Wren Abernathy',
      'Winter ball bodice',
      '24 November 2026',
      'inches',
      name,
      'no fitting',
    ])
      expect(said).toContain(part);
    for (const part of [
      '100 mm',
      '4 in',
      'centre of line',
      '1 in: centre front',
      '½ in: hem',
      'Front 3',
      'Back 3',
    ])
      expect(said).toContain(part);
    for (const sheet of sheets) expect(first.texts.map(({ text }) => text)).toContain(nameOf(sheet));
  });

  it('has a page with cut lines or other ink for each sheet, and no other page', () => {
    expect(sheets).toHaveLength(layout.sheets.length);
    expect(new Set(sheets.map(nameOf)).size).toBe(sheets.length);
    for (const sheet of sheets) expect(cutLines(sheet).length).toBeGreaterThan(0);
  });

  it('emits no line beyond the window of its sheet', () => {
    for (const [i, sheet] of sheets.entries()) {
      const { width, height } = placeOf(sheet);
      const points = sheet.lines.flatMap((line) => line.points);
      // The scale stands in the strip of the first sheet, below the window.
      const isOnScale = ({ y }: ReadPoint): boolean =>
        i === 0 && y > MARGIN + height && y < MARGIN + height + 6;
      const beyond = points
        .filter((point) => !isOnScale(point))
        .filter(
          ({ x, y }) =>
            Math.abs(x - MARGIN - width / 2) > width / 2 + 0.01 ||
            Math.abs(y - MARGIN - height / 2) > height / 2 + 0.01,
        );
      expect(points.length).toBeGreaterThan(0);
      expect(beyond).toEqual([]);
    }
  });

  it('gives back the engine’s cut lines to 0.15 mm when the sheets are put together', () => {
    const printed = sheets.flatMap(cutLines);
    const wanted = layout.panels.map(({ piece, offset }) => {
      const ring = [...piece.cutLine, piece.cutLine[0] as ReadPoint];
      return ring.map(({ x, y }) => ({ x: x + offset.x, y: y + offset.y }));
    });
    expect(wanted).toHaveLength(6);
    const apart = (ones: readonly ReadPoint[][], others: readonly ReadPoint[][]): number =>
      Math.max(...ones.flatMap((line) => sampled(line)).map((point) => toLines(point, others)));
    expect(apart(wanted, printed)).toBeLessThan(0.15);
    expect(apart(printed, wanted)).toBeLessThan(0.15);
  });

  it('shows what lies in an overlap on both sheets at the same place of the plan, to 0.1 mm', () => {
    let met = 0;
    for (const one of sheets)
      for (const other of sheets) {
        if (one === other) continue;
        const [a, b] = [placeOf(one), placeOf(other)];
        const left = b.column * (b.width - OVERLAP);
        const top = b.row * (b.height - OVERLAP);
        const inOther = ({ x, y }: ReadPoint): boolean =>
          x > left + 0.2 && x < left + b.width - 0.2 && y > top + 0.2 && y < top + b.height - 0.2;
        if (Math.abs(a.row - b.row) + Math.abs(a.column - b.column) !== 1) continue;
        const theirs = cutLines(other);
        for (const point of cutLines(one)
          .flatMap((line) => sampled(line))
          .filter(inOther)) {
          met += 1;
          expect(toLines(point, theirs)).toBeLessThan(0.1);
        }
      }
    expect(met).toBeGreaterThan(50);
  });

  it('joins neighbours by marks at the same place of the plan, each number on two sheets only', () => {
    const marks = sheets.map((sheet) => crossesOn(sheet));
    for (const joint of layout.joints) {
      const ends = joint.sheets.map(({ row, column }) =>
        sheets.findIndex((sheet) => nameOf(sheet) === `${String.fromCharCode(65 + row)}${column + 1}`),
      );
      for (const end of ends) {
        for (const mark of joint.joinMarks)
          expect(
            Math.min(...(marks[end] ?? []).map(({ x, y }) => Math.hypot(x - mark.x, y - mark.y))),
          ).toBeLessThan(0.1);
      }
      const bearers = sheets.flatMap((sheet, i) =>
        sheet.texts.filter(({ text }) => text === String(joint.number)).map(() => i),
      );
      expect(bearers).toEqual([...ends, ...ends].sort((m, n) => m - n));
    }
    expect(marks.flat()).toHaveLength(layout.joints.length * 4);
  });

  it('names each panel, how often it is cut, its allowances and what it is sewn to', () => {
    const said = sheets.map(line).join(' ');
    for (const part of [
      'Front 1',
      'Front 2',
      'Front 3',
      'Back 1',
      'Back 2',
      'Back 3',
      'Cut 2',
      'Waist',
      'Under-bust',
    ])
      expect(said).toContain(part);
    for (const part of [
      'To Front 2 · ½ in',
      'Side seam, to Back 3 · 1 in',
      'Hem · ½ in',
      'Centre back · 1 in',
    ])
      expect(said).toContain(part);
  });
});

const nameOf = (page: ReadPage): string => page.texts.find(({ text }) => /^[A-Z]\d+$/.test(text))?.text ?? '';

/** Centres of the upright crosses on a page, on the plan: a level and an upright line of one length that halve each other. */
function crossesOn(page: ReadPage): ReadPoint[] {
  const short = page.lines
    .filter(({ points }) => points.length === 2)
    .map(({ points }) => points as [ReadPoint, ReadPoint]);
  const middle = ([a, b]: readonly [ReadPoint, ReadPoint]): ReadPoint => ({
    x: (a.x + b.x) / 2,
    y: (a.y + b.y) / 2,
  });
  const length = ([a, b]: readonly [ReadPoint, ReadPoint]): number => Math.hypot(b.x - a.x, b.y - a.y);
  const level = short.filter(([a, b]) => Math.abs(a.y - b.y) < 1e-3 && length([a, b]) < 6);
  const upright = short.filter(([a, b]) => Math.abs(a.x - b.x) < 1e-3 && length([a, b]) < 6);
  const found = level.filter((one) =>
    upright.some(
      (other) =>
        Math.abs(length(one) - length(other)) < 1e-2 &&
        Math.hypot(middle(one).x - middle(other).x, middle(one).y - middle(other).y) < 1e-2,
    ),
  );
  return ontoPlan(page, found.map(middle));
}

describe('a pattern that must be spoken about', () => {
  const style = DEMO_SHEET.style;

  it('says on every page that a draft with blocking faults is not to be cut', async () => {
    const drafted = quickPattern();
    const fault = {
      code: 'panelTooNarrow',
      severity: 'error',
      at: { piece: identifyPiece('panel', 'front', 1) },
      values: { width: 12, least: 20 },
    } as const;
    const input = { ...drafted, draft: { ...drafted.draft, issues: [fault] } };
    const { pages } = await readPattern(await patternPdf(input));
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) expect(line(page)).toContain('blocking faults: do not cut');
    expect(line(pages[0] as ReadPage)).toContain('Front 1 is only');
  });

  it('makes the first page alone where there is no piece', async () => {
    const none = { ...style, hemBelow: -5000 };
    const { pages } = await readPattern(await patternPdf(quickPattern('A4', none)));
    expect(pages).toHaveLength(1);
    expect(line(pages[0] as ReadPage)).toContain('do not cut');
    expect(line(pages[0] as ReadPage)).toContain('100 mm');
  });

  it('prints the caution for a high waist reduction, and whether it was acknowledged', async () => {
    const tight = { ...style, ease: { ...style.ease, waist: -inches(4.5) } };
    const asked = quickPattern('A4', tight);
    const open = await readPattern(await patternPdf(asked));
    expect(line(open.pages[0] as ReadPage)).toContain('have not been acknowledged');
    const read = { ...asked, savedDraft: { ...asked.savedDraft, acknowledgedReduction: inches(4.5) } };
    const said = line((await readPattern(await patternPdf(read))).pages[0] as ReadPage);
    expect(said).toContain('drawn in by 4½ in');
    expect(said).toContain('reduction of 4½ in were read and acknowledged');
    expect(said).not.toContain('have not been acknowledged');
    expect(said).toContain('Loosen at once');
    expect(line(open.pages[0] as ReadPage)).toContain('mark them as read');
    expect(said).not.toContain('mark them as read');
  });

  it('prints what was acknowledged of waist and ribs, and asks anew for what was tightened since', async () => {
    const drawnIn = (underBust: number) => ({ ...style, ease: { ...style.ease, underBust } });
    const asked = quickPattern('A4', drawnIn(-inches(6)));
    const first = async (input: typeof asked): Promise<string> =>
      line((await readPattern(await patternPdf(input))).pages[0] as ReadPage);
    const acknowledgedFor = (ribs: number) => ({
      ...asked,
      savedDraft: { ...asked.savedDraft, acknowledgedReduction: inches(2), acknowledgedRibs: ribs },
    });
    const covered = await first(acknowledgedFor(inches(6)));
    expect(covered).toContain('waist reduction of 2 in and an under-bust reduction of 6 in were read');
    expect(covered).not.toMatch(/mark them as read|have not been acknowledged/);
    const grown = await first(acknowledgedFor(inches(5)));
    expect(grown).toContain('mark them as read');
    expect(grown).toContain('have not been acknowledged');
  });

  it('labels the fold of a piece cut on the fold and draws no cut line along it', async () => {
    const onFold = {
      ...style,
      closure: { ...style.closure, front: 'fold' as const },
      wedges: style.wedges.filter((wedge) => wedge.station > -1),
    };
    const input = quickPattern('A4', onFold);
    const { pages } = await readPattern(await patternPdf(input));
    const sheets = pages.slice(1);
    const said = sheets.map(line).join(' ');
    expect(said).toContain('Cut 1 on fold');
    expect(said).toContain('place on fold');
    const panel = layOut(input).panels.find(({ piece }) => piece.cut.onFold);
    const middle = { x: panel?.offset.x ?? 0, y: (panel?.offset.y ?? 0) + DRAFTED_MIDDLE_MM };
    expect(toLines(middle, sheets.flatMap(cutLines))).toBeGreaterThan(5);
    const broken = sheets.flatMap((page) =>
      page.lines.filter(({ dashed }) => dashed).map(({ points }) => ontoPlan(page, points)),
    );
    expect(toLines(middle, broken)).toBeLessThan(0.1);
  });

  it('keeps pages whole under names that are long, have control characters or foreign letters', async () => {
    const asked = quickPattern();
    const input = {
      ...asked,
      client: { ...asked.client, name: `Łucja\u0007 Ōe 王\n${'W'.repeat(400)}` },
      savedDraft: { ...asked.savedDraft, name: 'x'.repeat(5000) },
    };
    const { pages, title } = await readPattern(await patternPdf(input));
    expect(line(pages[0] as ReadPage)).toContain('Lucja Oe ?');
    expect(line(pages[0] as ReadPage)).toContain('or as a question mark');
    expect(title.length).toBeLessThan(200);
    const long = pages.map((page) => page.texts.filter(({ text }) => /WWW|xxx/.test(text)));
    expect(long.every((texts) => texts.length > 0)).toBe(true);
    for (const [i, page] of pages.entries())
      for (const { at, widthMm } of (long[i] ?? []).filter(({ level }) => level)) {
        expect(at.x).toBeGreaterThan(MARGIN - 0.01);
        expect(at.x + widthMm).toBeLessThan(page.widthMm - MARGIN + 0.01);
      }
  });

  it('is the same to the byte each time', async () => {
    expect(await patternPdf(demoPattern())).toEqual(await patternPdf(demoPattern()));
  });

  it('refuses a paper that was not checked', async () => {
    const input = { ...demoPattern(), paper: { ...paperChoice('A4'), marginMm: 100 } };
    await expect(patternPdf(input)).rejects.toThrow(RangeError);
  });
});

/** Below the neck, between top edge and hem of the demo draft. */
const DRAFTED_MIDDLE_MM = (() => {
  const { span } = draft(DEMO_CLIENT.measurements, DEMO_SHEET.style);
  return ((span?.top ?? 0) + (span?.hem ?? 0)) / 2;
})();
