// A garment drafted for another body fits worse, and where it should.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, type FitFigures, type Measurements } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor, type Worn, wear } from '../../support/bodies/wornBodies';

const body = bodyFor(MEAN_BODY);
const worn = (changed: Partial<Measurements>): Worn =>
  wear({ ...MEAN_BODY, ...changed }, DEFAULT_STYLE, body);
const right = worn({});
const plus = (name: keyof typeof MEAN_BODY, by: number): Partial<Measurements> => ({
  [name]: (MEAN_BODY[name] ?? 0) + by,
});

const GIRTHS = ['overBust', 'bust', 'underBust', 'waist', 'hip'] as const;
const scaled = (part: number): Measurements => ({
  ...MEAN_BODY,
  ...Object.fromEntries(GIRTHS.map((name) => [name, part * (MEAN_BODY[name] ?? 0)])),
});

const stretch = ({ figures }: Worn, inBand: string, inPart: string): number =>
  figures.regions.find(({ band, part }) => band === inBand && part === inPart)?.stretch ?? 0;
const pull = (each: Worn): number => stretch(each, 'underBustToWaist', 'side');
const rise = ({ figures }: Worn, level: string, part: string): number =>
  figures.marks.find((mark) => mark.level === level && mark.part === part)?.rise ?? 0;
const gape = ({ figures }: Worn, edge: string): number =>
  Math.max(...figures.edges.filter((each) => each.edge === edge).map((each) => each.gape));

/** Three times what a finer mesh changes: 0.5 mm, and 0.05 % of stretch. */
const NOISE_MM = 1.5;
const NOISE_PERCENT = 0.15;

describe('a fault of the draft', () => {
  it('shows at the bust when the bust points lie wide', () => {
    const wide = worn(plus('bustPointWidth', 30));
    expect(Math.abs((wide.figures.apex ?? 0) - (right.figures.apex ?? 0))).toBeGreaterThan(NOISE_MM);
  });

  it('tells nothing of the bust point where the seam through it ends below', () => {
    const style = NAMED_STYLES.get('stage-bodice')?.style;
    if (!style) throw new Error('no such style');
    // The armpit is 25 mm above the bust points, and at the bust line the edge lies 37 mm lower.
    const low = { ...MEAN_BODY, underarmToWaist: MEAN_BODY.neckToWaist - MEAN_BODY.neckToBust + 25 };
    const apexOf = (drawn: Measurements): number | null =>
      wear(drawn, style, bodyFor(drawn), { width: 24 }).figures.apex;
    expect(apexOf(low)).toBeNull();
    expect(apexOf({ ...low, underarmToWaist: low.underarmToWaist + 45 })).toBeLessThan(15);
  });

  it('shows as a tighter cup when the cup is small', () => {
    const small = worn(plus('bust', -60));
    expect(small.figures.stretch - right.figures.stretch).toBeGreaterThan(NOISE_PERCENT);
  });

  it('shows as a seam off its level when the waist is high', () => {
    const high = worn(plus('neckToWaist', -25));
    const moved = (['front', 'side', 'back'] as const).map(
      (part) => rise(high, 'bust', part) - rise(right, 'bust', part),
    );
    expect(Math.max(...moved.map(Math.abs))).toBeGreaterThan(NOISE_MM);
  });

  it('shows as a gaping top when the over-bust is big', () => {
    expect(gape(worn(plus('overBust', 40)), 'top') - gape(right, 'top')).toBeGreaterThan(NOISE_MM);
  });

  it('shows as cloth that pulls less when the waist is big, and more when it is small', () => {
    const [big, small] = [worn(plus('waist', 60)), worn(plus('waist', -40))];
    expect(pull(right) - pull(big)).toBeGreaterThan(NOISE_PERCENT);
    expect(pull(small) - pull(right)).toBeGreaterThan(NOISE_PERCENT);
  });

  it('shows as marks off their level when the bust points are drafted low', () => {
    const low = worn(plus('neckToBust', 25));
    expect(rise(right, 'bust', 'front') - rise(low, 'bust', 'front')).toBeGreaterThan(NOISE_MM);
    expect((low.figures.apex ?? 0) - (right.figures.apex ?? 0)).toBeGreaterThan(NOISE_MM);
  });

  it('shows as a hem that pulls when the hip is small', () => {
    const small = worn(plus('hip', -90));
    const below = stretch(small, 'belowWaist', 'front') - stretch(right, 'belowWaist', 'front');
    expect(below).toBeGreaterThan(NOISE_PERCENT);
  });

  it('shows above the bust when all girths are 2 or 8 % off', () => {
    const [far, small, large, wide] = [0.92, 0.98, 1.02, 1.08].map((part) => worn(scaled(part)));
    if (!far || !small || !large || !wide) throw new Error('all four were worn');
    const pulled = [far, small, right, large].map((each) => stretch(each, 'aboveBust', 'front'));
    for (const [i, value] of pulled.slice(1).entries())
      expect((pulled[i] ?? 0) - value).toBeGreaterThan(NOISE_PERCENT);
    // Far too large the cloth is slack there already, and stands off.
    expect(wide.figures.standOff - right.figures.standOff).toBeGreaterThan(NOISE_MM);
  });

  it.each(['default', 'under-bust'])(
    'makes the score of a garment too small or too large by 4 in 100 worse, also of one that reduces: %s',
    (name) => {
      const style = NAMED_STYLES.get(name)?.style;
      if (!style) throw new Error(`no style ${name}`);
      const [small, asked, large] = [0.96, 1, 1.04].map(
        (part) => wear(scaled(part), style, body).figures,
      ) as [FitFigures, FitFigures, FitFigures];
      expect(asked.girth).toBeLessThan(0.02);
      for (const off of [small, large]) {
        expect(off.girth).toBeGreaterThan(3);
        expect(off.score - asked.score).toBeGreaterThan(0.1);
      }
    },
  );
});
