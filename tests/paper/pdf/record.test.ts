// What a print says of itself: the record, the scale on its sheets, a mock-up, and a large paper that is one page.

import { beforeAll, describe, expect, it } from 'vitest';
import { DEMO_CLIENT, MOCKUP_ALLOWANCE_MM, mockupStyle } from '../../../src/document';
import { draft, draftWhole, inches, type Piece, type Point } from '../../../src/engine';
import { onePagePdf, paperChoice, patternPdf, usualMaking } from '../../../src/paper';
import { linedPieces } from '../../../src/paper/layout/placePanels';
import { recordOf } from '../../../src/paper/remarks/record';
import { DEMO_SHEET, type PrintInput, quickPattern } from '../demoPattern';
import { type ReadPage, type ReadPattern, readPattern } from '../readPattern';

const line = (page: ReadPage | undefined): string => page?.texts.map(({ text }) => text).join(' ') ?? '';
const PRINT: PrintInput = {
  ...quickPattern('A4'),
  making: usualMaking('in'),
  program: 'Staywright 9.9.9',
  tapeDay: '12 May 2026',
};

/** The demo's mock-up. */
const MOCKUP: PrintInput = {
  ...quickPattern('Letter', mockupStyle(DEMO_SHEET.style, MOCKUP_ALLOWANCE_MM)),
  making: usualMaking('in'),
  mockup: true,
  across: 'all',
};

/** Left and right drafted apart, with twelve panels. */
const APART = draftWhole(DEMO_CLIENT.measurements, DEMO_SHEET.style, {
  leftShare: { waist: 0.52 },
  rightLower: {},
});

