import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/engine';
import { roomAround } from '../../../src/paper/cloth/roomAround';
import { roomsAround } from '../../../src/paper/cloth/roomsAround';
import { signed } from '../../support/judges/judgeLay';
import { type Random, randomFrom, uniform } from '../../support/random';

/** A ring round a centre, its corners at random distances from it: simple, and seldom convex. */
function star(random: Random, corners: number): Point[] {
  return Array.from({ length: corners }, (_, i) => {
    const [angle, far] = [((i + uniform(random, 0, 0.8)) / corners) * 2 * Math.PI, uniform(random, 8, 50)];
    return { x: far * Math.cos(angle), y: far * Math.sin(angle) };
  });
}

function shared(a: readonly Point[], b: readonly Point[]): number {
  const ring = (points: readonly Point[]): [number, number][] => points.map(({ x, y }) => [x, y]);
  return polygonClipping
    .intersection([ring(a)], [ring(b)])
    .flat()
    .reduce((sum, points) => sum + Math.abs(signed(points.map(([x, y]) => ({ x, y })))), 0);
}

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
