// The ends of a span as they are written: numbers that are easily read, and never outside the span itself.

import { inches } from '../../engine';
import type { LengthUnit } from './lengthUnit';

/** Lines of the tape from coarse to fine, mm. */
const LINES: Readonly<Record<LengthUnit, readonly number[]>> = {
  in: [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16].map(inches),
  cm: [10, 5, 1],
  mm: [1],
};

/** The ends of a span are written on the coarsest lines of which it has so many between them. */
const LEAST_LINES = 20;

/**
 * The ends of a span, mm, brought inwards to lines of the tape that suit its width: "12 in" and not "11 13/16 in" for
 * the least that a girth may measure. An end that is no number stays as it is, and the other is brought to the finest lines.
 */
export function inward(
  least: number,
  most: number,
  unit: LengthUnit,
): readonly [least: number, most: number] {
  const lines = LINES[unit];
  const line = lines.find((each) => (most - least) / each >= LEAST_LINES) ?? lines.at(-1) ?? 1;
  return [Math.ceil(least / line - 1e-9) * line, Math.floor(most / line + 1e-9) * line];
}
