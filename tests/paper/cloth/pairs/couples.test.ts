import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/engine';
import { couplesOf, depthBetween, depthsIn, takenBetween } from '../../../../src/paper/cloth/pairs/couples';
import { flippedShapes } from '../../../../src/paper/cloth/pairs/flips';
import { type LayShape, layShape } from '../../../../src/paper/cloth/pairs/layShape';
import { intervalsAt, noFit } from '../../../../src/paper/cloth/pairs/noFit';
import { type Random, randomFrom, uniform } from '../../../support/random';

const [ROW_MM, CELLS] = [3, 2];

const star = (random: Random): Point[] =>
  Array.from({ length: 9 }, (_, i) => {
    const [angle, far] = [((i + uniform(random, 0, 0.8)) / 9) * 2 * Math.PI, uniform(random, 8, 50)];
    return { x: far * Math.cos(angle), y: far * Math.sin(angle) };
  });

/** A ring in four ways: as it is, turned over along, turned round, turned over across. */
const turned = (ring: readonly Point[]): LayShape[] =>
  [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ].map(([along = 1, across = 1]) => layShape(ring.map(({ x, y }) => ({ x: along * x, y: across * y }))));

describe('two shapes, of which others are turned over or round', () => {
  const random = randomFrom(19);
  const given = Array.from({ length: 3 }, () => turned(star(random))).flat();
  const flipped = flippedShapes(given, ROW_MM);
  const { shapes, flips } = flipped;

  it('are known as one another, and lie in whole rows with the room below or above them', () => {
    expect(flips.map(({ base }) => base)).toEqual([0, 0, 0, 0, 4, 4, 4, 4, 8, 8, 8, 8]);
    for (const [i, { width, inset }] of shapes.entries()) {
      expect(inset).toBeLessThan(ROW_MM);
      expect(Math.min(...(shapes[i]?.outline ?? []).map(({ y }) => y))).toBeCloseTo(inset, 9);
      if (flips[i]?.across) expect(Math.abs(width / ROW_MM - Math.round(width / ROW_MM))).toBeLessThan(1e-9);
      else expect(inset).toBe(0);
    }
  });

  it('have the intervals that are worked out for them alone, whichever were asked for first', () => {
    const numbers = shapes.map((_, i) => i);
    for (const order of [numbers, [...numbers].reverse()]) {
      const couple = couplesOf(flipped, ROW_MM, 2);
      for (const a of order)
        for (const b of order) {
          const own = noFit(shapes[a] as LayShape, shapes[b] as LayShape, ROW_MM);
          for (let across = own.first - 2; across <= own.last + 2; across += 1) {
            const [one, other] = [intervalsAt(own, across), takenBetween(couple(a, b), across)];
            expect(other).toHaveLength(one.length);
            for (const [k, end] of one.entries()) expect(other[k]).toBeCloseTo(end, 5);
          }
        }
    }
  });

  it('lie as deep in each other whichever of them is asked of, to two cells', () => {
    const couple = couplesOf(flipped, ROW_MM, 2);
    const cell = depthsIn(couple(0, 4).table).cell;
    for (let n = 0; n < 400; n += 1) {
      const [a, b] = [0, 1].map(() => Math.floor(uniform(random, 0, shapes.length))) as [number, number];
      const across = Math.round(uniform(random, -30, 30));
      const taken = takenBetween(couple(a, b), across);
      if (taken.length === 0) continue;
      const along = uniform(random, taken[0] as number, taken[1] as number);
      const deep = depthBetween(couple(a, b), across, along);
      expect(deep).toBeGreaterThan(0);
      const alongIt = Math.min(along - (taken[0] as number), (taken[1] as number) - along);
      expect(deep).toBeLessThanOrEqual(alongIt + 1e-9);
      const back = depthBetween(couple(b, a), -across, -along);
      expect(Math.abs(back - deep)).toBeLessThanOrEqual(CELLS * cell);
    }
  });
});
