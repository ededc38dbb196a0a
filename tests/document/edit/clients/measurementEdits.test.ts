import { describe, expect, it } from 'vitest';
import {
  asksWhich,
  beginSet,
  DEMO_CLIENT,
  estimatedSentence,
  estimateWritten,
  expectedOf,
  needsThird,
  setMeasurement,
  setReading,
  takeEstimate,
  unusualOnes,
  unusualSentence,
} from '../../../../src/document';
import { MEASUREMENTS, type Measurements } from '../../../../src/engine';
import { drawBodies } from '../../../support/bodies/drawBodies';

const { measurements } = DEMO_CLIENT;
const only = (given: Partial<Measurements>): Measurements =>
  ({ ...Object.fromEntries(MEASUREMENTS.map(({ name }) => [name, null])), ...given }) as Measurements;

describe('readings', () => {
  const girth = setMeasurement(DEMO_CLIENT, 'waist', 740);

  it('of two that agree come to their mean', () => {
    const twice = setReading(girth, 'waist', 1, 748);
    expect(twice.measurements.waist).toBe(744);
    expect(twice.readings.waist).toEqual([740, 748]);
    expect(needsThird([740, 748])).toBe(false);
  });

  it('that differ by more than 1 cm ask for a third, and the middle one holds', () => {
    const twice = setReading(girth, 'waist', 1, 760);
    expect(needsThird(twice.readings.waist ?? [])).toBe(true);
    const thrice = setReading(twice, 'waist', 2, 756);
    expect(thrice.measurements.waist).toBe(756);
    expect(needsThird(thrice.readings.waist ?? [])).toBe(false);
  });

  it('over 2 in apart ask which is meant, and the first holds meanwhile; a third settles it', () => {
    const [near, far] = [740 + 50.8, 740 + 50.9];
    expect(asksWhich(setReading(girth, 'waist', 1, near).readings.waist ?? [])).toBe(false);
    const twice = setReading(girth, 'waist', 1, far);
    expect(asksWhich(twice.readings.waist ?? [])).toBe(true);
    expect(twice.measurements.waist).toBe(740);
    const thrice = setReading(twice, 'waist', 2, 788);
    expect(asksWhich(thrice.readings.waist ?? [])).toBe(false);
    expect(thrice.measurements.waist).toBe(788);
  });

  it('are taken off again, and gone when the number is written anew', () => {
    const thrice = setReading(setReading(girth, 'waist', 1, 760), 'waist', 2, 756);
    expect(setReading(thrice, 'waist', 2, null).readings.waist).toEqual([740, 760]);
    expect(setReading(thrice, 'waist', 1, null)).toEqual(girth);
    expect(setMeasurement(thrice, 'waist', 700)).toMatchObject({
      readings: {},
      measurements: { waist: 700 },
    });
  });
});

describe('a set of another day', () => {
  it('begins from the last one, which is kept with its day', () => {
    const dated = { ...DEMO_CLIENT, takenOn: '2026-03-02' };
    const next = beginSet(setReading(dated, 'waist', 1, 750), '2026-11-25');
    expect(next.takenOn).toBe('2026-11-25');
    expect(next.earlier).toEqual([{ on: '2026-03-02', measurements: next.measurements }]);
    expect(next.readings).toEqual({});
  });
});

