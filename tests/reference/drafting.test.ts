// Figures from outside the program, each with its source, reproduced from drafted blocks and outlines.
// [seen] the figure was read in the source; [secondary] in a text that cites it; [practice] common practice, no source.

import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  draft,
  inches,
  type Measurements,
  type PerLevel,
  type Style,
  type Wedge,
  xAt,
} from '../../src/engine';
import { MEAN_BODY } from '../support/bodies/drawBodies';
import { broken, judge } from '../support/judges/judge';
import { legSpan, ringOf, widthAcross } from '../support/judges/outline';

const every = (value: number): PerLevel => ({
  overBust: value,
  bust: value,
  underBust: value,
  waist: value,
  highHip: value,
  hip: value,
});

const byHand = (
  id: string,
  station: number,
  intake: Partial<PerLevel>,
  block: Wedge['block'] = 'front',
): Wedge => ({
  id,
  kind: 'through',
  block,
  station,
  stationAt: {},
  sizing: 'manual',
  intake,
  weight: 1,
});

const HALVES: Partial<Style> = {
  frontShare: every(0.5),
  ease: every(0),
  closure: { front: 'seam', back: 'lacing', lacingGap: 0 },
};

/** Sewn girth at a level, measured across the finished outlines. */
function sewn(body: Measurements, style: Style, level: keyof PerLevel): number {
  const made = draft(body, style);
  const y = made.levels.find(({ name }) => name === level)?.y ?? Number.NaN;
  return 2 * made.pieces.reduce((sum, piece) => sum + (widthAcross(ringOf(piece), y) ?? Number.NaN), 0);
}

