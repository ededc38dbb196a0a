// What a field says about a text that is no length.

import { formatLength } from '../../units/formatLength';
import { inward } from '../../units/inward';
import type { LengthUnit } from '../../units/lengthUnit';
import type { LengthRefusal } from '../../units/parseLength';
import { catalogue } from '../catalogue';

const FAULTS = catalogue({
  empty: 'Nothing is written here yet.',
  letters: 'Write digits, with in, ft, cm or mm behind them if you like; other letters are not understood.',
  numbersApart: ({ example }: { example: string }) =>
    `These numbers do not make one length. Write it like ${example}.`,
  notANumber: ({ example }: { example: string }) => `This is not a length. Write it like ${example}.`,
  zeroDenominator: 'A fraction cannot have 0 below its line.',
  fractionNotProper: 'The fraction after a whole number must be less than 1, as in 34 1/2.',
  inchesOverFoot: 'After feet the inches must be fewer than 12.',
  negative: 'This length cannot be less than nothing.',
  notOnTape: ({ parts, example }: { parts: string; example: string }) =>
    `No tape is divided into parts of 1/${parts}. Write a fraction that a tape has, or a decimal number, like ${example}.`,
  twoReadings: ({ apart, divided }: { apart: string; divided: string }) =>
    `This may mean ${apart} or ${divided}. Write the one you mean.`,
  outsideSpan: ({ least, most }: { least: string; most: string }) => `This must be from ${least} to ${most}.`,
  examples: { in: '34 1/2 or 34.5', cm: '87.6', mm: '876' } satisfies Record<LengthUnit, string>,
});

/** The sentence for a text that is no length, with an example in the unit of the field. */
export function lengthFaultSentence(refusal: LengthRefusal, unit: LengthUnit): string {
  if (refusal.fault === 'twoReadings') {
    const [apart, divided] = refusal.readings;
    return FAULTS.twoReadings({ apart, divided });
  }
  if (refusal.fault === 'notOnTape')
    return FAULTS.notOnTape({ parts: refusal.parts, example: FAULTS.examples[unit] });
  const sentence = FAULTS[refusal.fault];
  return typeof sentence === 'string' ? sentence : sentence({ example: FAULTS.examples[unit] });
}

/** The sentence for a length outside the span a field can take, mm. */
export function outsideSpanSentence(least: number, most: number, unit: LengthUnit): string {
  const [from, to] = inward(least, most, unit);
  return FAULTS.outsideSpan({
    least: formatLength(from, unit),
    most: formatLength(to, unit, { withUnit: true }),
  });
}
