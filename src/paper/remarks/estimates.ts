// Estimated measurements of the client. Every print lists them with their margin of error.

import {
  type Client,
  estimateWritten,
  expectedOf,
  formatLength,
  inSentence,
  MEASUREMENT_WORDS,
  REMARKS,
} from '../../document';

type MeasuredClient = Pick<Client, 'unit' | 'measurements' | 'estimated'>;

const TEXTS = REMARKS.estimates;

/** A line for each: "Underarm to waist: estimated, 7¾ in ± 1¼ in", without ± where the survey does not have the length. */
export const estimatedLines = (client: MeasuredClient): string[] =>
  estimatesOf(client).map(({ label, amount }) => TEXTS.line({ measurement: label, amount }));

/** All estimated measurements on one line; null where there are none. */
export function estimatedRemark(client: MeasuredClient): string | null {
  const items = estimatesOf(client).map(({ label, amount }) =>
    TEXTS.item({ measurement: inSentence(label), amount }),
  );
  return items.length > 0 ? TEXTS.all({ items }) : null;
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
