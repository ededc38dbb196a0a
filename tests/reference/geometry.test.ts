// The engine's curves, areas and offsets against other people's programs: bezier-js, d3-polygon and clipper2-ts.

import { Bezier } from 'bezier-js';
import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { polygonArea, polygonContains, polygonLength } from 'd3-polygon';
import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, type Point } from '../../src/engine';
import { cubicAcross, pointOn } from '../../src/engine/geometry/cubic';
import { pointsAlong, polylineLength, signedArea } from '../../src/engine/geometry/polyline';
import { seamLength } from '../../src/engine/geometry/seamLength';
import { slopeAt, smoothLine, xAt } from '../../src/engine/geometry/smoothLine';
import { drawBodies } from '../support/bodies/drawBodies';
import { lengthOf, ringOf } from '../support/judges/outline';
import { randomFrom, uniform } from '../support/random';

const pairs = (ring: readonly Point[]): [number, number][] => ring.map(({ x, y }) => [x, y]);

describe('against bezier-js', () => {
  it.each([
    { swing: 15, error: 1e-6 },
    { swing: 50, error: 1e-3 },
  ])(
    'a smooth line is cubic Béziers: the same places, and the same length to $error mm when it swings $swing mm',
    ({ swing, error }) => {
      const random = randomFrom(12);
      for (let n = 0; n < 50; n += 1) {
        const ys = [200, 260, 335, 390, 600].map((y) => y + uniform(random, -9, 9));
        const line = smoothLine(
          ys,
          ys.map(() => uniform(random, 110 - swing, 110 + swing)),
        );
        let whole = 0;
        for (let i = 1; i < ys.length; i += 1) {
          const [top, foot] = [ys[i - 1] as number, ys[i] as number];
          const third = (foot - top) / 3;
          const [x0, x1] = [xAt(line, top), xAt(line, foot)];
          const curve = new Bezier(
            x0,
            top,
            x0 + third * slopeAt(line, top),
            top + third,
            x1 - third * slopeAt(line, foot),
            foot - third,
            x1,
            foot,
          );
          whole += curve.length();
          for (let t = 0; t <= 1; t += 0.1)
            expect(curve.get(t).x).toBeCloseTo(xAt(line, top + t * (foot - top)), 9);
        }
        expect(Math.abs(seamLength(line, ys[0] as number, ys[4] as number) - whole)).toBeLessThan(error);
      }
    },
  );

  it('an edge across a panel has the same points and, flattened, the same length to 0.005 mm', () => {
    const cubic = cubicAcross({ x: 90, y: 210 }, 0.18, { x: 170, y: 214 }, -0.25);
    const [{ start }, a, b, { end }] = [cubic, cubic.startHandle, cubic.endHandle, cubic];
    const curve = new Bezier(start.x, start.y, a.x, a.y, b.x, b.y, end.x, end.y);
    for (let t = 0; t <= 1; t += 0.1) {
      expect(curve.get(t).x).toBeCloseTo(pointOn(cubic, t).x, 9);
      expect(curve.get(t).y).toBeCloseTo(pointOn(cubic, t).y, 9);
    }
    expect(Math.abs(polylineLength(pointsAlong(cubic)) - curve.length())).toBeLessThan(0.005);
  });
});

describe('against d3-polygon', () => {
  it('areas and lengths of rings agree to 1e-9, and cut lines hold sew lines', () => {
    for (const body of drawBodies(40, 4))
      for (const piece of draft(body, DEFAULT_STYLE).pieces) {
        const [sew, cut] = [ringOf(piece), pairs(piece.cutLine)];
        expect(Math.abs(signedArea(sew))).toBeCloseTo(Math.abs(polygonArea(pairs(sew))), 6);
        expect(
          lengthOf(sew) +
            Math.hypot((sew[0]?.x ?? 0) - (sew.at(-1)?.x ?? 0), (sew[0]?.y ?? 0) - (sew.at(-1)?.y ?? 0)),
        ).toBeCloseTo(polygonLength(pairs(sew)), 6);
        for (const point of pairs(sew)) expect(polygonContains(cut, point)).toBe(true);
      }
  });
});

describe('against clipper2-ts', () => {
  it('a cut line of one allowance all round is its mitred offset, to 0.05 % of the area', () => {
    const style = { ...DEFAULT_STYLE, allowances: { seam: 12, side: 12, top: 12, hem: 12, centre: 12 } };
    for (const body of drawBodies(40, 9))
      for (const piece of draft(body, style).pieces) {
        const offset = inflatePathsD([ringOf(piece).reverse()], 12, JoinType.Miter, EndType.Polygon, 4, 5);
        expect(offset).toHaveLength(1);
        const theirs = Math.abs(polygonArea((offset[0] ?? []).map(({ x, y }): [number, number] => [x, y])));
        const ours = Math.abs(signedArea(piece.cutLine));
        expect(Math.abs(ours - theirs) / theirs).toBeLessThan(5e-4);
      }
  });
});
