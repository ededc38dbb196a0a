// Heights and front shares of the levels, from what was measured.

import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  draft,
  draftWhole,
  inches,
  type Measurements,
  SIDES,
  type Style,
  withPoints,
} from '../../../../src/engine';
import { USUAL_FRONT_SHARE } from '../../../../src/engine/block/lines/levels';
import { drawBodies, MEAN_BODY } from '../../../support/bodies/drawBodies';

const drafted = (body: Partial<Measurements>, style: Partial<Style> = {}) => {
  const made = draft({ ...MEAN_BODY, ...body }, { ...DEFAULT_STYLE, ...style });
  const levels = new Map(made.levels.map((level) => [level.name, level]));
  return { made, levels, top: made.span?.top ?? Number.NaN };
};

const { neckToBust, neckToWaist, neckToHip } = MEAN_BODY as typeof MEAN_BODY & { neckToHip: number };

describe('the over-bust line', () => {
  const above = (underarmToWaist: number | null, style: Partial<Style> = {}): number =>
    neckToBust - (drafted({ underarmToWaist }, style).levels.get('overBust')?.y ?? Number.NaN);

  it('lies at the armpit that was measured, 25 to 100 mm above the bust line', () => {
    const armpit = neckToWaist - neckToBust + 60;
    expect(above(armpit)).toBeCloseTo(60, 9);
    expect(above(armpit - 50)).toBe(25);
    expect(above(armpit + 90)).toBe(100);
  });

  // 2 in: common practice, no source
  it('lies 2 in above the bust line where no armpit was measured', () => {
    expect(above(null)).toBeCloseTo(inches(2), 9);
  });

  it('lies where the style sets it, whatever was measured', () => {
    expect(above(neckToWaist - neckToBust + 60, { overBustAbove: 33 })).toBeCloseTo(33, 9);
  });
});

describe('a level top edge', () => {
  it('stands 12 mm under the armpit that was measured, else on the line it is measured from', () => {
    const underarmToWaist = neckToWaist - neckToBust + 60;
    expect(drafted({ underarmToWaist }).top).toBeCloseTo(neckToWaist - underarmToWaist + 12, 9);
    expect(drafted({ underarmToWaist }, { topAbove: 20 }).top).toBeCloseTo(
      neckToWaist - underarmToWaist - 8,
      9,
    );
    expect(drafted({ underarmToWaist: null }).top).toBeCloseTo(neckToBust - inches(2), 9);
    expect(drafted({ underarmToWaist }, { overBustAbove: 40 }).top).toBeCloseTo(neckToBust - 40, 9);
    expect(drafted({ underarmToWaist }, { topFrom: 'waist', topAbove: 70 }).top).toBeCloseTo(
      neckToWaist - 70,
      9,
    );
  });
});

describe('a top edge that is measured from the under-bust', () => {
  const edge = (underBust: number, topAbove = -6) =>
    drafted({ neckToUnderBust: underBust }, { topFrom: 'underBust', topAbove });
  const said = ({ made }: ReturnType<typeof drafted>) =>
    made.issues.filter(({ code }) => code === 'topLineEstimated');
  const between = (neckToBust + neckToWaist) / 2;

  it('is measured from where the under-bust was measured as long as the draft has that level', () => {
    for (const underBust of [neckToBust + 15, neckToBust + 60, neckToWaist - 15]) {
      expect(edge(underBust).top).toBeCloseTo(underBust + 6, 9);
      expect(said(edge(underBust))).toEqual([]);
    }
  });

  it('is measured from half way between bust and waist where it does not, and that is said', () => {
    for (const underBust of [neckToBust - 5, neckToBust + 14.9, neckToWaist - 14.9, neckToWaist + 10]) {
      const of = edge(underBust);
      expect(of.levels.has('underBust')).toBe(false);
      expect(of.top).toBeCloseTo(between + 6, 9);
      expect(edge(underBust, 12).top).toBeCloseTo(between - 12, 9);
      expect(said(of)).toEqual([
        {
          code: 'topLineEstimated',
          severity: 'warn',
          at: { field: 'topFrom' },
          values: { above: expect.closeTo(neckToWaist - between, 9) },
        },
      ]);
    }
  });

  it('is measured alike on both halves where one of them goes without the level', () => {
    const body = { ...MEAN_BODY, neckToUnderBust: neckToWaist - 18 };
    const style: Style = { ...DEFAULT_STYLE, topFrom: 'underBust', topAbove: -6 };
    const tops = (underBust: number) => {
      const whole = draftWhole(body, style, { leftShare: {}, rightLower: { underBust } });
      return { whole, at: SIDES.map((side) => whole.halves?.[side].span?.top) };
    };
    expect(tops(2).at).toEqual([neckToWaist - 12, neckToWaist - 10].map((y) => expect.closeTo(y, 9)));
    const { whole, at } = tops(10);
    expect(at).toEqual([between + 6, between + 6].map((y) => expect.closeTo(y, 9)));
    expect(whole.issues.filter(({ code }) => code === 'topLineEstimated')).toHaveLength(1);
    expect(whole.issues.map(({ code }) => code)).not.toContain('topOnBreast');
    // The left half is the one that goes without, where the under-bust lies higher on the right.
    const other = draftWhole({ ...body, neckToUnderBust: neckToWaist - 10 }, style, {
      leftShare: {},
      rightLower: { underBust: -20 },
    });
    expect(SIDES.map((side) => other.halves?.[side].span?.top)).toEqual(
      [between + 6, between + 6].map((y) => expect.closeTo(y, 9)),
    );
  });

  it('leaves an edge alone that is measured from another line', () => {
    const low = { neckToUnderBust: neckToWaist + 10 };
    for (const style of [{}, { topFrom: 'waist', topAbove: 60 }] as const) {
      expect(drafted(low, style).top).toBe(drafted({}, style).top);
      expect(said(drafted(low, style))).toEqual([]);
    }
  });
});

