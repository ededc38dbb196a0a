// What is said of a measurement that is unusual for her other ones, and of an estimate in its place.

import type { Expected } from '../../statistics/expected';
import { formatLength } from '../../units/formatLength';
import { type LengthUnit, MM_PER } from '../../units/lengthUnit';
import { catalogue } from '../catalogue';

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

const EXPECTED = catalogue({
  unusual: ({ least, most }: { least: string; most: string }) =>
    `Unusual for her other measurements: ${least} to ${most} would be usual. Measure again; if she is built so, it is right.`,
  range: ({ least, most }: { least: string; most: string }) => `${least} to ${most}`,
  estimate: ({ mean, spread }: { mean: string; spread: string }) => `${mean} ± ${spread}`,
  offered: ({ estimate }: { estimate: string }) => `Usual for her other measurements: ${estimate}.`,
  offeredBelowBust: ({ belowBust, estimate }: { belowBust: string; estimate: string }) =>
    `${belowBust} below the bust point: ${estimate}.`,
  estimated: ({ spread }: { spread: string }) =>
    `Estimated from her other measurements, ± ${spread} for nineteen women in twenty. Measure it before you cut.`,
  estimatedBelowBust: ({ belowBust, spread }: { belowBust: string; spread: string }) =>
    `Estimated ${belowBust} below the bust point, ± ${spread}. Measure it before you cut.`,
});

/** Half the span that nineteen women in twenty lie within. */
const spreadWritten = ({ sd }: Expected, unit: LengthUnit): string => written(NINETEEN_IN_TWENTY * sd, unit);

/** A caution that blocks nothing. */
export const unusualSentence = ({ mean, sd }: Expected, unit: LengthUnit): string =>
  EXPECTED.unusual({
    least: written(mean - NINETEEN_IN_TWENTY * sd, unit),
    most: written(mean + NINETEEN_IN_TWENTY * sd, unit),
  });

/** The span that nineteen women in twenty with her other measurements lie within, in words: "29½ to 34 in". */
export const usualRange = ({ mean, sd }: Expected, unit: LengthUnit): string =>
  EXPECTED.range({
    least: formatLength(mean - NINETEEN_IN_TWENTY * sd, unit, { parts: PARTS }),
    most: written(mean + NINETEEN_IN_TWENTY * sd, unit),
  });

/** "16¼ in ± 1⅞ in" */
export const estimateWritten = (expected: Expected, unit: LengthUnit): string =>
  EXPECTED.estimate({ mean: written(expected.mean, unit), spread: spreadWritten(expected, unit) });

/** What is offered in place of a measurement, with what it comes of. */
export function offeredSentence(expected: Expected, unit: LengthUnit): string {
  const estimate = estimateWritten(expected, unit);
  return expected.belowBust === undefined
    ? EXPECTED.offered({ estimate })
    : EXPECTED.offeredBelowBust({ belowBust: written(expected.belowBust, unit), estimate });
}

/** What stands beside a number that was not measured. */
export function estimatedSentence(expected: Expected, unit: LengthUnit): string {
  const spread = spreadWritten(expected, unit);
  return expected.belowBust === undefined
    ? EXPECTED.estimated({ spread })
    : EXPECTED.estimatedBelowBust({ belowBust: written(expected.belowBust, unit), spread });
}
