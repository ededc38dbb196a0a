// Estimated measurements of the client. Every print lists them with their margin of error.

import { type Client, estimateWritten, expectedOf, formatLength, MEASUREMENT_WORDS } from '../../document';

type MeasuredClient = Pick<Client, 'unit' | 'measurements' | 'estimated'>;

/** The heading above the estimated measurements. */
export const ESTIMATED_HEADING = 'Estimated, not measured';
/** The advice below the estimated measurements. */
export const MEASURE_FIRST = 'Measure before you cut; ± holds for nineteen women in twenty.';

/** A line for each: "Underarm to waist: estimated, 7¾ in ± 1¼ in", without ± where the survey does not have the length. */
export const estimatedLines = (client: MeasuredClient): string[] =>
  estimatesOf(client).map(({ label, amount }) => `${label}: estimated, ${amount}`);

/** All estimated measurements on one line; null where there are none. */
export function estimatedRemark(client: MeasuredClient): string | null {
  const found = estimatesOf(client).map(
    ({ label, amount }) => `${label.charAt(0).toLowerCase()}${label.slice(1)} ${amount}`,
  );
  return found.length > 0 ? `${ESTIMATED_HEADING}: ${found.join('; ')}. ${MEASURE_FIRST}` : null;
}

function estimatesOf({ unit, measurements, estimated }: MeasuredClient): { label: string; amount: string }[] {
  return [...new Set(estimated)].flatMap((name) => {
    const value = measurements[name];
    if (value === null) return [];
    const expected = expectedOf(name, measurements, estimated);
    const amount = expected ? estimateWritten({ mean: value, sd: expected.sd }, unit) : lengthIn(value, unit);
    return [{ label: MEASUREMENT_WORDS[name].label, amount }];
  });
}

const lengthIn = (mm: number, unit: MeasuredClient['unit']): string =>
  formatLength(mm, unit, { withUnit: true });
