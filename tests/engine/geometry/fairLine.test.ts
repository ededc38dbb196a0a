// Lines of least bending: through their knots, monotone between them, and as smooth as that allows.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FairKnot, fairLine } from '../../../src/engine/geometry/fairLine';
import { slopeAt, xAt } from '../../../src/engine/geometry/smoothLine';

const knots = (...values: readonly (readonly [y: number, value: number])[]): FairKnot[] =>
  values.map(([y, value]) => ({ y, value }));

/** Second derivative beside a height, by differences of the slope; `way` −1 above it and 1 below it. */
const bendAt = (line: ReturnType<typeof fairLine>, y: number, way: -1 | 1): number => {
  const [near, far] = [y + way * 1e-4, y + way * 2e-3];
  return (slopeAt(line, far) - slopeAt(line, near)) / (far - near);
};

describe('a fair line', () => {
  it('passes through its knots and only goes one way between two of them', () => {
    const steps = fc.array(
      fc.record({
        down: fc.double({ min: 15, max: 200, noNaN: true }),
        value: fc.double({ min: -80, max: 80, noNaN: true }),
      }),
      { minLength: 2, maxLength: 7 },
    );
    fc.assert(
      fc.property(steps, (list) => {
        let y = 0;
        const given = list.map(({ down, value }) => {
          y += down;
          return { y, value };
        });
        const line = fairLine(given);
        for (const [i, knot] of given.entries()) {
          expect(xAt(line, knot.y)).toBeCloseTo(knot.value, 9);
          const next = given[i + 1];
          if (!next) continue;
          const [least, most] = [Math.min(knot.value, next.value), Math.max(knot.value, next.value)];
          for (let part = 0; part <= 1; part += 0.05) {
            const x = xAt(line, knot.y + part * (next.y - knot.y));
            expect(x).toBeGreaterThanOrEqual(least - 1e-9);
            expect(x).toBeLessThanOrEqual(most + 1e-9);
          }
        }
      }),
    );
  });

  it('is upright at its ends and at each extremum, unless a slope is given', () => {
    const line = fairLine(knots([0, 10], [60, 30], [150, 12], [260, 20]));
    expect(line.slopes).toEqual([0, 0, 0, 0]);
    expect(fairLine([{ y: 0, value: 0, slope: 0.2 }, ...knots([50, 12])]).slopes).toEqual([0.2, 0]);
    expect(fairLine(knots([5, 7])).slopes).toEqual([0]);
  });

  it('has one bend from both sides of a knot that nothing holds', () => {
    const line = fairLine(knots([0, 0], [90, 20], [200, 55], [300, 70]));
    for (const y of [90, 200]) expect(bendAt(line, y, -1)).toBeCloseTo(bendAt(line, y, 1), 5);
    // A cubic with upright ends is drawn as itself, whatever knots lie on it.
    const cubic = (y: number): number => 40 * (3 * (y / 200) ** 2 - 2 * (y / 200) ** 3);
    const same = fairLine([0, 70, 140, 200].map((y) => ({ y, value: cubic(y) })));
    for (let y = 0; y <= 200; y += 10) expect(xAt(same, y)).toBeCloseTo(cubic(y), 9);
  });

  it('bends less sharply beside a level that lies near an extremum than one of least bending would', () => {
    // Under-bust 25 mm above the waist, most of what is taken below it.
    const given = knots([0, 0], [75, 6], [100, 14], [300, 0]);
    const { slopes } = fairLine(given);
    const slope = slopes[1] ?? Number.NaN;
    const sharpest = (m: number): number =>
      Math.max(
        Math.abs((6 * 8) / 625 - (2 * m) / 25),
        Math.abs((-6 * 8) / 625 + (4 * m) / 25),
        Math.abs((-6 * 6) / 5625 + (4 * m) / 75),
      );
    for (let other = 0; other <= 0.24; other += 0.005)
      expect(sharpest(slope)).toBeLessThanOrEqual(sharpest(other) + 1e-9);
  });
});
