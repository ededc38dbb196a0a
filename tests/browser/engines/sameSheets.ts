// What two engines print of the same book, and the squares that stand on the first sheet.

import { expect } from 'vitest';
import type { ReadPage, ReadPattern } from '../../paper/readPattern';

/** Sides of the squares that show whether a printer kept the scale, mm. */
const SQUARES = [100, 101.6];

function squaresOf({ lines }: ReadPage): number[] {
  const across = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return lines
    .filter(({ points }) => points.length === 5)
    .map(({ points }) => [across(points.map(({ x }) => x)), across(points.map(({ y }) => y))] as const)
    .filter(([wide, high]) => Math.abs(wide - high) < 0.1 && wide > 90)
    .map(([wide]) => wide)
    .sort((a, b) => a - b);
}

/** Several sheets, with the squares on the first. */
export function expectSquares({ pages }: ReadPattern): void {
  expect(pages.length).toBeGreaterThan(3);
  const squares = squaresOf(pages[0] as ReadPage);
  expect(squares).toHaveLength(SQUARES.length);
  for (const [i, side] of SQUARES.entries()) expect(squares[i]).toBeCloseTo(side, 1);
}

/** The same texts on each sheet, and each point of a line at the same place. */
export function expectSameSheets(other: ReadPattern, first: ReadPattern): void {
  const inWhole = (page: ReadPage) => page.texts.map(({ text }) => text);
  expect(other.pages.map(inWhole)).toEqual(first.pages.map(inWhole));
  for (const [i, page] of other.pages.entries())
    for (const [j, { points }] of page.lines.entries())
      for (const [k, { x, y }] of points.entries()) {
        const same = first.pages[i]?.lines[j]?.points[k];
        expect(Math.hypot(x - (same?.x ?? Number.NaN), y - (same?.y ?? Number.NaN))).toBeLessThan(0.02);
      }
}
