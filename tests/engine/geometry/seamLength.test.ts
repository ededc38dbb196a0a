import { describe, expect, it } from 'vitest';
import { heightAtLength, seamLength } from '../../../src/engine/geometry/seamLength';
import { smoothLine, straightDown, xAt } from '../../../src/engine/geometry/smoothLine';
import { randomFrom, uniform } from '../../support/random';

const leg = smoothLine([200, 260, 335, 390, 600], [110, 121, 96, 82, 130]);

/** Length by 200,000 straight steps: slow, and ignorant of the rule the engine uses. */
function walked(line: typeof leg, from: number, to: number): number {
  let length = 0;
  const steps = 200_000;
  const height = (to - from) / steps;
  for (let i = 0; i < steps; i += 1)
    length += Math.hypot(height, xAt(line, from + (i + 1) * height) - xAt(line, from + i * height));
  return length;
}

describe('the length along a line', () => {
  it('equals the sum of many short chords to 1e-6 mm on a leg of garment size', () => {
    expect(seamLength(leg, 210, 560)).toBeCloseTo(walked(leg, 210, 560), 6);
    expect(seamLength(leg, 150, 700)).toBeCloseTo(walked(leg, 150, 700), 6);
  });

  it('is the drop on a straight line, signed, and adds up', () => {
    expect(seamLength(straightDown(40), 10, 250)).toBeCloseTo(240, 12);
    expect(seamLength(leg, 560, 210)).toBe(-seamLength(leg, 210, 560));
    expect(seamLength(leg, 210, 390) + seamLength(leg, 390, 560)).toBeCloseTo(seamLength(leg, 210, 560), 9);
    expect(seamLength(leg, 300, 300)).toBe(0);
  });
});

describe('the height at a length', () => {
  it('is the inverse of the length, up and down', () => {
    for (let length = -260; length <= 330; length += 7.3)
      expect(seamLength(leg, 390, heightAtLength(leg, 390, length))).toBeCloseTo(length, 8);
  });

  it('is found on lines with bends far sharper than any seam', () => {
    // One such line, with a step of 60 mm in 16 mm of height, once threw the search about without end.
    const random = randomFrom(3);
    for (let i = 0; i < 300; i += 1) {
      const ys = [0, 35, 110, 126, 300].map((y) => y + uniform(random, 0, 6));
      const line = smoothLine(
        ys,
        ys.map(() => uniform(random, 0, 200)),
      );
      for (const length of [-130, -90, 5, 60, 180])
        expect(seamLength(line, 126, heightAtLength(line, 126, length)), `line ${i}`).toBeCloseTo(length, 6);
    }
  });

  it('is found where a step lands by turns above and below a bend', () => {
    const ys = [195.839, 213.482, 288.482, 319.036, 552.129];
    const line = smoothLine(ys, [248.192, 198.122, 132.202, 192.975, 173.771]);
    for (const length of [-225, -215, -203.455, -190])
      expect(seamLength(line, 319.036, heightAtLength(line, 319.036, length))).toBeCloseTo(length, 6);
  });
});
