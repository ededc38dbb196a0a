// A small, a middling and a large body, for tests that must be good on all sizes.

import type { Measurements } from '../../../src/engine';
import { MEAN_BODY } from './drawBodies';

/**
 * Bust, waist and hip girths of the smallest and the largest woman of EN 13402-3 (76/60/84 and 128/112/132 cm, as cited by
 * the R package Anthropometry), widened to a bust of 131 cm; other girths scaled from the survey's means, lengths left at
 * them.
 */
function sized(bust: number, waist: number, hip: number): Measurements {
  const scale = bust / MEAN_BODY.bust;
  return {
    ...MEAN_BODY,
    bust,
    waist,
    hip,
    overBust: bust * 0.97,
    underBust: (bust + waist) / 2,
    bustPointWidth: (MEAN_BODY.bustPointWidth ?? 0) * Math.sqrt(scale),
  };
}

/** Across the shoulders goes with the bust, from memory: about 350 mm for a bust of 800 and 400 for one of 1000. */
export const withShoulders = (body: Measurements): Measurements => ({
  ...body,
  acrossShoulder: 150 + 0.25 * (body.bust ?? 0),
});

export const SIZED_BODIES: readonly (readonly [name: string, body: Measurements])[] = [
  ['small', withShoulders(sized(760, 600, 840))],
  ['mean', withShoulders(MEAN_BODY)],
  ['large', withShoulders(sized(1310, 1150, 1350))],
];
