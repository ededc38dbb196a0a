import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/engine';
import { layAt, usedLength } from '../../../src/paper/cloth/lay';
import { type LayShape, layShape } from '../../../src/paper/cloth/pairs/layShape';
import { pulledBack } from '../../../src/paper/cloth/pulledBack';
import { type Place, type Strip, strip } from '../../../src/paper/cloth/strip';
import { signed } from '../../support/judges/judgeLay';
import { type Random, randomFrom, uniform } from '../../support/random';

const [ROW_MM, WIDTH_MM, LAYS] = [2, 200, 20];

/** A ring round a centre, its corners at random distances from it: simple, and seldom convex. */
const star = (random: Random): Point[] =>
  Array.from({ length: 9 }, (_, i) => {
    const [angle, far] = [((i + uniform(random, 0, 0.8)) / 9) * 2 * Math.PI, uniform(random, 10, 50)];
    return { x: far * Math.cos(angle), y: far * Math.sin(angle) };
  });

/** Shapes in drawn rows, each behind all before it. */
function lined(random: Random): { laid: Strip; places: Place[] } {
  const shapes = Array.from({ length: 8 }, () => layShape(star(random)));
  const laid = strip(
    shapes,
    shapes.map((_, i) => ({ ways: [i], row: null })),
    WIDTH_MM,
    { height: ROW_MM, perCell: 2 },
  );
  let x = 0;
  const places = shapes.map(({ width, length }, shape) => {
    const place = { shape, row: Math.floor(uniform(random, 0, (WIDTH_MM - width) / ROW_MM)), x };
    x += length + 5;
    return place;
  });
  return { laid, places };
}

const ringOf = (laid: Strip, { shape, row }: Place, x: number): [number, number][] =>
  (laid.shapes[shape] as LayShape).outline.map((point) => [point.x + x, point.y + row * ROW_MM]);

const shared = (a: [number, number][], b: [number, number][]): number =>
  polygonClipping
    .intersection([a], [b])
    .flat()
    .reduce((sum, ring) => sum + Math.abs(signed(ring.map(([x, y]) => ({ x, y })))), 0);

describe('items pulled back along the cloth', () => {
  const random = randomFrom(77);
  const lays = Array.from({ length: LAYS }, () => lined(random));

  it('overlap nowhere by polygon-clipping, keep their order, and none can go farther', () => {
    for (const { laid, places } of lays) {
      const xs = pulledBack(layAt(laid, places), usedLength(laid, places));
      expect(xs).not.toBeNull();
      const at = xs as Float64Array;
      const overlapOf = (i: number, x: number): number =>
        places.reduce((sum, place, j) => {
          if (j === i) return sum;
          return sum + shared(ringOf(laid, places[i] as Place, x), ringOf(laid, place, at[j] as number));
        }, 0);
      for (const [i, x] of at.entries()) {
        expect(overlapOf(i, x)).toBeLessThan(1e-4);
        expect(x).toBeLessThanOrEqual((places[i] as Place).x);
        if (x > 0.5) expect(overlapOf(i, x - 0.5)).toBeGreaterThan(1e-6);
      }
    }
  });

  it('are taken apart where they overlap a little', () => {
    for (const { laid, places } of lays) {
      const free = pulledBack(layAt(laid, places), usedLength(laid, places)) as Float64Array;
      const pushed = places.map((place, i) => ({ ...place, x: Math.max(0, (free[i] as number) - 0.3 * i) }));
      const apart = pulledBack(layAt(laid, pushed), usedLength(laid, places)) as Float64Array;
      for (const [i, a] of places.entries())
        for (const [j, b] of places.entries())
          if (j > i)
            expect(
              shared(ringOf(laid, a, apart[i] as number), ringOf(laid, b, apart[j] as number)),
            ).toBeLessThan(1e-4);
    }
  });

  it('are not laid where they would be as long as they must not be', () => {
    for (const { laid, places } of lays) {
      const lay = layAt(laid, places);
      const xs = pulledBack(lay, usedLength(laid, places)) as Float64Array;
      const used = usedLength(
        laid,
        places.map((place, i) => ({ ...place, x: xs[i] as number })),
      );
      expect(pulledBack(lay, used - 0.01)).toBeNull();
      expect(pulledBack(lay, used + 0.01)).not.toBeNull();
    }
  });
});
