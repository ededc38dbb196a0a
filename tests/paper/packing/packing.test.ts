// Panels packed close: never over each other, grain upright, never mirrored, and on no more sheets than rows of boxes take.

import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { draft, draftWhole, type Measurements, type Piece, type Style } from '../../../src/engine';
import {
  type Layout,
  layOut,
  layOutOnePage,
  type PaperName,
  type PatternInput,
  type PlacedPanel,
  paperChoice,
  patternDxf,
  patternSvg,
  planPanels,
} from '../../../src/paper';
import { turnedBy } from '../../../src/paper/geometry/turned';
import { linedPieces } from '../../../src/paper/layout/placePanels';
import { outlineWays } from '../../../src/paper/packing/placements';
import { rowsOnSheets } from '../../../src/paper/packing/rowsOnSheets';
import { costOfPlan, sheetsOfCost } from '../../../src/paper/packing/sheetPlan';
import { boxOfText, cornersOf } from '../../../src/paper/panel/textBlock';
import { stepAcross, stepDown } from '../../../src/paper/sheets/grid';
import { uprightPage } from '../../../src/paper/sheets/uprightPage';
import { drawBodies } from '../../support/bodies/drawBodies';
import { randomFrom } from '../../support/random';
import { randomStyle } from '../../support/styles/randomStyle';
import { TALL_CINCHER } from '../../support/styles/tallCincher';
import { DEMO_SHEET } from '../demoPattern';
import { type ReadPoint, sampled, toLines } from '../readPattern';

const SEED = 1180;
const BODIES = 24;
/** What the shears and the texts beside an edge need; our own bound. */
const CLEAR_MM = 10;

const inputFor = (lengths: Measurements, style: Style, paper: PaperName, nap: boolean): PatternInput => ({
  draft: draft(lengths, style),
  client: DEMO_CLIENT,
  savedDraft: { ...DEMO_SHEET, style },
  date: '24 November 2026',
  paper: paperChoice(paper),
  nap,
});

const inputs = new Map<string, PatternInput>();
/** The demo client in a ready style, the same object each time. */
const TALL = 'tall cincher';

function demoIn(name: string, paper: PaperName, nap: boolean): PatternInput {
  const key = [name, paper, nap].join();
  const style = name === TALL ? TALL_CINCHER : (NAMED_STYLES.get(name)?.style as Style);
  const input = inputs.get(key) ?? inputFor(DEMO_CLIENT.measurements, style, paper, nap);
  inputs.set(key, input);
  return input;
}

const layouts = new WeakMap<PatternInput, Layout>();
/** What {@link layOut} makes of an input, made once for all tests: that it is the same again is a test of its own. */
function laidOut(input: PatternInput): Layout {
  const layout = layouts.get(input) ?? layOut(input);
  layouts.set(input, layout);
  return layout;
}

const PAPERS = ['A4', 'Letter', 'Legal', 'A3'] as const;
const random = randomFrom(SEED);
/** Pieces beside the panels, and halves that differ. */
const OTHERS: readonly (readonly [string, PatternInput])[] = [
  [
    'with straps, facing and modesty panel on A4',
    inputFor(
      DEMO_CLIENT.measurements,
      {
        ...DEMO_SHEET.style,
        extras: {
          modesty: { overlap: 50.8 },
          facing: { width: 50.8 },
          straps: { length: 400, width: 25.4 },
        },
      },
      'A4',
      false,
    ),
  ],
  [
    'left and right apart on Legal',
    {
      ...inputFor(DEMO_CLIENT.measurements, DEMO_SHEET.style, 'Legal', false),
      draft: draftWhole(DEMO_CLIENT.measurements, DEMO_SHEET.style, {
        leftShare: { bust: 0.51, waist: 0.515 },
        rightLower: { waist: 8, hip: 10 },
      }),
    },
  ],
];

const CASES: readonly (readonly [string, PatternInput])[] = [
  ...[...NAMED_STYLES.keys()].flatMap((name) =>
    (['A4', 'Legal'] as const).map((paper) => [`${name} on ${paper}`, demoIn(name, paper, false)] as const),
  ),
  ...OTHERS,
  ...drawBodies(BODIES, SEED).map((body, i) => {
    const paper = PAPERS[i % 4] ?? 'A4';
    return [`body ${i} on ${paper}`, inputFor(body, randomStyle(random), paper, i % 6 === 5)] as const;
  }),
].filter(([, input]) => input.draft.pieces.length > 0);

const ringOf = ({ piece, offset }: PlacedPanel): ReadPoint[] =>
  [...piece.cutLine, piece.cutLine[0] as ReadPoint].map(({ x, y }) => ({ x: x + offset.x, y: y + offset.y }));

