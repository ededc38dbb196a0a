import { expect, it } from 'vitest';
import { percentOf } from '../../../src/document';

it.each([
  { part: 50.8, whole: 749.3, percent: '6.8' },
  { part: 0, whole: 749.3, percent: '0.0' },
  // a half of a tenth goes up, also where the number that is nearest to it is written a little smaller
  { part: 68.5, whole: 1000, percent: '6.9' },
  { part: 10.05, whole: 1000, percent: '1.0' },
])('writes $part of $whole as $percent', ({ part, whole, percent }) => {
  expect(percentOf(part, whole)).toBe(percent);
});

it.each([null, 0])('has no part of %s', (whole) => {
  expect(percentOf(50.8, whole)).toBeNull();
});