describe('the high hip', () => {
  it('lies where it was measured, else half way between waist and hip', () => {
    const highHip = MEAN_BODY.hip - 60;
    const y = (body: Partial<Measurements>) => drafted({ highHip, ...body }).levels.get('highHip')?.y;
    expect(y({})).toBeCloseTo((neckToWaist + neckToHip) / 2, 9);
    expect(y({ waistToHighHip: 80 })).toBeCloseTo(neckToWaist + 80, 9);
    expect(drafted({ highHip: null, waistToHighHip: 80 }).levels.has('highHip')).toBe(false);
  });

  it('is left out with a warning where it would lie at the hip', () => {
    const { made, levels } = drafted({ highHip: MEAN_BODY.hip, waistToHighHip: neckToHip - neckToWaist - 5 });
    expect(levels.has('highHip')).toBe(false);
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'levelLeftOut', at: { level: 'highHip', field: 'waistToHighHip' } }),
    );
  });
});

describe('the front’s share of the bust', () => {
  const backHalf = (
    { levels }: ReturnType<typeof drafted>,
    name: 'overBust' | 'bust' | 'underBust',
  ): number => {
    const level = levels.get(name);
    return level ? ((1 - level.frontShare) * level.bodyGirth) / 2 : Number.NaN;
  };

  it('is what the back leaves, whose half lies on the line between over-bust and under-bust', () => {
    for (const body of drawBodies(60, 4)) {
      const of = drafted(body);
      const [above, bust, below] = (['overBust', 'bust', 'underBust'] as const).map(
        (name) => of.levels.get(name)?.y ?? Number.NaN,
      ) as [number, number, number];
      if (!of.levels.has('underBust')) continue;
      const line =
        backHalf(of, 'overBust') +
        ((bust - above) / (below - above)) * (backHalf(of, 'underBust') - backHalf(of, 'overBust'));
      const share = of.levels.get('bust')?.frontShare ?? Number.NaN;
      expect(share).toBeGreaterThanOrEqual(0.48);
      expect(share).toBeLessThanOrEqual(0.66);
      const girth = (name: 'overBust' | 'bust' | 'underBust'): number => of.levels.get(name)?.bodyGirth ?? 0;
      const round =
        girth('overBust') + ((bust - above) / (below - above)) * (girth('underBust') - girth('overBust'));
      const part = Math.min(1, girth('bust') / round);
      if (share > 0.48 && share < 0.66) expect(backHalf(of, 'bust')).toBeCloseTo(part * line, 9);
    }
  });

  it('is as it is above and below where the bust is smaller than the girths there, so that front and back have alike less', () => {
    const flat = { overBust: 900, underBust: 800, underarmToWaist: null };
    // 50.8 mm down of the 125.8 mm between them, the line from 900 to 800 stands at 859.6.
    for (const bust of [760, 800, 840, 859])
      expect(drafted({ ...flat, bust }).levels.get('bust')?.frontShare).toBeCloseTo(0.515, 9);
    expect(drafted({ ...flat, bust: 880 }).levels.get('bust')?.frontShare).toBeGreaterThan(0.52);
  });

  it('is the style’s where it sets one, and the arc’s where one was measured', () => {
    expect(drafted({}, { frontShare: { bust: 0.5 } }).levels.get('bust')?.frontShare).toBe(0.5);
    const frontBustArc = 0.51 * MEAN_BODY.bust;
    expect(
      drafted({ frontBustArc }, { frontShare: { bust: 0.5 } }).levels.get('bust')?.frontShare,
    ).toBeCloseTo(0.51, 12);
  });

  it('is the usual one where no front wedge reaches the top edge', () => {
    const darts = DEFAULT_STYLE.wedges.map((wedge) =>
      wedge.block === 'front' && wedge.station > -1
        ? withPoints(wedge, { upper: { from: 'bust', below: 30 } })
        : wedge,
    );
    const wedges = darts.filter(({ id }) => id !== 'front-centre');
    expect(drafted({}, { wedges }).levels.get('bust')?.frontShare).toBe(USUAL_FRONT_SHARE.bust);
    const open = wedges.map((wedge) =>
      wedge.id === 'front-side' ? withPoints(wedge, { lower: { from: 'bust', below: -10 } }) : wedge,
    );
    expect(drafted({}, { wedges: open }).levels.get('bust')?.frontShare).toBeGreaterThan(
      USUAL_FRONT_SHARE.bust,
    );
  });

  // A trade example: bust 86 and under-bust 78 cm are drafted with 46 in front and 40 behind. Cutting table read once; its
  // over-bust girth is not given and is estimated.
  it('divides a bust of 86 cm over ribs of 78 into 46 in front and 40 behind, to 5 mm a half', () => {
    const { levels } = drafted({ bust: 860, underBust: 780, overBust: null, waist: 680, hip: 920 });
    const { frontShare, bodyGirth } = levels.get('bust') ?? { frontShare: Number.NaN, bodyGirth: Number.NaN };
    expect(Math.abs((frontShare * bodyGirth) / 2 - 230)).toBeLessThanOrEqual(5);
    expect(Math.abs(((1 - frontShare) * bodyGirth) / 2 - 200)).toBeLessThanOrEqual(5);
  });
});
