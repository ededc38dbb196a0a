// Checks whether a paper can be printed on.

import { formatLength, type LengthUnit, PAPER_FAULTS } from '../../document';
import { type Correction, NO_CORRECTION } from './correction';
import type { PaperChoice } from './papers';

type PaperFaultCode =
  | 'paperNotANumber'
  | 'marginOutOfRange'
  | 'overlapOutOfRange'
  | 'paperTooSmall'
  | 'paperTooLarge';

export interface PaperFault {
  readonly code: PaperFaultCode;
  /** The bounds, mm. */
  readonly least: number;
  readonly most: number;
}

export type CheckedPaper = { readonly ok: true } | { readonly ok: false; readonly fault: PaperFault };

/** Wider margins leave no room for the calibration squares, and no desktop printer needs them. mm */
const MOST_MARGIN_MM = 20;
/** The overlap must hold whole joining marks. mm */
const LEAST_OVERLAP_MM = 5;
const MOST_OVERLAP_MM = 30;
/** Least size of the first page between its margins, mm. */
const FIRST_PAGE_LEAST = { widthMm: 165, heightMm: 236 } as const;
/** 14 400 units of 1/72 in, the longest side a page may have: ISO 32000-1, Annex C. mm */
export const MOST_SIDE_MM = 5080;

/** Refuses papers, margins and overlaps that leave no room for the pattern or for the first page. */
export function checkPaper(choice: PaperChoice, correction: Correction = NO_CORRECTION): CheckedPaper {
  const { widthMm, heightMm, marginMm, overlapMm } = choice;
  if (![widthMm, heightMm, marginMm, overlapMm].every(Number.isFinite))
    return refused('paperNotANumber', 0, 0);
  if (marginMm < 0 || marginMm > MOST_MARGIN_MM) return refused('marginOutOfRange', 0, MOST_MARGIN_MM);
  if (overlapMm < LEAST_OVERLAP_MM || overlapMm > MOST_OVERLAP_MM)
    return refused('overlapOutOfRange', LEAST_OVERLAP_MM, MOST_OVERLAP_MM);
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)];
  const least = {
    short: (FIRST_PAGE_LEAST.widthMm + 2 * marginMm) * correction.across,
    long: (FIRST_PAGE_LEAST.heightMm + 2 * marginMm) * correction.down,
  };
  if (short < least.short || long < least.long) return refused('paperTooSmall', least.short, least.long);
  if (long > MOST_SIDE_MM) return refused('paperTooLarge', 0, MOST_SIDE_MM);
  return { ok: true };
}

const refused = (code: PaperFaultCode, least: number, most: number): CheckedPaper => ({
  ok: false,
  fault: { code, least, most },
});

/** A sentence that says what is wrong with a paper and how to mend it. */
export function paperSentence({ code, least, most }: PaperFault, unit: LengthUnit): string {
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return PAPER_FAULTS[code]({ least: written(least), most: written(most) });
}
