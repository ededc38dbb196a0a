import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/engine';
import { depthAt, depthsOf } from '../../../src/paper/cloth/depths';
import { type LayShape, layShape } from '../../../src/paper/cloth/layShape';
import { intervalsAt, noFit, swappedNoFit } from '../../../src/paper/cloth/noFit';
import { roomAround } from '../../../src/paper/cloth/roomAround';
import { roomsAround } from '../../../src/paper/cloth/roomsAround';
import { signed } from '../../support/judgeLay';
import { type Random, randomFrom, uniform } from '../../support/random';

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

  it('is the same seen from the other shape', () => {
    for (const [a, b] of couples) {
      const [there, back] = [noFit(b, a, ROW_MM), swappedNoFit(noFit(a, b, ROW_MM))];
      for (let across = there.first - 1; across <= there.last + 1; across += 1) {
        const [one, other] = [[...intervalsAt(there, across)], [...intervalsAt(back, across)]];
        expect(other).toHaveLength(one.length);
        for (const [k, end] of one.entries()) expect(other[k]).toBeCloseTo(end, 5);
      }
    }
  });

  it('has a depth that is the way out in some direction, to a cell', () => {
    const square = layShape([
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 60 },
      { x: 0, y: 60 },
    ]);
    const fit = noFit(square, square, ROW_MM);
    const depths = depthsOf(fit, ROW_MM);
    for (const [along, across] of [
      [0, 0],
      [30, 0],
      [0, 10],
      [-45, -15],
      [55, 3],
    ] as const) {
      const out = 60 - Math.max(Math.abs(along), Math.abs(across * ROW_MM));
      expect(Math.abs(depthAt(depths, across - fit.first, along) - out)).toBeLessThanOrEqual(depths.cell);
    }
  });
});

describe('the room around an outline', () => {
  const random = randomFrom(5);

  it.each([0, 3, 12])('has all within %d mm, is no more than that wider, and has few corners', (clear) => {
    for (let n = 0; n < 4; n += 1) {
      const ring = star(random, 40).map(({ x, y }) => ({ x: 6 * x, y: 6 * y }));
      const room = roomAround(ring, clear);
      if (!room) continue;
      const [left, right] = [Math.min(...ring.map(({ x }) => x)), Math.max(...ring.map(({ x }) => x))];
      expect(Math.min(...room.map(({ x }) => x))).toBeCloseTo(left - clear, 9);
      expect(Math.max(...room.map(({ x }) => x))).toBeCloseTo(right + clear, 9);
      const box = [...room, ...ring].flatMap(({ x, y }) => [x, y]);
      const far = 10 * Math.max(...box.map(Math.abs));
      const around: Point[] = [
        { x: -far, y: -far },
        { x: far, y: -far },
        { x: far, y: far },
        { x: -far, y: far },
      ];
      // Discs around corners and points on sides, in the room with all of their area.
      for (const [i, from] of ring.entries()) {
        const to = ring[(i + 1) % ring.length] as Point;
        const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
        for (const { x, y } of [from, middle]) {
          const disc = Array.from({ length: 12 }, (_, k) => ({
            x: x + Math.max(clear, 0.01) * Math.cos((k * Math.PI) / 6),
            y: y + Math.max(clear, 0.01) * Math.sin((k * Math.PI) / 6),
          }));
          if (clear > 0) expect(shared(disc, room)).toBeCloseTo(shared(disc, around), 3);
        }
      }
      expect(shared(ring, room)).toBeCloseTo(Math.abs(signed(ring)), 3);
    }
  });

  it('is the same worked out once and turned as the outline is', () => {
    const drawn = star(random, 30);
    const [left, top] = [Math.min(...drawn.map(({ x }) => x)), Math.min(...drawn.map(({ y }) => y))];
    const ring = drawn.map(({ x, y }) => ({ x: 6 * (x - left), y: 6 * (y - top) }));
    const [length, width] = [Math.max(...ring.map(({ x }) => x)), Math.max(...ring.map(({ y }) => y))];
    const ways = [
      ring,
      ring.map(({ x, y }) => ({ x: length - x, y: width - y })),
      ring.map(({ x, y }) => ({ x, y: width - y })),
      ring.map(({ x, y }) => ({ x: length - x, y })),
    ];
    const roomOf = roomsAround(3);
    for (const way of ways) {
      const [room, own] = [roomOf(way), roomAround(way, 3)];
      expect(own).not.toBeNull();
      const area = Math.abs(signed(own ?? []));
      expect(Math.abs(signed([...room])) / area).toBeCloseTo(1, 3);
      expect(shared(room, own ?? []) / area).toBeCloseTo(1, 3);
      expect(shared(way, room)).toBeCloseTo(Math.abs(signed(way)), 3);
    }
  });
});
