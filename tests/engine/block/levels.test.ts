import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, type Measurements } from '../../../src/engine';
import { MEAN_BODY } from '../../support/drawBodies';

const names = (body: Partial<Measurements>): string[] =>
  draft({ ...MEAN_BODY, ...body }, DEFAULT_STYLE).levels.map(({ name }) => name);

const issuesOf = (body: Partial<Measurements>) => draft({ ...MEAN_BODY, ...body }, DEFAULT_STYLE).issues;

describe('levels', () => {
  it('go from the top down; the high hip is there when it was measured, half way', () => {
    expect(names({})).toEqual(['overBust', 'bust', 'underBust', 'waist', 'hip']);
    expect(names({ highHip: 880 })).toEqual(['overBust', 'bust', 'underBust', 'waist', 'highHip', 'hip']);
    const { levels } = draft({ ...MEAN_BODY, highHip: 880 }, DEFAULT_STYLE);
    const [waist, highHip, hip] = levels.slice(-3).map(({ y }) => y) as [number, number, number];
    expect(highHip).toBeCloseTo((waist + hip) / 2, 9);
  });

  it('out of order are refused at the measurement', () => {
    for (const [body, level] of [
      [{ neckToWaist: MEAN_BODY.neckToBust - 20 }, 'waist'],
      [{ neckToHip: MEAN_BODY.neckToWaist - 1 }, 'hip'],
      [{ neckToHip: MEAN_BODY.neckToWaist + 14.9 }, 'hip'],
    ] as const) {
      const made = draft({ ...MEAN_BODY, ...body }, DEFAULT_STYLE);
      expect(made.pieces).toEqual([]);
      expect(made.issues).toContainEqual(
        expect.objectContaining({
          code: 'levelsOutOfOrder',
          severity: 'error',
          at: expect.objectContaining({ level }),
        }),
      );
    }
  });

  it('an under-bust too near its neighbours, or above or below both, is left out and said', () => {
    for (const neckToUnderBust of [
      MEAN_BODY.neckToBust + 14,
      MEAN_BODY.neckToBust - 60,
      MEAN_BODY.neckToWaist - 14,
      MEAN_BODY.neckToWaist + 60,
    ]) {
      expect(names({ neckToUnderBust })).not.toContain('underBust');
      expect(issuesOf({ neckToUnderBust })).toContainEqual(
        expect.objectContaining({
          code: 'levelLeftOut',
          severity: 'warn',
          at: { level: 'underBust', field: 'neckToUnderBust' },
        }),
      );
    }
    expect(names({ neckToUnderBust: MEAN_BODY.neckToBust + 15 })).toContain('underBust');
  });

  it('an over-bust that was not measured is estimated and said', () => {
    const said = issuesOf({ overBust: null }).find(({ code }) => code === 'overBustEstimated');
    expect(said?.severity).toBe('note');
    // Gordon et al. 1989: SD 53.23 mm, correlation with bust girth 0.901; nineteen in twenty lie within 1.96 SDs
    expect(said?.values?.within).toBeCloseTo(45.26, 1);
    expect(issuesOf({}).map(({ code }) => code)).not.toContain('overBustEstimated');
  });

  it('a girth that ease and lacing gap use up is refused at its level', () => {
    const made = draft(
      { ...MEAN_BODY, waist: 560 },
      {
        ...DEFAULT_STYLE,
        ease: { ...DEFAULT_STYLE.ease, waist: -300 },
        closure: { front: 'seam', back: 'lacing', lacingGap: 290 },
      },
    );
    expect(made.pieces).toEqual([]);
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'girthUsedUp', severity: 'error', at: { level: 'waist' } }),
    );
  });

  it('bodies that break naive assumptions come out unblocked', () => {
    // Shares of the survey's women: under-bust under waist 6.6 %, over-bust over bust 23 %, hip under bust 9.6 % (NATICK/TR-89/044).
    for (const body of [
      { underBust: 700, waist: 760 },
      { overBust: 950, bust: 900 },
      { hip: 860, bust: 940 },
    ])
      expect(issuesOf(body).filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});
