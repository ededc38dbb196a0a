// What a field says about a text that is no length.

import { formatLength } from '../units/formatLength';
import { inward } from '../units/inward';
import type { LengthUnit } from '../units/lengthUnit';
import type { LengthFault } from '../units/parseLength';

const EXAMPLES: Readonly<Record<LengthUnit, string>> = { in: '34 1/2 or 34.5', cm: '87.6', mm: '876' };

/** The sentence for a fault, with an example in the unit of the field. */
export function lengthFaultSentence(fault: LengthFault, unit: LengthUnit): string {
  switch (fault) {
    case 'empty':
      return 'Nothing is written here yet.';
    case 'letters':
      return 'Write digits, with in, ft, cm or mm behind them if you like; other letters are not understood.';
    case 'numbersApart':
      return `These numbers do not make one length. Write it like ${EXAMPLES[unit]}.`;
    case 'notANumber':
      return `This is not a length. Write it like ${EXAMPLES[unit]}.`;
    case 'zeroDenominator':
      return 'A fraction cannot have 0 below its line.';
    case 'fractionNotProper':
      return 'The fraction after a whole number must be less than 1, as in 34 1/2.';
    case 'inchesOverFoot':
      return 'After feet the inches must be fewer than 12.';
    case 'negative':
      return 'This length cannot be less than nothing.';
  }
}

/** The sentence for a length outside the span a field can take, mm. */
export function outsideSpanSentence(least: number, most: number, unit: LengthUnit): string {
  const [from, to] = inward(least, most, unit);
  return `This must be from ${formatLength(from, unit)} to ${formatLength(to, unit, { withUnit: true })}.`;
}