describe('darts', () => {
  // Dart angle = 2·asin(w/2L): 2 cm at 13 cm is 8.82°. NIMI 2024, p. 180 [seen].
  it('2 cm at 13 cm open by 8.82°, and by the same wherever the wedge stands', () => {
    for (const station of [-0.3, 0, 0.25]) {
      const body = {
        ...MEAN_BODY,
        neckToUnderBust: MEAN_BODY.neckToBust + 5,
        neckToWaist: MEAN_BODY.neckToBust + Math.sqrt(130 ** 2 - 10 ** 2),
      };
      const made = draft(body, { ...DEFAULT_STYLE, wedges: [byHand('dart', station, { waist: 20 })] });
      const dart = made.blocks?.front.wedges[0];
      const waist = made.levels.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
      const bust = made.levels.find(({ name }) => name === 'bust')?.y ?? Number.NaN;
      if (!dart) throw new Error('the dart is drafted');
      expect(made.levels.map(({ name }) => name)).not.toContain('underBust');
      // Its point lies at the bust, its mouth at the waist; the axis leans with its station, so it is set upright.
      const point = { x: xAt(dart.axis, waist), y: bust };
      expect(xAt(dart.outerLeg, bust) - xAt(dart.innerLeg, bust)).toBeCloseTo(0, 9);
      const legs = [dart.innerLeg, dart.outerLeg].map((leg) => ({
        x: xAt(leg, waist) - point.x,
        y: waist - point.y,
      }));
      for (const leg of legs) expect(Math.hypot(leg.x, leg.y)).toBeCloseTo(130, 9);
      const [inner, outer] = legs.map(({ x, y }) => Math.atan2(x, y)) as [number, number];
      expect(((outer - inner) * 180) / Math.PI).toBeCloseTo(8.82, 2);
    }
  });

  // 2 in over 5 panels is "about 3/8": 5 × 3/8 = 1 7/8 loses 1/8, so the sum is rounded, not the parts. Waist 30 → 27
  // over a pattern's half waist of 11 1/2 [seen].
  it('typed to eighths lose nothing of the girth: the side seam takes the rest', () => {
    const body = { ...MEAN_BODY, waist: inches(30) };
    const eighths = [-0.7, -0.3, 0.1, 0.4, 0.7].map((station, i) =>
      byHand(`p${i}`, station, { waist: inches(3 / 8) }),
    );
    const style = { ...DEFAULT_STYLE, ...HALVES, ease: { ...every(0), waist: inches(-3) }, wedges: eighths };
    expect(sewn(body, style, 'waist')).toBeCloseTo(inches(27), 6);
    const { taken } = draft(body, style).proof.ledger.find(({ level }) => level === 'waist') ?? {};
    const wedges = Object.values(taken?.wedges ?? {}).reduce((sum, each) => sum + each, 0);
    expect(wedges).toBeCloseTo(inches(1 + 7 / 8), 9);
    expect(wedges + (taken?.sideSeam.front ?? 0)).toBeCloseTo((body.bust - inches(27)) / 4, 9);
  });

  // Ingalls, Text-Book on Domestic Art [seen]: half front = (bust − back width)/2, finished waist = waist/4;
  // for 36 / 13 / 24 half front 11.50, dart total 4.75. Half front and quarter waist differ by 5.50; that the 0.75 left
  // over is taken at the side is our draft's doing, not read in her.
  it("Ingalls's 36 / 13 / 24: half front 11.50, darts 4.75", () => {
    const body = {
      ...MEAN_BODY,
      overBust: inches(35),
      bust: inches(36),
      underBust: inches(30),
      waist: inches(24),
    };
    const share = { ...every(0.5), bust: 23 / 36 };
    const darts = [
      byHand('first', -0.1, { waist: inches(2.375) }),
      byHand('second', 0.35, { waist: inches(2.375) }),
    ];
    const made = draft(body, { ...DEFAULT_STYLE, ...HALVES, frontShare: share, wedges: darts });
    const [bust, waist] = ['bust', 'waist'].map((name) => made.levels.find((level) => level.name === name));
    expect(bust?.net.front).toBeCloseTo(inches(11.5), 9);
    expect(waist?.net.front).toBeCloseTo(inches(6), 9);
    const row = made.proof.ledger.find(({ level }) => level === 'waist');
    expect((row?.taken.wedges.first ?? 0) + (row?.taken.wedges.second ?? 0)).toBeCloseTo(inches(4.75), 9);
    expect(row?.taken.sideSeam.front).toBeCloseTo(inches(0.75), 9);
  });

  // Symonds 1876, p. 38 [seen]: front chest 20, waist 24 → 10 − 6 = 4 in of dart in each half front.
  it("Symonds's front chest 20 and waist 24: 4 in of dart in each half front", () => {
    const body = {
      ...MEAN_BODY,
      overBust: inches(36),
      bust: inches(38),
      underBust: inches(31),
      waist: inches(24),
    };
    const style = {
      ...DEFAULT_STYLE,
      ...HALVES,
      frontShare: { ...every(0.5), bust: 20 / 38 },
      balance: { sideShare: 0, cap: 300 },
    };
    const row = draft(body, style).proof.ledger.find(({ level }) => level === 'waist');
    const front = ['front-centre', 'front-bust', 'front-side'].reduce(
      (sum, id) => sum + (row?.taken.wedges[id] ?? 0),
      0,
    );
    expect(front).toBeCloseTo(inches(4), 9);
    expect(row?.taken.sideSeam.front).toBeCloseTo(0, 9);
  });

  // Rule of thumb [practice]: flat waist width of the front = (waist − reduction)/4 + all wedges.
  it('the flat front waist is a quarter of the reduced waist and all its wedges', () => {
    const intakes = [inches(0.5), inches(1.5), inches(1)];
    const wedges = [-1, 0, 0.5].map((station, i) =>
      byHand(`w${i}`, station, { waist: intakes[i] as number }),
    );
    const made = draft(MEAN_BODY, {
      ...DEFAULT_STYLE,
      ...HALVES,
      ease: { ...every(0), waist: inches(-2) },
      wedges,
    });
    expect(made.blocks?.front.width.get('waist')).toBeCloseTo(
      (MEAN_BODY.waist - inches(2)) / 4 + inches(3),
      9,
    );
  });
});

