// The main path in three engines of browsers, each driven by its own protocol. Where one is not installed, the test's name says so.

import { describe, expect, inject, it } from 'vitest';
import type { ReadPage, ReadPattern } from '../../paper/readPattern';
import { CHROMIUM } from './chromium';
import { FIREFOX } from './firefox';
import { inEngines } from './inEngines';
import { walkMainPath } from './walk';
import { WEBKIT } from './webkit';

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

describe('the main path', () => {
  const printed = new Map<string, ReadPattern>();

  inEngines([CHROMIUM, FIREFOX, WEBKIT], 'from nine numbers to the sheets', async (view, downloads, name) => {
    printed.set(name, await walkMainPath(view, inject('appUrl'), downloads));
  });

  it('prints the same sheets in each, with squares to measure', () => {
    const [first, ...others] = [...printed.values()];
    expect(first?.pages.length).toBeGreaterThan(3);
    const squares = squaresOf(first?.pages[0] as ReadPage);
    expect(squares).toHaveLength(SQUARES.length);
    for (const [i, side] of SQUARES.entries()) expect(squares[i]).toBeCloseTo(side, 1);
    for (const other of others) {
      const inWhole = (page: ReadPage) => page.texts.map(({ text }) => text);
      expect(other.pages.map(inWhole)).toEqual(first?.pages.map(inWhole));
      for (const [i, page] of other.pages.entries())
        for (const [j, { points }] of page.lines.entries())
          for (const [k, { x, y }] of points.entries()) {
            const same = first?.pages[i]?.lines[j]?.points[k];
            expect(Math.hypot(x - (same?.x ?? Number.NaN), y - (same?.y ?? Number.NaN))).toBeLessThan(0.02);
          }
    }
  });
});
