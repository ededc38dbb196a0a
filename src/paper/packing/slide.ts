// Spans in which one outline would overlap another while it slides along it.

import { BAND_MM, type Profile } from './profile';

/** A profile that has been laid down, with the place of its corner. mm */
export interface LaidProfile {
  readonly profile: Profile;
  readonly x: number;
  readonly y: number;
}

/** An open interval of places, mm. */
export type Span = readonly [number, number];

/** The span of x at which a profile at height `y` would overlap one that is laid down; null where it passes above or below. */
export const overAcross = (
  profile: Profile,
  y: number,
  { profile: laid, x, y: laidY }: LaidProfile,
): Span | null => over(profile.rows, y - laidY, profile.heightMm, laid.rowPairs, laid.heightMm, x);

/** The span of y at which a profile at `x` would overlap one that is laid down; null where it passes beside it. */
export const overDown = (
  profile: Profile,
  x: number,
  { profile: laid, x: laidX, y }: LaidProfile,
): Span | null => over(profile.columns, x - laidX, profile.widthMm, laid.columnPairs, laid.widthMm, y);

type Bands = Profile['rows'];

/**
 * The span in which two profiles would overlap. `past` is the offset of the moving one's first band from the other's; each of its
 * bands lies beside a pair of the other's.
 */
function over(
  moving: Bands,
  past: number,
  movingMm: number,
  pairs: Bands,
  laidMm: number,
  at: number,
): Span | null {
  if (past >= laidMm - TOUCH_MM || past <= -movingMm + TOUCH_MM) return null;
  const shift = Math.floor(past / BAND_MM) + 1;
  let [least, most] = [Infinity, -Infinity];
  const last = Math.min(moving.from.length, pairs.from.length - shift);
  for (let k = Math.max(0, -shift); k < last; k += 1) {
    const left = (pairs.from[k + shift] as number) - (moving.to[k] as number);
    const right = (pairs.to[k + shift] as number) - (moving.from[k] as number);
    if (left < least) least = left;
    if (right > most) most = right;
  }
  return most > least ? [at + least, at + most] : null;
}

/** Tolerance for outlines whose rooms touch. mm */
export const TOUCH_MM = 1e-6;