describe('the record', () => {
  let read: ReadPattern;
  beforeAll(async () => {
    read = await readPattern(await patternPdf(PRINT));
  });

  it('has a page behind the sheets: program, day and numbers of the tape, ease, gap, reduction and style', () => {
    const records = read.pages.filter((page) => line(page).startsWith('Record of this print'));
    expect(records).toHaveLength(1);
    const words = line(records[0]);
    for (const said of [
      'Staywright 9.9.9',
      '24 November 2026',
      '12 May 2026',
      'Waist girth 29½ in',
      'Lacing gap 2 in',
      'Waist reduction 2 in, 7 %',
      'centre front a seam; centre back lacing',
      '3 front, 3 back',
      'Waist 29½ in –2 in 27½ in 25½ in',
    ])
      expect(words).toContain(said);
  });

  it('tells of an alteration of one side its day, what it comes to, and why left and right are cut apart', () => {
    const panel = (block: 'front' | 'back') => ({ kind: 'panel', block, number: 3 }) as const;
    const alteration = {
      kind: 'seam',
      seam: { kind: 'seam', pieces: [panel('front'), panel('back')] },
      side: 'right',
      at: [{ height: { kind: 'level', level: 'waist' }, a: inches(3 / 8), b: inches(3 / 8) }],
    } as const;
    const { measurements } = PRINT.client;
    const { style } = PRINT.savedDraft;
    const record = recordOf({
      ...PRINT,
      draft: draftWhole(measurements, style, null, [alteration]),
      savedDraft: {
        ...PRINT.savedDraft,
        fittings: [{ date: '2026-05-12', note: '', on: true, alterations: [{ ...alteration, on: true }] }],
      },
      fittingDays: ['12 May 2026'],
    });
    const rows = record.parts.flatMap((part) => part.rows.map((row) => row.join(' ')));
    expect(rows).toContain('Waist reduction 2 in, 7 %; with the alterations 2¾ in, 9 %');
    expect(rows).toContain('Left and right They are drafted apart and cut once each.');
    expect(rows).toContain('Fitting of 12 May 2026 Side seam, waist: taken in ⅜ in on each edge, right only');
  });

  it('calls a height at the end of a seam by its edge', () => {
    const { measurements } = PRINT.client;
    const { style } = PRINT.savedDraft;
    const seam = {
      kind: 'seam',
      pieces: [
        { kind: 'panel', block: 'front', number: 2 },
        { kind: 'panel', block: 'front', number: 3 },
      ],
    } as const;
    const height = { kind: 'end', end: 'top' } as const;
    const alteration = { kind: 'seam', seam, side: 'both', at: [{ height, a: 4, b: 4 }], on: true } as const;
    // The edge is raised too.
    const raised = {
      kind: 'edge',
      edge: 'top',
      side: 'both',
      at: [{ place: seam, by: 10 }],
      on: true,
    } as const;
    const record = recordOf({
      ...PRINT,
      draft: draftWhole(measurements, style, null, [alteration, raised]),
      savedDraft: {
        ...PRINT.savedDraft,
        fittings: [{ date: '2026-05-12', note: '', on: true, alterations: [alteration, raised] }],
      },
    });
    const rows = record.parts.flatMap((part) => part.rows.map((row) => row.join(' ')));
    expect(rows.some((row) => row.includes('Front 2 / Front 3, top edge: taken in'))).toBe(true);
    expect(rows.some((row) => row.includes('above the waist'))).toBe(false);
  });

  it('says that a day was not written down, and what was estimated', async () => {
    const client = { ...DEMO_CLIENT, estimated: ['underarmToWaist'] as const };
    const { pages } = await readPattern(await patternPdf({ ...PRINT, client, tapeDay: null }));
    const words = line(pages.find((page) => line(page).startsWith('Record of this print')));
    expect(words).toContain('the day was not written down');
    expect(words).toMatch(/Underarm to waist .{2,8} in, estimated/);
  });

  it('stands beside the squares of a pattern on one page', async () => {
    const roll = { widthMm: 914.4, heightMm: null, marginMm: 10 };
    const { pages } = await readPattern(await onePagePdf(PRINT, roll));
    expect(line(pages[0])).toContain('Lacing gap: 2 in');
    expect(line(pages[0])).toContain('12 May 2026');
    // Whole, down to the lowest girth.
    expect(pages).toHaveLength(1);
    expect(line(pages[0])).not.toContain('told on the screen');
    expect(line(pages[0])).toMatch(/Hip: Body: 40 in/);
    expect(line(pages[0])).not.toContain('alterations after fittings');
  });

  it('lies behind a pattern on one page that has no room for it beside the squares', async () => {
    const { pages } = await readPattern(
      await onePagePdf(PRINT, { widthMm: 420, heightMm: null, marginMm: 10 }),
    );
    expect(pages).toHaveLength(2);
    expect(line(pages[1])).toMatch(/^Record of this print/);
    expect(line(pages[1])).toContain('Hip');
  });

  it('lies behind a pattern on one page that was altered, with every alteration', async () => {
    const seams = [1, 2].map((number) => ({
      kind: 'seam' as const,
      pieces: [
        { kind: 'panel' as const, block: 'front' as const, number },
        { kind: 'panel' as const, block: 'front' as const, number: number + 1 },
      ] as const,
    }));
    const alterations = seams.flatMap((seam) =>
      (['bust', 'underBust', 'waist'] as const).map((level) => ({
        kind: 'seam' as const,
        seam,
        side: 'both' as const,
        at: [{ height: { kind: 'level' as const, level }, a: 2, b: 1 }],
        on: true,
      })),
    );
    const { measurements } = PRINT.client;
    const altered = {
      ...PRINT,
      draft: draftWhole(measurements, PRINT.savedDraft.style, null, alterations),
      savedDraft: {
        ...PRINT.savedDraft,
        fittings: [{ date: '2026-05-12', note: '', on: true, alterations }],
      },
    };
    const roll = { widthMm: 914.4, heightMm: null, marginMm: 10 };
    const { pages } = await readPattern(await onePagePdf(altered, roll));
    expect(pages).toHaveLength(2);
    expect(line(pages[0])).not.toContain('told on the screen');
    expect(line(pages[1])).toMatch(/^Record of this print/);
    expect(line(pages[1]).match(/taken in/g)).toHaveLength(12);
    expect(line(pages[0])).toContain('With 6 alterations after fittings; the record behind has each.');
  });
});

