import { describe, expect, it } from 'vitest';
import {
  combine,
  isSurelyAbove,
  leastBetween,
  slopeAt,
  smoothLine,
  straightDown,
  xAt,
} from '../../../src/engine/geometry/smoothLine';
import { randomFrom, uniform } from '../../support/random';

const lines = Array.from({ length: 200 }, (_, seed) => {
  const random = randomFrom(seed);
  let y = 0;
  const ys = Array.from({ length: 6 }, () => (y += uniform(random, 15, 120)));
  return smoothLine(
    ys,
    ys.map(() => uniform(random, 0, 300)),
  );
});

describe('a line that comes to a point', () => {
  const slopeOf = (xs: readonly number[], start: 'free' | 'point') =>
    smoothLine([0, 50, 110], xs, { start, end: 'flat' }).slopes[0] ?? Number.NaN;

  it('leaves it no steeper than straight to the next knot', () => {
    expect(slopeOf([0, 20, 25], 'free')).toBeGreaterThan(0.4);
    expect(slopeOf([0, 20, 25], 'point')).toBeCloseTo(0.4, 12);
    expect(slopeOf([0, -20, -25], 'point')).toBeCloseTo(-0.4, 12);
  });

  it('leaves it flatter where it opens more beyond', () => {
    expect(slopeOf([0, 20, 80], 'point')).toBe(slopeOf([0, 20, 80], 'free'));
    expect(slopeOf([0, 20, 80], 'point')).toBeLessThan(0.4);
  });

  it('is straight through two knots', () => {
    expect(smoothLine([0, 50], [0, 20], { start: 'point', end: 'point' }).slopes).toEqual([0.4, 0.4]);
  });
});

describe('a smooth line', () => {
  it('passes its knots exactly and runs straight down beyond them', () => {
    for (const line of lines) {
      for (const [i, y] of line.ys.entries()) expect(xAt(line, y)).toBe(line.xs[i]);
      expect(xAt(line, -1000)).toBe(line.xs[0]);
      expect(xAt(line, 1e4)).toBe(line.xs.at(-1));
      expect([slopeAt(line, -1000), slopeAt(line, 1e4)]).toEqual([0, 0]);
    }
  });

  it('never overshoots: between two knots it stays between them and only goes one way', () => {
    for (const line of lines)
      for (let i = 1; i < line.ys.length; i += 1) {
        const [from, to] = [line.ys[i - 1] as number, line.ys[i] as number];
        const way = Math.sign((line.xs[i] as number) - (line.xs[i - 1] as number));
        let last = line.xs[i - 1] as number;
        for (let step = 1; step <= 50; step += 1) {
          const x = xAt(line, from + ((to - from) * step) / 50);
          expect((x - last) * way).toBeGreaterThanOrEqual(-1e-9);
          last = x;
        }
      }
  });

  it('has the slope of its own rise, also from both sides of a knot', () => {
    for (const line of lines)
      for (const y of [...line.ys, 100, 233]) {
        const [above, below] = [xAt(line, y) - xAt(line, y - 1e-5), xAt(line, y + 1e-5) - xAt(line, y)];
        expect(above / 1e-5).toBeCloseTo(slopeAt(line, y), 2);
        expect(below / 1e-5).toBeCloseTo(slopeAt(line, y), 2);
      }
  });

  it('stays level where the values do not change', () => {
    const line = smoothLine([0, 10, 20, 30], [5, 5, 5, 9]);
    for (let y = 0; y <= 20; y += 1) expect(xAt(line, y)).toBeCloseTo(5, 12);
  });

  it('through one point runs straight down, whatever its ends', () => {
    for (const [start, end] of [
      ['free', 'flat'],
      ['flat', 'free'],
      ['free', 'free'],
    ] as const)
      expect(smoothLine([5], [1], { start, end }).slopes).toEqual([0]);
  });

  it('combines exactly, with the knots of both', () => {
    const [p, q] = [smoothLine([0, 50, 90], [10, 40, 20]), smoothLine([20, 70], [3, 8])];
    const sum = combine(p, 2, q, -0.5);
    expect(sum.ys).toEqual([0, 20, 50, 70, 90]);
    for (let y = -10; y <= 100; y += 1.7) expect(xAt(sum, y)).toBeCloseTo(2 * xAt(p, y) - 0.5 * xAt(q, y), 9);
  });

  it('knows its least value as a search finds it', () => {
    for (const line of lines) {
      const difference = combine(line, 1, lines[0] ?? straightDown(0), -1);
      const [from, to] = [40, 480];
      let least = Number.POSITIVE_INFINITY;
      for (let y = from; y <= to; y += 0.05) least = Math.min(least, xAt(difference, y));
      const found = leastBetween(difference, from, to);
      expect(found.x).toBeLessThanOrEqual(least + 1e-9);
      expect(found.x).toBeGreaterThan(least - 0.01);
      expect(xAt(difference, found.y)).toBeCloseTo(found.x, 9);
    }
  });

  it('is surely above a value only where its least x is, and where that is far below', () => {
    let sure = 0;
    for (const line of lines) {
      const difference = combine(line, 1, lines[0] ?? line, -1);
      const least = leastBetween(difference, -1000, 1e4).x;
      expect(isSurelyAbove(difference, least)).toBe(false);
      expect(isSurelyAbove(difference, least + 0.01)).toBe(false);
      expect(isSurelyAbove(difference, least - 1000)).toBe(true);
      for (let below = 1; below < 200; below *= 2) if (isSurelyAbove(difference, least - below)) sure += 1;
    }
    expect(sure).toBeGreaterThan(lines.length);
  });
});
