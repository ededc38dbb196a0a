import { describe, expect, it } from 'vitest';
import { slopeAt, smoothLine, xAt } from '../../../src/engine/geometry/smoothLine';
import { raisedHeight, raisedLine } from '../../../src/engine/panels/raise';

const LINE = smoothLine([0, 60, 130, 200, 300], [0, 12, 3, 20, 20]);

describe('a line raised', () => {
  const raise = [
    { from: 130, to: 200, by: 12 },
    { from: 60, to: 130, by: -5 },
  ];

  it('is as it was above, and moved as a whole below', () => {
    const raised = raisedLine(LINE, raise);
    for (const y of [0, 10, 30, 60]) expect(xAt(raised, y)).toBeCloseTo(xAt(LINE, y), 12);
    for (const y of [200, 240, 300]) expect(xAt(raised, y - 7)).toBeCloseTo(xAt(LINE, y), 12);
    expect(raisedHeight(raise, 165)).toBeCloseTo(165 + 5 - 6, 12);
  });

  it('has no kink anywhere', () => {
    const raised = raisedLine(LINE, raise);
    for (const y of raised.ys) {
      const step = 1e-6;
      const [above, below] = [slopeAt(raised, y - step), slopeAt(raised, y + step)];
      expect(Math.abs(Math.atan(above) - Math.atan(below))).toBeLessThan(1e-4);
    }
  });

  it('with its inverse is the line itself', () => {
    expect(raisedHeight([{ from: 60, to: 130, by: 0 }], 100)).toBe(100);
    expect(raisedLine(LINE, [])).toBe(LINE);
  });
});
