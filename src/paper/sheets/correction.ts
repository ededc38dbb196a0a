// Corrects the scale for a printer that does not keep it, from what its print of a calibration square measures.

import { PATTERN } from '../../document';

/** Factors by which a print is drawn larger along the paper's short and its long side; 1 where the printer keeps the scale. */
export interface Correction {
  readonly across: number;
  readonly down: number;
}

export const NO_CORRECTION: Correction = { across: 1, down: 1 };

/**
 * Largest deviation of a factor from 1. A printer that is farther off scaled to fit the page, or the wrong square was measured.
 */
const MOST = 0.1;

/** Whether both factors are within 10 % of 1. */
export const isCorrection = ({ across, down }: Correction): boolean =>
  [across, down].every((factor) => Math.abs(factor - 1) <= MOST + 1e-9);

/**
 * The correction for the next print, from the measured sides of a square of the last one, which was printed with the correction
 * `last`. Null where it would be over 10 % or a measure is no length.
 */
export function correctionFrom(
  sideMm: number,
  measuredMm: { readonly across: number; readonly down: number },
  last: Correction = NO_CORRECTION,
): Correction | null {
  const next = {
    across: (last.across * sideMm) / measuredMm.across,
    down: (last.down * sideMm) / measuredMm.down,
  };
  return isCorrection(next) ? next : null;
}

/** A correction in words: "2.04 % larger across, 1 % smaller down". */
export const correctionText = ({ across, down }: Correction): string =>
  TEXTS.both({ across: changeText(across, TEXTS.across), down: changeText(down, TEXTS.down) });

const TEXTS = PATTERN.correction;

function changeText(factor: number, texts: typeof TEXTS.across | typeof TEXTS.down): string {
  const percent = Math.round(Math.abs(factor - 1) * 1e4) / 100;
  if (percent === 0) return texts.unchanged;
  return factor > 1 ? texts.larger({ percent }) : texts.smaller({ percent });
}
