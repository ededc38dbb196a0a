// What is said of a measurement that is unusual for her other ones, and of an estimate in its place.

import type { Expected } from '../statistics/expected';
import { formatLength } from '../units/formatLength';
import { type LengthUnit, MM_PER } from '../units/lengthUnit';

/** Nineteen women in twenty lie within so many SDs. */
const NINETEEN_IN_TWENTY = 1.96;

/** An estimate is no finer than this part of an inch; of a centimetre it is a millimetre. */
const PARTS = 8;

const written = (mm: number, unit: LengthUnit): string =>
  formatLength(mm, unit, { withUnit: true, parts: PARTS });

/** The estimate as it is written when it is offered, mm: so much is put in when it is taken. */
export function offeredLength({ mean }: Expected, unit: LengthUnit): number {
  const line = unit === 'in' ? MM_PER.in / PARTS : 1;
  return Math.round(mean / line) * line;
}

/** A caution that blocks nothing. */
export const unusualSentence = ({ mean, sd }: Expected, unit: LengthUnit): string =>
  `Unusual for her other measurements: ${written(mean - NINETEEN_IN_TWENTY * sd, unit)} to ${written(mean + NINETEEN_IN_TWENTY * sd, unit)} would be usual. Measure again; if she is built so, it is right.`;

/** "16¼ in ± 1⅞ in" */
export const estimateWritten = ({ mean, sd }: Expected, unit: LengthUnit): string =>
  `${written(mean, unit)} ± ${written(NINETEEN_IN_TWENTY * sd, unit)}`;

/** What is offered in place of a measurement, with what it comes of. */
export const offeredSentence = (expected: Expected, unit: LengthUnit): string =>
  expected.belowBust === undefined
    ? `Usual for her other measurements: ${estimateWritten(expected, unit)}.`
    : `${written(expected.belowBust, unit)} below the bust point (common practice, no source): ${estimateWritten(expected, unit)}.`;

/** What stands beside a number that was not measured. */
export const estimatedSentence = ({ sd, belowBust }: Expected, unit: LengthUnit): string =>
  belowBust === undefined
    ? `Estimated from her other measurements, ± ${written(NINETEEN_IN_TWENTY * sd, unit)} for nineteen women in twenty. Measure it before you cut.`
    : `Estimated ${written(belowBust, unit)} below the bust point (common practice, no source), ± ${written(NINETEEN_IN_TWENTY * sd, unit)}. Measure it before you cut.`;
