// The upright page of a paper, measured in the millimetres that its printer makes.

import { type Correction, NO_CORRECTION } from './correction';
import type { PaperChoice } from './papers';

export interface UprightPage {
  /** Length of the paper's short side, mm. */
  readonly widthMm: number;
  /** Length of its long side, mm. */
  readonly heightMm: number;
  readonly marginMm: number;
  readonly overlapMm: number;
}

/**
 * The page that a print is laid out on. A correction that enlarges the print makes the page smaller by the same factor, because
 * less of the pattern fits on a sheet. Margin and overlap are those that a ruler finds on the printed sheet.
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