describe('the scale on the sheets', () => {
  it('stands on the first and on every tenth, in the unit of the client', async () => {
    const { pages } = await readPattern(await patternPdf({ ...quickPattern('A4'), draft: APART }));
    const sheets = pages.filter((page) => /sheet \d+ of \d+/.test(line(page)));
    expect(sheets.length).toBeGreaterThan(10);
    for (const [i, page] of sheets.entries())
      expect(
        page.texts.some(({ text }) => text === '2 in'),
        `sheet ${i + 1}`,
      ).toBe(i === 0 || (i + 1) % 10 === 0);
    const metric = { ...quickPattern('A4'), client: { ...DEMO_CLIENT, unit: 'cm' as const } };
    const [, first] = (await readPattern(await patternPdf(metric))).pages;
    expect(first?.texts.some(({ text }) => text === '50 mm')).toBe(true);
  });
});

describe('a large paper', () => {
  it('is one page with panels, squares and the making list on it', async () => {
    const { pages } = await readPattern(await patternPdf({ ...PRINT, paper: paperChoice('A0') }));
    expect(pages).toHaveLength(1);
    const words = line(pages[0]);
    for (const said of ['100 mm', 'Front 1', 'Back 3', 'Making list', 'Waist tape', 'Lacing gap: 2 in'])
      expect(words).toContain(said);
    for (const { at } of pages[0]?.texts ?? []) {
      expect(at.y).toBeLessThan(1189 - 10);
      expect(at.x).toBeGreaterThanOrEqual(10 - 0.01);
    }
  });
});

describe('panels of a making list', () => {
  it('say how often each is cut from each layer, as the list does', async () => {
    const { pages } = await readPattern(await patternPdf(PRINT));
    expect(pages.map(line).join(' ')).toMatch(/Front 2 Cut 2 fashion, 2 strength, 2 lining/);
    const plain = await readPattern(await patternPdf(quickPattern('A4')));
    expect(plain.pages.map(line).join(' ')).toMatch(/Front 2 Cut 2 Wren/);
  });
});

