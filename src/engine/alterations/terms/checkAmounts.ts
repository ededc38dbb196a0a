// Amounts that an alteration may have.

import type { Alteration } from './alteration';

/** The largest amount, either way: a larger one is more likely a mistake in writing. Our own bound. mm */
export const MOST_ALTERED_MM = 150;

/** The greatest distance of a height from the waist, either way; our own bound. mm */
export const MOST_FROM_WAIST_MM = 600;

/** Whether every number of an alteration is one that can be drafted. */
export function isWithinSpans(alteration: Alteration): boolean {
  switch (alteration.kind) {
    case 'seam':
      return alteration.at.every(
        ({ height, a, b }) =>
          within(a, MOST_ALTERED_MM) &&
          within(b, MOST_ALTERED_MM) &&
          (height.kind !== 'belowWaist' || within(height.mm, MOST_FROM_WAIST_MM)),
      );
    case 'bustPoint':
      return within(alteration.out, MOST_ALTERED_MM) && within(alteration.down, MOST_ALTERED_MM);
    default:
      return alteration.at.every(({ by }) => within(by, MOST_ALTERED_MM));
  }
}

const within = (value: number, most: number): boolean => Math.abs(value) <= most;
