import { describe, expect, it } from 'vitest';
import { distanceToRing } from '../../../../src/engine/geometry/chord';
import { isInside } from '../../../../src/engine/geometry/isInside';
import { bandedRing } from '../../../../src/engine/geometry/offset/bandedRing';
import { hasClearance } from '../../../../src/engine/geometry/offset/hasClearance';
import { isSelfIntersecting } from '../../../../src/engine/geometry/offset/isSelfIntersecting';
import type { Point } from '../../../../src/engine/geometry/point';
import { randomFrom, uniform } from '../../../support/random';

/** Rings round one place: in the order of their angles they never cross themselves, with two points changed they mostly do. */
const ring = (seed: number, count: number): Point[] => {
  const random = randomFrom(seed);
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    const radius = uniform(random, 60, 200);
    return { x: radius * Math.cos(angle), y: 1.5 * radius * Math.sin(angle) };
  });
};

const rings = Array.from({ length: 60 }, (_, seed) => ring(seed, 5 + 2 * seed));

describe('a ring in bands', () => {
  it('has a point inside with clearance just where the whole ring has', () => {
    const random = randomFrom(7);
    const seen = new Set<string>();
    for (const each of rings)
      for (let i = 0; i < 60; i += 1) {
        const point = { x: uniform(random, -220, 220), y: uniform(random, -330, 330) };
        const least = uniform(random, -30, 30);
        const [inside, off] = [isInside(each, point), distanceToRing(each, point)];
        const expected = least > 0 ? inside && off >= least : inside || off <= -least;
        expect(hasClearance(bandedRing(each), [point], least)).toBe(expected);
        seen.add(`${inside} ${least > 0} ${expected}`);
      }
    expect(seen.size).toBe(6);
  });

  it('crosses itself where two of its points far apart are changed, and else not', () => {
    for (const each of rings.filter(({ length }) => length > 12)) {
      expect(isSelfIntersecting(bandedRing(each))).toBe(false);
      const [a, b] = [1, 1 + Math.floor(each.length / 3)];
      const changed = each.map((point, i) => (i === a ? each[b] : i === b ? each[a] : point) as Point);
      expect(isSelfIntersecting(bandedRing(changed))).toBe(true);
    }
  });

  it('crosses itself where it touches itself, and a triangle does not', () => {
    const bow = [
      { x: 0, y: 0 },
      { x: 10, y: 10 },
      { x: 20, y: 0 },
      { x: 20, y: 20 },
      { x: 10, y: 10 },
      { x: 0, y: 20 },
    ];
    expect(isSelfIntersecting(bandedRing(bow))).toBe(true);
    expect(isSelfIntersecting(bandedRing(bow.slice(0, 3)))).toBe(false);
    expect(isSelfIntersecting(bandedRing(bow.slice(0, 1)))).toBe(false);
    expect(hasClearance(bandedRing([]), [{ x: 0, y: 0 }], 1)).toBe(false);
  });
});
