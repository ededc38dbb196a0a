import { describe, expect, it } from 'vitest';
import { withFraction } from '../../../src/app/measure/rows/withFraction';

describe('a key of fractions', () => {
  it.each([
    ['', '3/8'],
    ['34', '34 3/8'],
    ['34 1/2', '34 3/8'],
    ['34½', '34 3/8'],
    ['34.5', '34 3/8'],
    ['34 in', '34 3/8'],
    ['3/4', '3/8'],
    ['11/16', '3/8'],
    ['-1 1/2', '-1 3/8'],
    ['-', '-3/8'],
    ['−2', '−2 3/8'],
  ])('in “%s” makes “%s”', (text, made) => {
    expect(withFraction(text, '3/8')).toBe(made);
  });
});
