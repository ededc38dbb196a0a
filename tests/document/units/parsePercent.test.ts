import { expect, it } from 'vitest';
import { parsePercent } from '../../../src/document/units/parsePercent';

it.each([
  ['7 %', 70],
  ['-7%', -70],
  ['−6,5 %', -65],
  ['+.5 %', 5],
  ['-0 %', 0],
  ['0 %', 0],
])('reads %s as a part of 1000 mm', (text, mm) => {
  expect(parsePercent(text, 1000)).toBe(mm);
});

it.each(['', '7', '%', '7 % 2', '1 1/2 %', '7 in %', '--7 %', '99999 %'])('does not read %s', (text) => {
  expect(parsePercent(text, 1000)).toBeNull();
});