describe('a mock-up', () => {
  it('has 1 in on every edge, and the sew lines of the garment', () => {
    for (const [i, piece] of MOCKUP.draft.pieces.entries()) {
      const own = PRINT.draft.pieces[i] as Piece;
      expect(piece.edges.map(({ points }) => points)).toEqual(own.edges.map(({ points }) => points));
      for (const { allowance } of piece.edges) expect(allowance).toBe(inches(1));
    }
  });

  it('has levels, centre lines and bust point right across, and no eyelets', () => {
    const lined = linedPieces(MOCKUP);
    for (const { piece, lines, labels } of lined) {
      const levels = lines.filter(({ kind, points }) => kind === 'level' && points.length === 2);
      const xs = piece.cutLine.map(({ x }) => x);
      expect(levels, piece.id).toHaveLength(3);
      for (const { points } of levels) {
        const [a, b] = points.map(({ x }) => x) as [number, number];
        expect(b - a).toBeGreaterThan(0.5 * (Math.max(...xs) - Math.min(...xs)));
        expect(points[0]?.y).toBe(points[1]?.y);
      }
      const centre = lines.filter(({ kind, points }) => kind === 'level' && points.length > 2);
      expect(centre).toHaveLength(piece.number === 1 ? 1 : 0);
      // The bust point of this draft lies on the seam between the first two panels.
      expect(labels.filter(({ text }) => text === 'Bust point')).toHaveLength(
        ['front-1', 'front-2'].includes(piece.id) ? 1 : 0,
      );
    }
    // An eyelet is drawn in 16 strokes round, from a point back to it.
    const isRing = (points: readonly Point[]): boolean => {
      const [from, to] = [points[0], points.at(-1)];
      return points.length === 17 && from?.x === to?.x && from?.y === to?.y;
    };
    const rings = (input: PrintInput): number =>
      linedPieces(input).flatMap(({ lines }) => lines.filter(({ points }) => isRing(points))).length;
    expect(rings({ ...MOCKUP, mockup: false })).toBe(13);
    expect(rings(MOCKUP)).toBe(0);
  });

  it('finds the bust point on both halves where left and right are drafted apart', () => {
    const found = linedPieces({ ...MOCKUP, draft: APART }).filter(({ labels }) =>
      labels.some(({ text }) => text === 'Bust point'),
    );
    expect(found.map(({ piece }) => piece.id).sort()).toEqual([
      'left-front-1',
      'left-front-2',
      'right-front-1',
      'right-front-2',
    ]);
  });

  it('says so on each panel and on the first page, and prints no making list', async () => {
    const { pages } = await readPattern(await patternPdf(MOCKUP));
    const words = pages.map(line).join(' ');
    expect(words.match(/Mock-up of 24 November 2026\W+Cut 2\W+Wren/g)).toHaveLength(6);
    expect(line(pages[0])).toContain('with 1 in on every edge');
    expect(words).not.toContain('Making list');
    expect(words).toContain('Mock-up 1 in on every edge');
  });

  it.each([
    ['sheets', MOCKUP],
    ['sheets, left and right drafted apart', { ...MOCKUP, draft: APART }],
  ])(
    'has a fitting form of one page behind %s: panels laid open, seams numbered, levels across',
    async (_, print) => {
      const { pages } = await readPattern(await patternPdf(print));
      const form = pages.at(-1);
      const words = line(form);
      expect(words).toMatch(/^Fitting form/);
      expect(words).toMatch(/Front 1 \+ 2.+Side seam.+Back 1 \+ 2.+Notes/);
      const rings = (form?.lines ?? []).filter(({ points }) => points.length > 20);
      expect(rings).toHaveLength(12);
      // Centre front is in the middle: the widths mirror each other, and none lies on the next.
      const spans = rings
        .map(({ points }) => points.map(({ x }) => x))
        .map((xs) => [Math.min(...xs), Math.max(...xs)] as const)
        .sort(([a], [b]) => a - b);
      for (const [i, [, right]] of spans.entries())
        expect(spans[i + 1]?.[0] ?? Number.POSITIVE_INFINITY).toBeGreaterThan(right);
      const dashed = (form?.lines ?? []).filter(
        ({ points, dashed: isDashed }) => isDashed && points.length === 2,
      );
      expect(dashed).toHaveLength(3);
      expect(form?.texts.filter(({ text }) => text === '3')).toHaveLength(2);
    },
  );

  it.each([914.4, 841])('has its fitting form behind one page %s mm wide too', async (widthMm) => {
    const heightMm = widthMm === 841 ? 1189 : null;
    const { pages } = await readPattern(await onePagePdf(MOCKUP, { widthMm, heightMm, marginMm: 10 }));
    expect(pages).toHaveLength(2);
    expect(line(pages[1])).toMatch(/^Fitting form.+Notes/);
    expect(
      (await readPattern(await onePagePdf(PRINT, { widthMm: 914.4, heightMm: null, marginMm: 10 }))).pages,
    ).toHaveLength(1);
  });

  it('has lines across the finished pattern for waist and bust point on request', () => {
    const lined = linedPieces({ ...quickPattern('A4'), across: 'waistAndBust' });
    for (const { piece, lines } of lined)
      expect(
        lines.filter(({ kind }) => kind === 'level'),
        piece.id,
      ).toHaveLength(2);
  });

  it('has no lines of its own where the draft has no levels', () => {
    const none = draft({ ...DEMO_CLIENT.measurements, waist: null } as never, DEMO_SHEET.style);
    expect(linedPieces({ ...MOCKUP, draft: none })).toEqual([]);
  });
});
