import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, inches, type Measurements, type Style } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';

const codes = (body: Partial<Measurements>, style: Partial<Style> = {}): string[] =>
  draft({ ...MEAN_BODY, ...body }, { ...DEFAULT_STYLE, ...style }).issues.map(
    ({ severity, code }) => `${severity} ${code}`,
  );

const reduced = (mm: number, waist = 1100): string[] =>
  codes(
    { waist, underBust: 1050, bust: 1250, overBust: 1150, hip: 1300 },
    { ease: { ...DEFAULT_STYLE.ease, waist: -mm } },
  ).filter((code) => code.includes('waistReduction'));

describe('waist reduction', () => {
  it('is silent up to 2 in, noted above, and a warning above 4 in', () => {
    expect(reduced(inches(2) + 0.4)).toEqual([]);
    expect(reduced(inches(2) + 0.6)).toEqual(['note waistReduction']);
    expect(reduced(inches(4) + 0.4)).toEqual(['note waistReduction']);
    expect(reduced(inches(4) + 0.6)).toEqual(['warn waistReductionHigh']);
  });

  it('is a warning above ten per cent of a waist for which that is less', () => {
    expect(reduced(70.4, 700)).toEqual(['note waistReduction']);
    expect(reduced(70.6, 700)).toEqual(['warn waistReductionHigh']);
  });

  it('is none when the waist has room', () => {
    expect(reduced(-30)).toEqual([]);
  });
});

describe('reduction at the other girths', () => {
  const said = (ease: Partial<Style['ease']>, body: Partial<Measurements> = {}): string[] =>
    draft({ ...MEAN_BODY, ...body }, { ...DEFAULT_STYLE, ease: { ...DEFAULT_STYLE.ease, ...ease } })
      .issues.filter(({ code }) => /^(rib|girth)Reduction/.test(code))
      .map(({ severity, code, at }) => `${severity} ${code} ${at.field}`);
  const tenth = (name: 'bust' | 'underBust' | 'hip'): number => MEAN_BODY[name] / 10;

  // 10 % or 4 in, whichever is less: common practice for the waist, no source
  it('is silent up to the ceiling of the waist and a warning past it, over the ribs of its own kind', () => {
    expect(tenth('underBust')).toBeLessThan(inches(4));
    expect(said({ underBust: -0.4 - tenth('underBust') })).toEqual([]);
    expect(said({ underBust: -0.6 - tenth('underBust') })).toEqual(['warn ribReductionHigh ease.underBust']);
    expect(said({ bust: -0.4 - tenth('bust'), hip: -0.4 - tenth('hip') })).toEqual([]);
    expect(said({ bust: -0.6 - tenth('bust'), hip: -0.6 - tenth('hip') })).toEqual([
      'warn girthReductionHigh ease.bust',
      'warn girthReductionHigh ease.hip',
    ]);
  });

  it('is a warning above 4 in of a girth of which 10 % is more, and says by how much', () => {
    const hip = 1200;
    expect(said({ hip: -0.4 - inches(4) }, { hip })).toEqual([]);
    expect(said({ hip: -0.6 - inches(4) }, { hip })).toEqual(['warn girthReductionHigh ease.hip']);
    const ease = { ...DEFAULT_STYLE.ease, underBust: -100 };
    const ribs = draft(MEAN_BODY, { ...DEFAULT_STYLE, ease }).issues.find(
      ({ code }) => code === 'ribReductionHigh',
    );
    expect(ribs?.values).toEqual({ reduction: 100, share: 100 / MEAN_BODY.underBust });
  });
});

describe('top edge and armpit', () => {
  const height = MEAN_BODY.neckToWaist - (MEAN_BODY.neckToBust - inches(2));
  const set: Partial<Style> = { overBustAbove: inches(2) };

  it('warns above the underarm, is silent at it, and says when it is not known', () => {
    expect(codes({ underarmToWaist: height - 0.6 }, set)).toContain('warn topAboveArmpit');
    expect(codes({ underarmToWaist: height - 0.4 }, set).join()).not.toContain('rmpit');
    expect(codes({ underarmToWaist: null }, set)).toContain('note armpitUnknown');
  });
});

describe('a top edge measured from the waist', () => {
  const waistToUnderBust = MEAN_BODY.neckToWaist - (MEAN_BODY.neckToUnderBust ?? Number.NaN);
  const at = (over: number, more: Partial<Style> = {}): string =>
    codes({}, { topFrom: 'waist', topAbove: waistToUnderBust + over, ...more }).join();

  it('is told where it ends on the breast', () => {
    expect(at(inches(0.5) + 0.4)).not.toContain('topOnBreast');
    expect(at(inches(0.5) + 0.6)).toContain('warn topOnBreast');
  });

  it('is not where it ends above the bust, or is measured from the under-bust line', () => {
    expect(at(90)).not.toContain('topOnBreast');
    expect(codes({}, { topFrom: 'underBust', topAbove: 30 }).join()).not.toContain('topOnBreast');
  });
});

describe('a zip and its allowance', () => {
  const zipped = (centre: number): string[] =>
    codes(
      {},
      {
        closure: { ...DEFAULT_STYLE.closure, back: 'zip' },
        allowances: { ...DEFAULT_STYLE.allowances, centre },
      },
    ).filter((code) => code.includes('zip'));

  it('warns of less than an inch, and not of an inch written in whole millimetres', () => {
    expect(zipped(25)).toEqual([]);
    expect(zipped(24.8)).toEqual(['warn zipNeedsAllowance']);
  });
});

describe('hem and lap', () => {
  it('warns below the lap, is silent at it, and says when it is not known', () => {
    expect(codes({ waistToLap: 90 })).toContain('warn hemTooLongToSit');
    expect(codes({ waistToLap: DEFAULT_STYLE.hemBelow - 0.6 })).toContain('warn hemTooLongToSit');
    expect(codes({ waistToLap: DEFAULT_STYLE.hemBelow - 0.4 }).join()).not.toMatch(/hemTooLong|sitting/);
    expect(codes({ waistToLap: null })).toContain('note sittingUnknown');
    expect(codes({ waistToLap: null }, { hemBelow: 0 }).join()).not.toContain('sitting');
  });
});

describe('mates that differ before truing', () => {
  const leaning = (waist: number): Partial<Style> => ({
    wedges: [
      {
        id: 'w',
        kind: 'through',
        block: 'front',
        station: 0.2,
        stationAt: {},
        sizing: 'manual',
        intake: { waist },
        weight: 1,
      },
    ],
  });

  it('are warned of at the seam, with the difference', () => {
    const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, ...leaning(90) });
    const said = made.issues.find(({ code, at }) => code === 'seamTooUneven' && at.seam?.kind === 'sideSeam');
    expect(said?.severity).toBe('warn');
    expect(said?.values.lengthDifference).toBeCloseTo(
      Math.abs(made.proof.seams.find(({ seam }) => seam.kind === 'sideSeam')?.lengthDifference ?? 0),
      9,
    );
  });
});
