// The sentences for issues that stand at a measurement: the form of the measurements needs these alone.

import { type Issue, type IssueCode, LEVEL_NAMES } from '../../engine';
import { formatLength } from '../units/formatLength';
import { inward } from '../units/inward';
import type { LengthUnit } from '../units/lengthUnit';
import { catalogue } from './catalogue';
import { inSentence } from './inSentence';
import { LEVEL_WORDS } from './levels';
import { MEASUREMENT_WORDS } from './measurements';

/** What a sentence at a measurement is made of. */
export interface MeasurementParts {
  /** A length of the issue's values, with its unit. */
  readonly length: (name: string) => string;
  /** A number of the issue's values as it is. */
  readonly number: (name: string) => number;
  /** The measurement, with a capital. */
  readonly field: string;
  readonly level: string;
  /** "front", "left back", or "block". */
  readonly block: string;
  /** The level at the end of the field's path. */
  readonly sideName: string;
  /** The ends of a span, as they are easily read, and within it. */
  readonly least: string;
  readonly most: string;
}

/** The parts of an issue's sentence; `field` is what the place of the issue is called, with a capital. */
export function measurementParts({ at, values }: Issue, unit: LengthUnit, field: string): MeasurementParts {
  const number = (name: string): number => values[name] ?? Number.NaN;
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const [least = '', most = ''] = inward(number('least'), number('most'), unit).map(written);
  return {
    length: (name) => written(number(name)),
    number,
    field,
    level: LEVEL_WORDS[at.level ?? 'waist'],
    block: `${at.side ? `${at.side} ` : ''}${at.block ?? 'block'}`,
    sideName: LEVEL_WORDS[LEVEL_NAMES.find((level) => at.field?.endsWith(`.${level}`)) ?? 'waist'],
    least,
    most,
  };
}

/** The name of a measurement with a capital; null for any other field. */
export const measurementName = (field = ''): string | null =>
  Object.entries(MEASUREMENT_WORDS).find(([name]) => name === field)?.[1].label ?? null;

/** The sentence for an issue at a measurement; null for an issue that never stands at one. */
export function measurementIssueSentence(issue: Issue, unit: LengthUnit): string | null {
  if (!isAtMeasurement(issue.code)) return null;
  const field = measurementName(issue.at.field) ?? 'A measurement';
  return MEASUREMENT_SENTENCES[issue.code](measurementParts(issue, unit, field));
}

const isAtMeasurement = (code: IssueCode): code is keyof typeof MEASUREMENT_SENTENCES =>
  Object.hasOwn(MEASUREMENT_SENTENCES, code);

export const MEASUREMENT_SENTENCES = catalogue({
  measurementMissing: ({ field }: MeasurementParts) =>
    `${field} is not filled in, and the draft needs it. Measure it and write it down.`,
  measurementOutOfRange: ({ field, least, most }: MeasurementParts) =>
    `${field} must be between ${least} and ${most}. Look for a slip of the tape or the keyboard.`,
  overBustEstimated: ({ length }: MeasurementParts) =>
    `The over-bust girth was not measured; it is taken as ${length('overBust')} ± ${length('within')}, as nineteen women in twenty of this bust girth have it. Measure it to be sure.`,
  sidesOutOfRange: ({ sideName, number, length }: MeasurementParts) =>
    number('most') < 1
      ? `The left half of the ${sideName} must be from 40 % to 60 % of its girth. Measure it again from centre front to centre back.`
      : `How much lower the ${sideName} sits on the right must be within ${length('most')} up or down. Measure it again.`,
  frontArcImpossible: ({ field, length, least, most }: MeasurementParts) =>
    `${field} of ${length('arc')} cannot be the front’s part of a girth of ${length('girth')}: it must be between ${least} and ${most}. Measure it again from side seam to side seam, or leave it empty.`,
  frontArcUnusual: ({ field, length, least, most }: MeasurementParts) =>
    `${field} of ${length('arc')} sets the side seams unusually far round; ${least} to ${most} would be usual for a girth of ${length('girth')}. Look where the sides were marked; if she is built so, it is right.`,
  levelsOutOfOrder: ({ level, field }: MeasurementParts) =>
    `The ${level} line is not far enough below the line above it. Look at ${inSentence(field)} and the lengths beside it.`,
  levelLeftOut: ({ level, field }: MeasurementParts) =>
    `The ${level} line lies too near its neighbour or on the wrong side of it, so the draft goes without it. Look at ${inSentence(field)}, or leave it if she is built so.`,
  bustPointOffBlock: ({ block }: MeasurementParts) =>
    `The bust-point line falls beyond the side of the ${block}. Look at bust point to bust point against the girths.`,
  shoulderOffBlock: ({ field, block }: MeasurementParts) =>
    `The shoulder does not fit on the ${block}: the neck, the shoulder or the armhole comes out too small. Look at ${inSentence(field)}.`,
  armholeEstimated: ({ length }: MeasurementParts) =>
    `Underarm to waist was not measured; the base of the armhole is estimated, and nineteen times in twenty the armpit lies within ${length('within')} of where it is taken to be. Measure it to be sure.`,
  armholeLength: ({ length }: MeasurementParts) =>
    `The armhole is ${length('length')} round, the upper arm ${length('upperArm')}.`,
  armholeTight: ({ length }: MeasurementParts) =>
    `The armhole is ${length('length')} round, the upper arm ${length('upperArm')}: with less than ${length('least')} more than the arm it binds. Lower the underarm, or look at the upper arm girth.`,
  armpitUnknown: ({ length }: MeasurementParts) =>
    `The top edge stands ${length('height')} above the waist; whether that is clear of the arm is not known. Measure underarm to waist.`,
  sittingUnknown: ({ length }: MeasurementParts) =>
    `The hem lies ${length('depth')} below the waist; whether she can sit in that is not known. Measure waist to lap, seated.`,
} satisfies Partial<Record<IssueCode, (parts: MeasurementParts) => string>>);