describe('girths', () => {
  // Ten per cent reduction: 32.5 → 29.25, 34 → 30.6 [seen].
  it.each([
    [32.5, 29.25],
    [34, 30.6],
  ])('a waist of %f in less ten per cent is sewn at %f in', (waist, reduced) => {
    const body = {
      ...MEAN_BODY,
      overBust: inches(39),
      bust: inches(40.375),
      underBust: inches(34),
      waist: inches(waist),
      hip: inches(43),
    };
    const style = { ...DEFAULT_STYLE, ...HALVES, ease: { ...every(0), waist: -0.1 * inches(waist) } };
    expect(sewn(body, style, 'waist') / 25.4).toBeCloseTo(reduced, 6);
  });

  // Spirella manual 1912–13 [seen]: deduction for lacing at bust, waist, hip, back-laced 3 / 2 / 3 in, front-laced
  // 2 / 2 / 1 in; a body of 36 / 26 / 38 back-laced is cut 33 / 24 / 35. The front-laced 34 / 24 / 37 is arithmetic.
  it.each([
    [
      [3, 2, 3],
      [33, 24, 35],
    ],
    [
      [2, 2, 1],
      [34, 24, 37],
    ],
  ])('the body of 36 / 26 / 38 less %j in is cut %j in', (less, cut) => {
    const body = {
      ...MEAN_BODY,
      overBust: inches(34.5),
      bust: inches(36),
      underBust: inches(30),
      waist: inches(26),
      hip: inches(38),
    };
    // The gap is the same all down, so what differs from it goes into the ease.
    const gap = 2;
    const [bust, waist, hip] = less.map((deduction) => inches(gap - deduction)) as [number, number, number];
    const style = {
      ...DEFAULT_STYLE,
      hemBelow: 230,
      ease: { ...every(0), bust, waist, hip },
      closure: { front: 'seam' as const, back: 'lacing' as const, lacingGap: inches(gap) },
    };
    const whole = { ...body, neckToHip: body.neckToWaist + 180 };
    const girths = (['bust', 'waist', 'hip'] as const).map(
      (level) => Math.round((sewn(whole, style, level) / 25.4) * 1e6) / 1e6,
    );
    expect(girths).toEqual(cut);
  });

  // "The Practical Corsetiere", p. 40 [seen]: where the half hip is wider than the half bust, the panels overlap
  // (cloth added): bust 40, hips 41. The draft adds it round the body, most of it in the wedges.
  it('a hip wider than the bust is added at the wedges and at the side, and the girth is met', () => {
    const body = {
      ...MEAN_BODY,
      overBust: inches(38),
      bust: inches(40),
      underBust: inches(34),
      waist: inches(30),
      hip: inches(41),
    };
    const made = draft(body, DEFAULT_STYLE);
    const wedges = [...(made.blocks?.front.wedges ?? []), ...(made.blocks?.back.wedges ?? [])];
    const added = wedges.reduce((sum, { intake }) => sum - (intake.get('hip') ?? 0), 0);
    const side = made.proof.ledger.find(({ level }) => level === 'hip')?.taken.sideSeam;
    const atSide = -((side?.front ?? 0) + (side?.back ?? 0));
    expect(Math.min(...wedges.map(({ intake }) => intake.get('hip') ?? 0))).toBeLessThan(0);
    // Half of what hip and bust differ by.
    expect(added + atSide).toBeCloseTo(inches(0.5), 9);
  });
});

/** Sizes are girths only; the lengths are the survey's means (NATICK/TR-89/044), over-bust estimated from bust. */
const sized = (girths: {
  bust: number;
  underBust: number;
  waist: number;
  hip: number;
  overBust?: number;
}): Measurements => ({
  ...MEAN_BODY,
  overBust: null,
  ...girths,
});

describe('standard sizes drafted whole', () => {
  const expectWhole = (body: Measurements): void => {
    const style = { ...DEFAULT_STYLE, ease: every(0) };
    const made = draft(body, style);
    expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(made.pieces).toHaveLength(6);
    expect(broken(judge(body, style, made))).toEqual([]);
    for (const row of made.proof.ledger.filter(({ y }) =>
      made.pieces.every((piece) => y > legSpan(piece).from && y < legSpan(piece).to),
    ))
      expect(row.sewnGirth).toBeCloseTo(row.bodyGirth - inches(2), 6);
  };

  // EN 13402-3 women, bust / waist / hip in cm: R package Anthropometry, which cites CEN 2005 [secondary].
  // It has no under-bust: taken half way between bust and waist, less 20 mm (our own guess).
  it.each([
    [76, 60, 84],
    [80, 64, 88],
    [84, 68, 92],
    [88, 72, 96],
    [92, 76, 100],
    [96, 80, 104],
    [100, 84, 108],
    [104, 88, 112],
    [110, 94, 117],
    [116, 100, 122],
    [122, 106, 127],
    [128, 112, 132],
  ])('EN 13402-3 woman of %d / %d / %d cm', (bust, waist, hip) => {
    expectWhole(
      sized({ bust: 10 * bust, waist: 10 * waist, hip: 10 * hip, underBust: 5 * (bust + waist) - 20 }),
    );
  });

  // ASTM D5585-11e1 misses, catalogue page [seen]: bust, under-bust, upper chest, waist curvy and straight, in. It shows
  // no hip: taken 10 in over the curvy waist (our own guess).
  it.each([
    [8, 36.25, 30, 35.875, 28, 29.5],
    [14, 40.375, 34, 39.25, 32.5, 34],
    [20, 46, 39.625, 43.875, 39, 40.5],
  ])('ASTM D5585 size %d, curvy and straight', (_, bust, underBust, overBust, curvy, straight) => {
    for (const waist of [curvy, straight])
      expectWhole(
        sized({
          bust: inches(bust),
          underBust: inches(underBust),
          overBust: inches(overBust),
          waist: inches(waist),
          hip: inches(curvy + 10),
        }),
      );
  });
});