describe('what is to be expected', () => {
  it('is the survey’s mean and SD where nothing else is known (Gordon et al. 1989)', () => {
    expect(expectedOf('bust', only({}))).toEqual({ mean: 907.1, sd: 63.5 });
  });

  it('from one measurement is the regression line of the two', () => {
    // 887.04 + 0.901 · (53.23 / 63.52) · (1000 − 907.08), from the survey's published figures
    const bust = 1000;
    expect(expectedOf('overBust', only({ bust }))?.mean).toBeCloseTo(957.2, 0);
    // residual SD = SD · √(1 − r²): 53.2 · √(1 − 0.901²)
    expect(expectedOf('overBust', only({ bust }))?.sd).toBeCloseTo(23.08, 1);
  });

  it('is surer the more is known, but lengths stay unsure (R² .05–.45 in the survey)', () => {
    const girths = only({ bust: 900, waist: 720, hip: 960 });
    const more = { ...girths, neckToWaist: 385 };
    expect(expectedOf('backNeckToWaist', girths)?.sd).toBeGreaterThan(20);
    expect(expectedOf('backNeckToWaist', more)?.sd).toBeLessThan(20);
  });

  it('builds on no estimate', () => {
    const all = expectedOf('neckToWaist', measurements, ['backNeckToWaist']);
    expect(all).toEqual(expectedOf('neckToWaist', { ...measurements, backNeckToWaist: null }));
  });

  it('is not known of what the survey has not', () => {
    expect(expectedOf('waistToLap', measurements)).toBeNull();
    expect([...unusualOnes({ ...measurements, waistToLap: 1 }).keys()]).toEqual([]);
  });

  it('tells the under-bust line from the bust point, and keeps it off the waist of a short body', () => {
    // 75 mm, and three quarters of the way to the waist: common practice, no source.
    const lengths = { neckToBust: 280, neckToWaist: 400 };
    expect(expectedOf('neckToUnderBust', only(lengths))).toEqual({ mean: 355, sd: 10, belowBust: 75 });
    expect(expectedOf('neckToUnderBust', only({ ...lengths, neckToWaist: 360 }))?.mean).toBe(340);
    expect(expectedOf('neckToUnderBust', only({ neckToBust: 450, neckToWaist: 400 }))).toBeNull();
    // Not measured itself, the bust point leaves more open: the survey's mean of 268 and SD of 22.3 mm.
    const neither = expectedOf('neckToUnderBust', only({}));
    expect(neither?.mean).toBeCloseTo(268 + 75, 9);
    expect(neither?.sd).toBeCloseTo(Math.hypot(22.3, 10), 9);
  });

  it('calls few drawn bodies unusual', () => {
    const found = drawBodies(500, 1988).filter((body) => unusualOnes(body).size > 0);
    // eleven measurements, each beyond 2.58 SDs in one of a hundred; the tape's own allowance makes it fewer
    expect(found.length).toBeLessThan(50);
  });

  it('finds the slip of a hand, and only that', () => {
    expect([...unusualOnes(measurements).keys()]).toEqual([]);
    // a figure swapped; a girth read from the wrong end of the tape
    expect([...unusualOnes({ ...measurements, waist: 925 }).keys()]).toEqual(['waist']);
    expect([...unusualOnes({ ...measurements, bust: 739.8 }).keys()]).toEqual(['bust']);
    const slips = drawBodies(200, 7).filter((body) =>
      unusualOnes({ ...body, bust: body.bust + 200 }).has('bust'),
    );
    expect(slips).toHaveLength(200);
  });

  it('neither judges nor builds on an estimate', () => {
    expect(unusualOnes({ ...measurements, waist: 925 }, ['waist']).size).toBe(0);
  });

  it('is said with its span, and as no more than unusual', () => {
    const expected = { mean: 720, sd: 20 };
    expect(unusualSentence(expected, 'cm')).toMatch(
      /^Unusual for her other measurements: 68\.1 cm to 75\.9 cm/,
    );
    expect(estimateWritten(expected, 'cm')).toBe('72 cm ± 3.9 cm');
    expect(estimatedSentence(expected, 'in')).toContain('± 1½ in');
  });
});

describe('an estimate', () => {
  it('is marked as one until the tape is laid', () => {
    const guessed = takeEstimate(DEMO_CLIENT, 'neckToWaist', 400);
    expect(guessed.estimated).toEqual(['neckToWaist']);
    expect(takeEstimate(guessed, 'neckToWaist', 401).estimated).toEqual(['neckToWaist']);
    expect(setMeasurement(guessed, 'neckToWaist', 402).estimated).toEqual([]);
  });
});
