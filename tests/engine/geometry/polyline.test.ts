import { describe, expect, it } from 'vitest';
import { cubicAcross, pointOn } from '../../../src/engine/geometry/cubic';
import { pointsAlong, pointsDown, polylineLength, signedArea } from '../../../src/engine/geometry/polyline';
import { slopeAt, smoothLine, straightDown, xAt } from '../../../src/engine/geometry/smoothLine';
import { alongTo } from '../../support/judges/outline';

const leg = smoothLine([200, 260, 335, 390, 600], [110, 121, 96, 82, 130]);

describe('points down a line', () => {
  it('hold both ends and every knot between, and leave the line by no more than 0.02 mm', () => {
    const points = pointsDown(leg, 215, 500);
    expect(points[0]).toEqual({ x: xAt(leg, 215), y: 215 });
    expect(points.at(-1)).toEqual({ x: xAt(leg, 500), y: 500 });
    for (const y of [260, 335, 390])
      expect(points.some((point) => point.y === y && point.x === xAt(leg, y))).toBe(true);
    for (let y = 215; y < 500; y += 0.5)
      expect(alongTo(points, { x: xAt(leg, y), y }).off).toBeLessThanOrEqual(0.02);
    for (const [i, point] of points.entries())
      if (i > 0) expect(point.y).toBeGreaterThan(points[i - 1]?.y ?? 0);
  });

  it('do not repeat an end where a knot all but coincides with it', () => {
    for (const gap of [0, 1e-9, 1e-7, 1e-4, 0.01])
      for (const [from, to] of [
        [260 - gap, 500],
        [215, 390 + gap],
      ] as const) {
        const points = pointsDown(leg, from, to);
        expect(points[0]?.y).toBe(from);
        expect(points.at(-1)?.y).toBe(to);
        for (const { x, y } of points) expect(x).toBeCloseTo(xAt(leg, y), 9);
        for (const [i, point] of points.entries())
          if (i > 0) expect(point.y - (points[i - 1]?.y ?? 0)).toBeGreaterThan(1e-3);
      }
  });

  it('are two on a straight line', () => {
    expect(pointsDown(straightDown(7), 10, 90)).toEqual([
      { x: 7, y: 10 },
      { x: 7, y: 90 },
    ]);
  });

  it('show the tangent at their ends even on a bend of 2 mm radius', () => {
    const sharp = smoothLine([0, 28, 60], [0, 60, 0]);
    const points = pointsDown(sharp, 28, 60);
    const [a, b] = [points[0], points[1]] as [{ x: number; y: number }, { x: number; y: number }];
    expect(Math.atan2(b.x - a.x, b.y - a.y)).toBeCloseTo(Math.atan(slopeAt(sharp, 28)), 2);
  });
});

describe('points along a cubic', () => {
  it('start and end with its slopes', () => {
    const cubic = cubicAcross({ x: 0, y: 10 }, 0.3, { x: 60, y: 12 }, -0.8);
    const points = pointsAlong(cubic);
    const slope = (i: number, j: number): number =>
      ((points[j]?.y ?? 0) - (points[i]?.y ?? 0)) / ((points[j]?.x ?? 0) - (points[i]?.x ?? 0));
    expect(Math.abs(Math.atan(slope(0, 1)) - Math.atan(0.3))).toBeLessThan(0.0018);
    expect(Math.abs(Math.atan(slope(points.length - 2, points.length - 1)) + Math.atan(0.8))).toBeLessThan(
      0.0018,
    );
    for (let t = 0; t <= 1; t += 0.01)
      expect(alongTo(points, pointOn(cubic, t)).off).toBeLessThanOrEqual(0.02);
  });

  it('are two on a straight one', () => {
    expect(pointsAlong(cubicAcross({ x: 0, y: 0 }, 0.5, { x: 30, y: 15 }, 0.5))).toHaveLength(2);
  });
});

describe('rings and rows', () => {
  it('are measured', () => {
    const ring = [
      { x: 0, y: 0 },
      { x: 0, y: 4 },
      { x: 3, y: 4 },
    ];
    expect(polylineLength(ring)).toBe(7);
    expect(signedArea(ring)).toBe(-6);
    expect(signedArea([...ring].reverse())).toBe(6);
    expect(polylineLength([])).toBe(0);
  });
});
