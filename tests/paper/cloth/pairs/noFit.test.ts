import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/engine';
import { depthAt, depthsOf } from '../../../../src/paper/cloth/pairs/depths';
import { type LayShape, layShape } from '../../../../src/paper/cloth/pairs/layShape';
import { intervalsAt, noFit } from '../../../../src/paper/cloth/pairs/noFit';
import { signed } from '../../../support/judges/judgeLay';
import { type Random, randomFrom, uniform } from '../../../support/random';

/** A ring round a centre, its corners at random distances from it: simple, and seldom convex. */
function star(random: Random, corners: number): Point[] {
  return Array.from({ length: corners }, (_, i) => {
    const [angle, far] = [((i + uniform(random, 0, 0.8)) / corners) * 2 * Math.PI, uniform(random, 8, 50)];
    return { x: far * Math.cos(angle), y: far * Math.sin(angle) };
  });
}

const ROW_MM = 3;

function shared(a: readonly Point[], b: readonly Point[]): number {
  const ring = (points: readonly Point[]): [number, number][] => points.map(({ x, y }) => [x, y]);
  return polygonClipping
    .intersection([ring(a)], [ring(b)])
    .flat()
    .reduce((sum, points) => sum + Math.abs(signed(points.map(([x, y]) => ({ x, y })))), 0);
}

const laid = ({ outline }: LayShape, x: number, y: number): Point[] =>
  outline.map((point) => ({ x: point.x + x, y: point.y + y }));

describe('where one shape must not lie on another', () => {
  const random = randomFrom(41);
  const shapes = Array.from({ length: 12 }, () => layShape(star(random, 5 + Math.floor(7 * random()))));
  const couples = shapes.slice(1).map((b, i) => [shapes[i] as LayShape, b] as const);

  it('is where they overlap by polygon-clipping, in every row', () => {
    for (const [a, b] of couples) {
      const fit = noFit(a, b, ROW_MM);
      for (let across = fit.first - 1; across <= fit.last + 1; across += 2) {
        const row = intervalsAt(fit, across);
        for (const x of Array.from({ length: 8 }, () => uniform(random, -b.length - 5, a.length + 5))) {
          const inside = row.some((from, k) => k % 2 === 0 && x > from && x < (row[k + 1] as number));
          const edge = row.some((end) => Math.abs(end - x) < 1e-3);
          if (!edge) expect(shared(laid(a, 0, 0), laid(b, x, across * ROW_MM)) > 1e-9).toBe(inside);
        }
        for (const end of row)
          expect(shared(laid(a, 0, 0), laid(b, end, across * ROW_MM))).toBeLessThan(1e-4);
      }
    }
  });

  it('has a depth that is the way out in some direction, to a cell and a quarter', () => {
    const square = layShape([
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 60 },
      { x: 0, y: 60 },
    ]);
    const fit = noFit(square, square, ROW_MM);
    const depths = depthsOf(fit, ROW_MM, 2);
    for (const [along, across] of [
      [0, 0],
      [30, 0],
      [0, 10],
      [-45, -15],
      [55, 3],
    ] as const) {
      const out = 60 - Math.max(Math.abs(along), Math.abs(across * ROW_MM));
      expect(Math.abs(depthAt(depths, across - fit.first, along) - out)).toBeLessThanOrEqual(
        1.25 * depths.cell,
      );
    }
  });
});
