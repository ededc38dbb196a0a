// The client's lengths that nobody measured: every print has to say which they are and how far off they may be.

import { type Client, estimateWritten, expectedOf, formatLength, MEASUREMENT_WORDS } from '../../document';

type MeasuredClient = Pick<Client, 'unit' | 'measurements' | 'estimated'>;

/** Printed above them. */
export const ESTIMATED_HEADING = 'Estimated, not measured';
/** Printed with them. */
export const MEASURE_FIRST = 'Measure before you cut; ± holds for nineteen women in twenty.';

/** "Underarm to waist: estimated, 7¾ in ± 1¼ in", a line each; without ± where the survey does not know the length. */
export const estimatedLines = (client: MeasuredClient): string[] =>
  estimatesOf(client).map(({ label, amount }) => `${label}: estimated, ${amount}`);

/** The same on one line; null where all that is used was measured. */
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