/** Two polylines that do not cross are nearest at a point of one of them; points between find those that do. */
const apart = (a: readonly ReadPoint[], b: readonly ReadPoint[]): number =>
  Math.min(
    ...sampled(a, 3).map((point) => toLines(point, [b])),
    ...sampled(b, 3).map((point) => toLines(point, [a])),
  );

const within = ({ x, y }: ReadPoint, ring: readonly ReadPoint[]): boolean =>
  ring.filter((a, i) => {
    const b = ring[(i + 1) % ring.length] as ReadPoint;
    return a.y > y !== b.y > y && a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) > x;
  }).length %
    2 ===
  1;

/** Twice the area, with the sign of the way round. */
const turnOf = ({ cutLine }: Piece): number =>
  cutLine.reduce((sum, { x, y }, i) => {
    const next = cutLine[(i + 1) % cutLine.length] as ReadPoint;
    return sum + x * next.y - next.x * y;
  }, 0);

/** Left, top, right and foot of what is drawn. mm */
function reach(points: readonly ReadPoint[]): [number, number, number, number] {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Whether the boxes round two drawings are less than a length apart, mm. */
function near(a: readonly ReadPoint[], b: readonly ReadPoint[], mm: number): boolean {
  const [left, top, right, foot] = reach(a);
  const [otherLeft, otherTop, otherRight, otherFoot] = reach(b);
  return left < otherRight + mm && right > otherLeft - mm && top < otherFoot + mm && foot > otherTop - mm;
}

function expectApart(panels: readonly PlacedPanel[]): void {
  const rings = panels.map(ringOf);
  for (const [i, ring] of rings.entries())
    for (const other of rings.slice(i + 1)) {
      if (!near(ring, other, CLEAR_MM)) continue;
      expect(apart(ring, other)).toBeGreaterThan(CLEAR_MM - 0.01);
      expect(within(ring[0] as ReadPoint, other) || within(other[0] as ReadPoint, ring)).toBe(false);
    }
}

/** Cosine and sine of quarter turns. */
const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** By another library's polygons: no two panels share an area, and all lie on the plan. mm */
function expectOnPlan(panels: readonly PlacedPanel[], width: number, height: number): void {
  const drawn = panels.map((panel) => [ringOf(panel).map(({ x, y }): [number, number] => [x, y])]);
  for (const [i, ring] of drawn.entries())
    for (const other of drawn.slice(i + 1)) expect(polygonClipping.intersection(ring, other)).toEqual([]);
  const plan: [number, number][] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  for (const ring of drawn) expect(polygonClipping.difference(ring, [plan])).toEqual([]);
}

/** As drafted, or turned by exact quarter turns. */
function expectGrainKept(panels: readonly PlacedPanel[], drafted: readonly Piece[]): void {
  expect(panels.map(({ piece }) => piece.id)).toEqual(drafted.map(({ id }) => id));
  for (const [i, { piece, turns }] of panels.entries()) {
    const own = drafted[i] as Piece;
    const [cos, sin] = QUARTERS[turns];
    const asLaid = ({ x, y }: ReadPoint): number[] => [cos * x + sin * y + 0, cos * y - sin * x + 0];
    expect(piece.grain.map(({ x, y }) => [x, y])).toEqual(own.grain.map(asLaid));
    expect(piece.cutLine.map(({ x, y }) => [x + 0, y + 0])).toEqual(own.cutLine.map(asLaid));
    expect(turnOf(piece)).toBeCloseTo(turnOf(own), 4);
  }
}

function expectTextsClear(panels: readonly PlacedPanel[]): void {
  const boxes = panels.flatMap(({ texts }) => texts.map((text) => cornersOf(boxOfText(text))));
  const edges = boxes.map((box) => sampled([...box, box[0] as ReadPoint], 1));
  const lines = panels.flatMap((panel) => panel.lines.map(({ points }) => points));
  for (const [i, edge] of edges.entries()) {
    const close = lines.filter((line) => near(edge, line, 1));
    expect(Math.min(Infinity, ...edge.map((point) => toLines(point, close)))).toBeGreaterThan(0.2);
    for (const [j, box] of boxes.entries())
      if (j !== i && near(edge, box, 1)) expect(edge.some((point) => within(point, box))).toBe(false);
  }
  // From left to right or from the foot up, give or take the slope of an edge.
  for (const { texts } of panels)
    for (const { turnRad } of texts) {
      expect(turnRad).toBeGreaterThan(-Math.PI / 2 - Math.PI / 9 - 1e-9);
      expect(turnRad).toBeLessThanOrEqual(Math.PI / 2 - Math.PI / 9 + 1e-9);
    }
}

describe(`packing, ready-made styles and ${BODIES} drawn bodies in random styles, seed ${SEED}`, () => {
  it.each(CASES)('%s', (_, input) => {
    const { panels, sheets, grid } = laidOut(input);
    expectApart(panels);
    expectOnPlan(
      panels,
      grid.columns * stepAcross(grid) + grid.overlapMm,
      grid.rows * stepDown(grid) + grid.overlapMm,
    );
    expectGrainKept(panels, [...input.draft.pieces, ...input.draft.extras]);
    expectTextsClear(panels);
    if (input.nap) expect(panels.some(({ turns }) => turns > 0)).toBe(false);
    // Text beside an edge may take a sheet of its own; cut lines never take more than in rows.
    const outlines = linedPieces(input).map((each) => outlineWays(each, []));
    const page = uprightPage(input.paper);
    const rows = rowsOnSheets(outlines, page, ['portrait', 'landscape']);
    expect(sheets.length).toBeLessThanOrEqual(sheetsOfCost(costOfPlan(rows, outlines)) + 1);
  });

  it.each(CASES.filter((_, i) => i % 5 === 0))('%s, and on a roll', (_, input) => {
    for (const nap of [false, true]) {
      const { panels, widthMm, heightMm } = planPanels({ ...input, nap }, 914.4);
      expectApart(panels);
      expectGrainKept(panels, [...input.draft.pieces, ...input.draft.extras]);
      expectTextsClear(panels);
      for (const { x, y } of panels.flatMap(ringOf)) {
        expect(Math.min(x, y, widthMm - x, heightMm - y)).toBeGreaterThan(CLEAR_MM - 0.01);
        expect(widthMm).toBeLessThanOrEqual(914.4 + 1e-6);
      }
      if (nap) expect(panels.some(({ turns }) => turns > 0)).toBe(false);
    }
  });
});

describe('packing', () => {
  const sheetsFor = (style: string, paper: PaperName, nap: boolean): number =>
    laidOut(demoIn(style, paper, nap)).sheets.length;

  it('takes fewer sheets than rows of boxes do', () => {
    // In rows of boxes these took 9, 4, 6 and 3, counted before outlines were packed.
    expect(sheetsFor('long-line', 'Letter', true)).toBeLessThan(9);
    expect(sheetsFor('long-line', 'A3', false)).toBeLessThan(4);
    expect(sheetsFor('stage-bodice', 'Legal', true)).toBeLessThan(6);
    expect(sheetsFor(TALL, 'Legal', false)).toBeLessThan(3);
    // These took 10 and 9 before panels were laid sideways.
    expect(sheetsFor('off-shoulder-bridal', 'A4', false)).toBeLessThan(10);
    expect(sheetsFor('armhole-bridal', 'A4', false)).toBeLessThan(9);
  });

  it('turns panels only where that saves a sheet, and none on cloth with a nap', () => {
    expect(sheetsFor(TALL, 'Legal', true)).toBeGreaterThan(sheetsFor(TALL, 'Legal', false));
    for (const paper of ['A4', 'Letter'] as const) {
      const [plain, nap] = [false, true].map((each) => laidOut(demoIn('default', paper, each)));
      expect(plain?.sheets.length).toBe(nap?.sheets.length);
      expect(plain?.panels.some(({ turns }) => turns > 0)).toBe(false);
    }
  });

  it('lays the same pattern out the same', () => {
    for (const [, input] of CASES.slice(0, 6)) expect(layOut(input)).toEqual(laidOut(input));
  });

  it('keeps heads up in drawings for other programs', () => {
    const input = demoIn(TALL, 'Legal', false);
    expect(laidOut(input).panels.some(({ turns }) => turns > 0)).toBe(true);
    for (const write of [patternSvg, patternDxf]) expect(write(input)).toBe(write({ ...input, nap: true }));
  });

  it('never needs a longer roll than rows of boxes', () => {
    for (const [, { style }] of NAMED_STYLES) {
      const input = inputFor(DEMO_CLIENT.measurements, style, 'A4', false);
      const choice = { widthMm: 609.6, heightMm: null, marginMm: 10 };
      const [plain, nap] = [false, true].map((each) => layOutOnePage({ ...input, nap: each }, choice));
      if (!plain?.ok || !nap?.ok) throw new Error('a roll takes any of them');
      expect(plain.page.heightMm).toBeLessThanOrEqual(nap.page.heightMm + 1e-6);
    }
  });

  it('turns whatever points a piece holds', () => {
    const data = { id: 'x', at: { x: 1, y: -2 }, more: [{ points: [{ x: 0, y: 3 }], edge: null, count: 2 }] };
    expect(turnedBy(data, 2)).toEqual({
      id: 'x',
      at: { x: -1, y: 2 },
      more: [{ points: [{ x: 0, y: -3 }], edge: null, count: 2 }],
    });
    // The head, at −y, goes to the left.
    expect(turnedBy({ x: 0, y: -3 }, 1)).toEqual({ x: -3, y: 0 });
    expect(turnedBy(turnedBy(data, 1), 3)).toEqual(data);
    expect(turnedBy(turnedBy(data, 1), 1)).toEqual(turnedBy(data, 2));
  });
});
