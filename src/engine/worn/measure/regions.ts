// The regions that figures of a fit are given for: bands between the body's levels, and front, side and back.

import { type BodyLevel, zOf } from '../body/shape';

export const BANDS = ['aboveBust', 'bustToUnderBust', 'underBustToWaist', 'belowWaist'] as const;
export type Band = (typeof BANDS)[number];

export const PARTS = ['front', 'side', 'back'] as const;
export type Part = (typeof PARTS)[number];

/** Directions from the front at which front and side end, rad: 60° and 120°. */
const FRONT_ENDS = 1.05;
const SIDE_ENDS = 2.1;

/** Front, side or back by the direction from the body's axis: x to the side and y forwards, mm. */
export function partAt(x: number, y: number): Part {
  const direction = Math.atan2(Math.abs(x), y);
  if (direction < FRONT_ENDS) return 'front';
  return direction < SIDE_ENDS ? 'side' : 'back';
}

/** The band that a height on the body lies in; z up, mm. */
export function bandAt(z: number, levels: readonly BodyLevel[]): Band {
  if (z > zOf(levels, 'bust')) return 'aboveBust';
  if (z > zOf(levels, 'underBust')) return 'bustToUnderBust';
  return z > zOf(levels, 'waist') ? 'underBustToWaist' : 'belowWaist';
}
