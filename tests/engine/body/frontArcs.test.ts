import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, type Measurements } from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';
import { randomFrom, uniform } from '../../support/random';

const COUNT = howMany({ few: 40, all: 300 });

const levelsOf = (body: Partial<Measurements>) => {
  const { levels } = draft({ ...MEAN_BODY, ...body }, DEFAULT_STYLE);
  return new Map(levels.map((level) => [level.name, level]));
};

describe('a measured front arc', () => {
  it('sets the front’s part of its girth, ease shared in proportion; other levels keep the style’s', () => {
    const [plain, arced] = [levelsOf({}), levelsOf({ frontWaistArc: 400 })];
    const waist = arced.get('waist');
    const share = 400 / MEAN_BODY.waist;
    expect(waist?.frontShare).toBeCloseTo(share, 12);
    // The default style draws the waist in by 2 in and leaves the lacing gap off the back.
    const half = (MEAN_BODY.waist + DEFAULT_STYLE.ease.waist) / 2;
    expect(waist?.net.front).toBeCloseTo(share * half, 9);
    expect(waist?.net.back).toBeCloseTo((1 - share) * half - DEFAULT_STYLE.closure.lacingGap / 2, 9);
    for (const name of ['overBust', 'bust', 'underBust', 'hip'] as const)
      expect(arced.get(name)).toEqual(plain.get(name));
  });

  it('at the over-bust and under-bust lines sets those levels, and the bust’s part follows the back that they leave', () => {
    const { overBust } = MEAN_BODY;
    const plain = levelsOf({});
    const arced = levelsOf({ frontOverBustArc: 480, frontUnderBustArc: 400 });
    expect(arced.get('overBust')?.frontShare).toBeCloseTo(480 / (overBust ?? 0), 12);
    expect(arced.get('underBust')?.frontShare).toBeCloseTo(400 / MEAN_BODY.underBust, 12);
    // The back at the bust lies on the straight line between its two neighbours.
    const back = (name: 'overBust' | 'bust' | 'underBust') => {
      const level = arced.get(name);
      return level ? (1 - level.frontShare) * level.bodyGirth : Number.NaN;
    };
    const y = (name: 'overBust' | 'bust' | 'underBust') => arced.get(name)?.y ?? Number.NaN;
    const part = (y('bust') - y('overBust')) / (y('underBust') - y('overBust'));
    expect(back('bust')).toBeCloseTo(back('overBust') + part * (back('underBust') - back('overBust')), 9);
    for (const name of ['waist', 'hip'] as const) expect(arced.get(name)).toEqual(plain.get(name));
  });

  it('at the over-bust counts where that girth is estimated', () => {
    const made = draft({ ...MEAN_BODY, overBust: null, frontOverBustArc: 470 }, DEFAULT_STYLE);
    const level = made.levels.find(({ name }) => name === 'overBust');
    expect((level?.frontShare ?? 0) * (level?.bodyGirth ?? 0)).toBeCloseTo(470, 9);
  });

  it('of the part that the front has without it changes nothing', () => {
    const plain = levelsOf({}).get('bust');
    const frontBustArc = (plain?.frontShare ?? 0) * MEAN_BODY.bust;
    expect(levelsOf({ frontBustArc }).get('bust')?.net.front).toBeCloseTo(plain?.net.front ?? 0, 9);
  });

  it('that cannot be part of its girth is refused at its field, with the span it must lie in', () => {
    for (const frontHipArc of [0.19, 0.81].map((share) => share * (MEAN_BODY.hip ?? 0))) {
      const made = draft({ ...MEAN_BODY, frontHipArc }, DEFAULT_STYLE);
      expect(made.pieces).toEqual([]);
      expect(made.issues).toContainEqual({
        code: 'frontArcImpossible',
        severity: 'error',
        at: { field: 'frontHipArc', level: 'hip' },
        values: {
          arc: frontHipArc,
          girth: MEAN_BODY.hip,
          least: 0.2 * MEAN_BODY.hip,
          most: 0.8 * MEAN_BODY.hip,
        },
      });
    }
  });

  it('that is unusual is warned of and drafted', () => {
    const made = draft({ ...MEAN_BODY, frontBustArc: 0.63 * MEAN_BODY.bust }, DEFAULT_STYLE);
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'frontArcUnusual', severity: 'warn' }),
    );
    expect(made.pieces).not.toEqual([]);
  });

  it('without its girth has no issue beside that of the girth', () => {
    const { issues } = draft({ ...MEAN_BODY, waist: null, frontWaistArc: 400 }, DEFAULT_STYLE);
    expect(issues.map(({ code, at }) => [code, at.field])).toEqual([['measurementMissing', 'waist']]);
  });

  it(`keeps every bound on ${COUNT} drawn bodies with drawn arcs, seed 88`, DRAWN, () => {
    const random = randomFrom(88);
    for (const [i, body] of drawBodies(COUNT, 88).entries()) {
      const arced = {
        ...body,
        frontOverBustArc: uniform(random, 0.48, 0.54) * (body.overBust ?? body.bust),
        frontUnderBustArc: uniform(random, 0.48, 0.54) * body.underBust,
        frontBustArc: uniform(random, 0.48, 0.58) * body.bust,
        frontWaistArc: uniform(random, 0.46, 0.56) * body.waist,
        frontHipArc: uniform(random, 0.44, 0.54) * body.hip,
      };
      const findings = judge(arced, DEFAULT_STYLE, draft(arced, DEFAULT_STYLE));
      expect(findings.length, `body ${i}: measured`).toBeGreaterThan(100);
      expect(broken(findings), `body ${i}`).toEqual([]);
    }
  });
});
