// A paper held upright, as large as it is in the millimetres that its printer makes.

import { type Correction, NO_CORRECTION } from './correction';
import type { PaperChoice } from './papers';

export interface UprightPage {
  /** Of the paper's short side, mm. */
  readonly widthMm: number;
  /** Of its long side, mm. */
  readonly heightMm: number;
  readonly marginMm: number;
  readonly overlapMm: number;
}

/**
 * The page a print is laid out on. Where a print is drawn larger to make up for its printer, less of the pattern goes on a sheet:
 * the page is that much smaller, and margin and overlap are what a ruler finds on the printed sheet.
 */
export function uprightPage(paper: PaperChoice, correction: Correction = NO_CORRECTION): UprightPage {
  const { widthMm, heightMm, marginMm, overlapMm } = paper;
  return {
    widthMm: Math.min(widthMm, heightMm) / correction.across,
    heightMm: Math.max(widthMm, heightMm) / correction.down,
    marginMm,
    overlapMm,
  };
}
