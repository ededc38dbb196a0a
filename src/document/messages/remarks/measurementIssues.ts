// The sentences for issues that stand at a measurement: the form of the measurements needs these alone.

import {
  type Issue,
  type IssueCode,
  type IssueValues,
  inches,
  LEVEL_NAMES,
  type LevelName,
} from '../../../engine';
import { formatLength } from '../../units/formatLength';
import { inward } from '../../units/inward';
import type { LengthUnit } from '../../units/lengthUnit';
import { catalogue } from '../catalogue';
import { inSentence } from '../words/inSentence';
import { LEVEL_WORDS } from '../words/levels';
import { MEASUREMENT_WORDS } from '../words/measurements';

/** What a sentence at a measurement is written with. */
export interface MeasurementWords {
  /** A length with its unit; one that is more than nothing is not written as nothing. */
  readonly written: (mm: number) => string;
  /** The ends of a span with their unit, as they are easily read, and within it. */
  readonly span: (span: { readonly least: number; readonly most: number }) => {
    readonly least: string;
    readonly most: string;
  };
  /** The measurement, with a capital. */
  readonly field: string;
  readonly level: string;
  /** "front", "left back", or "block". */
  readonly block: string;
  /** The level whose sides the field is of. */
  readonly sideName: string;
}

/** The numbers of an issue and what its sentence is written with. */
export type Parts<Words, Code extends IssueCode> = Words & { readonly values: IssueValues<Code> };

/** The words of an issue's sentence; `field` is what the place of the issue is called, with a capital. */
export function measurementWords(at: Issue['at'], unit: LengthUnit, field: string): MeasurementWords {
  const written = (mm: number): string =>
    mm > 0 && mm < leastWritten(unit) / 2
      ? `less than ${formatLength(leastWritten(unit), unit, { withUnit: true })}`
      : formatLength(mm, unit, { withUnit: true });
  return {
    written,
    span: (span) => {
      const [least, most] = inward(span.least, span.most, unit);
      return { least: written(least), most: written(most) };
    },
    field,
    level: LEVEL_WORDS[at.level ?? 'waist'],
    block: `${at.side ? `${at.side} ` : ''}${at.block ?? 'block'}`,
    sideName: LEVEL_WORDS[LEVEL_NAMES.find((level) => isOfSides(at.field, level)) ?? 'waist'],
  };
}

/** The least length that is written: a sixteenth of an inch, or a millimetre. mm */
const leastWritten = (unit: LengthUnit): number => (unit === 'in' ? inches(1 / 16) : 1);

const isOfSides = (field: string | undefined, level: LevelName): boolean =>
  field === `leftShare.${level}` || field === `rightLower.${level}`;

/** The name of a measurement with a capital; null for any other field. */
export const measurementName = (field = ''): string | null =>
  Object.entries(MEASUREMENT_WORDS).find(([name]) => name === field)?.[1].label ?? null;

/** The sentence for an issue at a measurement; null for an issue that never stands at one. */
export function measurementIssueSentence(issue: Issue, unit: LengthUnit): string | null {
  return isAtMeasurement(issue) ? sentenceOf(issue, unit) : null;
}

const isAtMeasurement = (issue: Issue): issue is Issue<MeasurementCode> =>
  Object.hasOwn(MEASUREMENT_SENTENCES, issue.code);

function sentenceOf<Code extends MeasurementCode>(issue: Issue<Code>, unit: LengthUnit): string {
  const write: MeasurementSentences[Code] = MEASUREMENT_SENTENCES[issue.code];
  const words = measurementWords(issue.at, unit, measurementName(issue.at.field) ?? 'A measurement');
  return write({ ...words, values: issue.values });
}

type MeasurementCode =
  | 'measurementMissing'
  | 'measurementOutOfRange'
  | 'overBustEstimated'
  | 'sidesOutOfRange'
  | 'frontArcImpossible'
  | 'frontArcUnusual'
  | 'levelsOutOfOrder'
  | 'levelLeftOut'
  | 'bustPointOffBlock'
  | 'shoulderOffBlock'
  | 'armholeEstimated'
  | 'armholeLength'
  | 'armholeTight'
  | 'armpitUnknown'
  | 'sittingUnknown';

type MeasurementSentences = {
  readonly [Code in MeasurementCode]: (parts: Parts<MeasurementWords, Code>) => string;
};

export const MEASUREMENT_SENTENCES: MeasurementSentences = catalogue<MeasurementSentences>({
  measurementMissing: ({ field }) =>
    `${field} is not filled in, and the draft needs it. Measure it and write it down.`,
  measurementOutOfRange: ({ field, span, values }) => {
    const { least, most } = span(values);
    return `${field} must be between ${least} and ${most}. Look for a slip of the tape or the keyboard.`;
  },
  overBustEstimated: ({ written, values }) =>
    `The over-bust girth was not measured; it is taken as ${written(values.overBust)} ± ${written(values.within)}, as nineteen women in twenty of this bust girth have it. Measure it to be sure.`,
  sidesOutOfRange: ({ sideName, written, values }) =>
    values.most < 1
      ? `The left half of the ${sideName} must be from 40 % to 60 % of its girth. Measure it again from centre front to centre back.`
      : `How much lower the ${sideName} sits on the right must be within ${written(values.most)} up or down. Measure it again.`,
  frontArcImpossible: ({ field, written, span, values }) => {
    const { least, most } = span(values);
    return `${field} of ${written(values.arc)} cannot be the front’s part of a girth of ${written(values.girth)}: it must be between ${least} and ${most}. Measure it again from side seam to side seam, or leave it empty.`;
  },
  frontArcUnusual: ({ field, written, span, values }) => {
    const { least, most } = span(values);
    return `${field} of ${written(values.arc)} sets the side seams unusually far round; ${least} to ${most} would be usual for a girth of ${written(values.girth)}. Look where the sides were marked; if she is built so, it is right.`;
  },
  levelsOutOfOrder: ({ level, field }) =>
    `The ${level} line is not far enough below the line above it. Look at ${inSentence(field)} and the lengths beside it.`,
  levelLeftOut: ({ level, field }) =>
    `The ${level} line lies too near its neighbour or on the wrong side of it, so the draft goes without it. Look at ${inSentence(field)}, or leave it if she is built so.`,
  bustPointOffBlock: ({ block }) =>
    `The bust-point line falls beyond the side of the ${block}. Look at bust point to bust point against the girths.`,
  shoulderOffBlock: ({ field, block }) =>
    `The shoulder does not fit on the ${block}: the neck, the shoulder or the armhole comes out too small. Look at ${inSentence(field)}.`,
  armholeEstimated: ({ written, values }) =>
    `Underarm to waist was not measured; the base of the armhole is estimated, and nineteen times in twenty the armpit lies within ${written(values.within)} of where it is taken to be. Measure it to be sure.`,
  armholeLength: ({ written, values }) =>
    `The armhole is ${written(values.length)} round, the upper arm ${written(values.upperArm)}.`,
  armholeTight: ({ written, values }) =>
    `The armhole is ${written(values.length)} round, the upper arm ${written(values.upperArm)}: with less than ${written(values.least)} more than the arm it binds. Lower the underarm, or look at the upper arm girth.`,
  armpitUnknown: ({ written, values }) =>
    `The top edge stands ${written(values.height)} above the waist; whether that is clear of the arm is not known. Measure underarm to waist.`,
  sittingUnknown: ({ written, values }) =>
    `The hem lies ${written(values.depth)} below the waist; whether she can sit in that is not known. Measure waist to lap, seated.`,
});
