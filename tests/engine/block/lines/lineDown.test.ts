// The lines of a block above the bust: a cone from the bust line, straight through the level above it.

import { describe, expect, it } from 'vitest';
import { lineDown } from '../../../../src/engine/block/lines/lineDown';
import { slopeAt, xAt } from '../../../../src/engine/geometry/smoothLine';

const CONE = { bust: 100, round: 20 };
const [ABOVE, BUST, BELOW, WAIST] = [
  { y: 40, value: 25 },
  { y: 100, value: 0 },
  { y: 170, value: 20 },
  { y: 240, value: 40 },
] as const;

describe('a line from top edge to hem', () => {
  const line = lineDown([ABOVE, BUST, BELOW, WAIST], CONE);
  // The slope of a cone of 25 mm over 60, rounded within 20 of its point.
  const slope = 25 / (60 - 10);

  it('is a parabola within the rounding of the bust line and straight above it', () => {
    for (const up of [0, 5, 10, 15, 20]) expect(xAt(line, 100 - up)).toBeCloseTo((slope * up * up) / 40, 9);
    for (const up of [20, 35, 50, 60, 72]) expect(xAt(line, 100 - up)).toBeCloseTo(slope * (up - 10), 9);
    expect(slopeAt(line, 50)).toBeCloseTo(-slope, 9);
  });

  it('counts 25 mm past the level above and then stands upright', () => {
    expect(xAt(line, 0)).toBeCloseTo(25 + 25 * slope, 9);
    expect(slopeAt(line, -5)).toBe(0);
    expect(xAt(line, -200)).toBe(xAt(line, 0));
  });

  it('meets every level, and the bust line upright', () => {
    for (const { y, value } of [ABOVE, BUST, BELOW, WAIST]) expect(xAt(line, y)).toBeCloseTo(value, 9);
    expect(slopeAt(line, 100)).toBeCloseTo(0, 9);
  });

  it('is rounded over less than half the height where the level above lies near', () => {
    const near = lineDown([{ y: 76, value: 6 }, BUST, BELOW, WAIST], CONE);
    expect(slopeAt(near, 80)).toBeCloseTo(-6 / (24 - (0.45 * 24) / 2), 9);
    expect(xAt(near, 76)).toBeCloseTo(6, 9);
  });

  it('goes on as it comes where the bust line is no extremum', () => {
    const through = lineDown([{ y: 40, value: -18 }, BUST, BELOW, WAIST], CONE);
    expect(slopeAt(through, 40)).toBeCloseTo(18 / 60, 9);
    expect(xAt(through, 30)).toBeCloseTo(-18 - 10 * 0.3, 9);
    expect(slopeAt(through, 100)).toBeGreaterThan(0.2);
  });

  it('is any fair line where there is no level above the bust line or no bust line', () => {
    expect(lineDown([BUST, BELOW, WAIST], CONE).ys).toEqual([100, 170, 240]);
    expect(lineDown([ABOVE, BUST, BELOW], null).ys).toEqual([40, 100, 170]);
  });
});
