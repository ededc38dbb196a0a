import { describe, expect, it } from 'vitest';
import { MEASUREMENTS, UNMEASURED } from '../../../src/engine';
import { frontAt, radiusAt } from '../../../src/engine/worn/body/surface';
import { COLUMN_STEP, COLUMNS } from '../../../src/engine/worn/body/tape';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor } from '../../support/bodies/wornBodies';
import { randomFrom } from '../../support/random';

const DIRECTIONS = 1440;

/** A tape round the body at a height, mm, by Cauchy's formula: the integral of how far the section reaches in each direction. */
function tapeRound({ surface }: ReturnType<typeof bodyFor>, z: number): number {
  const points = Array.from({ length: COLUMNS }, (_, i): [number, number] => {
    const [t, r] = [i * COLUMN_STEP, radiusAt(surface, i * COLUMN_STEP, z)];
    return [r * Math.sin(t), r * Math.cos(t)];
  });
  let sum = 0;
  for (let k = 0; k < DIRECTIONS; k += 1) {
    const angle = (2 * Math.PI * (k + 0.5)) / DIRECTIONS;
    const [sin, cos] = [Math.abs(Math.sin(angle)), Math.cos(angle)];
    sum += Math.max(...points.map(([x, y]) => x * sin + y * cos));
  }
  return (2 * Math.PI * sum) / DIRECTIONS;
}

const worstGirth = (body: ReturnType<typeof bodyFor>): number =>
  Math.max(...body.levels.map(({ z, girth }) => Math.abs(tapeRound(body, z) - girth)));

describe('the body in sections', () => {
  it('has its girths within 0.1 mm', () => {
    for (const measurements of drawBodies(6, 16)) expect(worstGirth(bodyFor(measurements))).toBeLessThan(0.1);
  });

  it('has them with a high hip, and with a bust smaller than the over-bust', () => {
    const { hip, waist, underBust } = MEAN_BODY;
    const odd = { ...MEAN_BODY, highHip: ((hip ?? 0) + waist) / 2, bust: (underBust ?? 0) + 10 };
    expect(worstGirth(bodyFor(odd))).toBeLessThan(0.1);
  });

  it('is a closed surface with its girths at the limits of the form', () => {
    const limits = (['least', 'most'] as const).map((end) => ({
      ...UNMEASURED,
      ...Object.fromEntries(
        MEASUREMENTS.filter(({ needed }) => needed).map((each) => [each.name, each[end]]),
      ),
    }));
    const random = randomFrom(3);
    const corners = Array.from({ length: 8 }, () => ({
      ...UNMEASURED,
      ...Object.fromEntries(
        MEASUREMENTS.filter(({ needed }) => needed).map((each) => [
          each.name,
          each[random() < 0.5 ? 'least' : 'most'],
        ]),
      ),
    }));
    for (const measurements of [...limits, ...corners]) {
      const worn = bodyFor(measurements);
      expect(
        worn.surface.radii.length > 0 &&
          worn.surface.radii.every((radius) => radius > 0 && Number.isFinite(radius)),
      ).toBe(true);
      expect(worstGirth(worn)).toBeLessThan(0.1);
    }
  });

  it('has the lengths down the front that were measured', () => {
    const body = bodyFor(MEAN_BODY);
    const z = (name: string): number => body.levels.find((level) => level.name === name)?.z ?? 0;
    let length = 0;
    for (let i = 0; i < 200; i += 1) {
      const at = (k: number): number => z('waist') + ((z('hip') - z('waist')) * k) / 200;
      const [a, b] = [
        frontAt(body.surface, body.bustPointX, at(i)),
        frontAt(body.surface, body.bustPointX, at(i + 1)),
      ];
      length += Math.hypot(b - a, at(i + 1) - at(i));
    }
    const taped = (MEAN_BODY.neckToHip ?? 0) - MEAN_BODY.neckToWaist;
    expect(Math.abs(length - taped)).toBeLessThan(2);
  });

  it('is as deep from spine to breastbone as women measured, within the standard error', () => {
    const { surface, levels } = bodyFor(MEAN_BODY);
    const z = levels.find(({ name }) => name === 'bust')?.z ?? 0;
    const depth = radiusAt(surface, 0, z) + radiusAt(surface, Math.PI, z);
    // Regression on 260 women, their mean 177 mm; the spine lies some 25 mm in front of the hindmost place of the upper back.
    const measured = 39.85 + 0.0833 * (MEAN_BODY.overBust ?? 0) + 0.0941 * MEAN_BODY.waist;
    expect(Math.abs(depth - 25 - measured)).toBeLessThan(14);
  });

  /** The hindmost place of a level, mm in front of the axis. */
  const backOf = ({ levels, surface }: ReturnType<typeof bodyFor>, name: string): number => {
    const z = levels.find((level) => level.name === name)?.z ?? 0;
    let hindmost = 0;
    for (let i = COLUMNS / 2; i < COLUMNS; i += 1) {
      const t = i * COLUMN_STEP;
      hindmost = Math.min(hindmost, radiusAt(surface, t, z) * Math.cos(t));
    }
    return hindmost;
  };

  it('has a back that turns over half way from bust to waist', () => {
    const between = (MEAN_BODY.neckToBust + MEAN_BODY.neckToWaist) / 2;
    const body = bodyFor({ ...MEAN_BODY, neckToUnderBust: between });
    const [bust, underBust, waist] = ['bust', 'underBust', 'waist'].map((name) => backOf(body, name)) as [
      number,
      number,
      number,
    ];
    expect((underBust - bust) / (waist - bust)).toBeGreaterThan(0.4);
    expect((underBust - bust) / (waist - bust)).toBeLessThan(0.6);
  });

  it('has the hollow of the back that was measured', () => {
    for (const hollow of [20, 35, 50]) {
      const body = bodyFor({ ...MEAN_BODY, hollowOfBack: hollow });
      const back = (name: string): number => backOf(body, name);
      // Each section is brought to its girth about the axis, which moves the back by a few mm.
      expect(Math.abs(back('waist') - (back('bust') + back('hip')) / 2 - hollow)).toBeLessThan(5);
    }
  });
});
