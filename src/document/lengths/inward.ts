// The ends of a span as they are told: on the lines of the tape, and never outside the span itself.

import { inches } from '../../engine';
import type { LengthUnit } from './lengthUnit';

/** The least line of the tape that is not below `mm`, in the unit's own lines: 1/16 in, or 1 mm. */
export const lineAtOrAbove = (mm: number, unit: LengthUnit): number =>
  Math.ceil(mm / lineOf(unit) - 1e-9) * lineOf(unit);

/** The greatest line of the tape that is not above `mm`. */
export const lineAtOrBelow = (mm: number, unit: LengthUnit): number =>
  Math.floor(mm / lineOf(unit) + 1e-9) * lineOf(unit);

const lineOf = (unit: LengthUnit): number => (unit === 'in' ? inches(1 / 16) : 1);
