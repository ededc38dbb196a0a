// How long the shoulder lines of both blocks are and how they slope.

import type { Body } from '../../body/body';
import type { Shoulders } from '../../style/style';
import type { BlockName } from '../../terms/names';

export type FrontAndBack<Value> = Readonly<Record<BlockName, Value>>;

/** A shoulder line from the neck point: its length in mm, and the angle by which it falls, rad. */
export interface ShoulderLine {
  readonly length: number;
  readonly angle: number;
}

/** How far the tip lies below the neck point where neither body nor style says: from memory. mm */
const USUAL_DROP_MM = { front: 45, back: 35 } as const;
/** The front falls by so much more than a measured drop, the back by so much less. mm */
const APART_MM = 5;

/** The steepest that a front shoulder is usually drafted, and the least that front and back have in the mean: rad. */
const STEEPEST_RAD = (23 * Math.PI) / 180;
const FLATTEST_RAD = (18 * Math.PI) / 180;
/** The farthest that usual drops give way for that. mm */
const MOST_SHIFT_MM = 40;

/** The back shoulder is eased to the front by so much where the style does not say. mm */
const USUAL_EASE_MM = 6;

/** How much longer the back shoulder is than the front's, mm. */
export const easeOf = ({ ease }: Shoulders): number => ease ?? USUAL_EASE_MM;

/**
 * The shoulder lines of both blocks; null where neither shoulder length nor the width across the shoulders was measured. A
 * measured length is the front's; the width across is the back's. The back's is longer by the ease.
 *
 * @param neckX half of the neck width, mm
 */
export function shoulderLines(
  body: Body,
  neckX: number,
  shoulders: Shoulders,
): FrontAndBack<ShoulderLine> | null {
  const { shoulderDrop, shoulderLength, acrossShoulder } = body;
  const ease = easeOf(shoulders);
  const run = acrossShoulder === null ? null : acrossShoulder / 2 - neckX;
  if (shoulderLength === null && run === null) return null;
  const linesAt = (front: number, back: number): FrontAndBack<ShoulderLine> => {
    const length = shoulderLength ?? Math.max(1, Math.hypot(run ?? 0, back) * Math.sign(run ?? 0) - ease);
    return { front: lineOf(length, front), back: lineOf(length + ease, back) };
  };
  if (shoulders.drop !== undefined) return linesAt(shoulders.drop, shoulders.drop);
  if (shoulderDrop !== null) return linesAt(shoulderDrop + APART_MM, shoulderDrop - APART_MM);
  const shifted = (shift: number): FrontAndBack<ShoulderLine> =>
    linesAt(USUAL_DROP_MM.front + shift, USUAL_DROP_MM.back + shift);
  return usualLines(shifted);
}

const lineOf = (length: number, drop: number): ShoulderLine => ({
  length,
  angle: Math.asin(Math.min(1, Math.max(-1, drop / length))),
});

/** Usual drops, both as much less or more as keeps the slope within what is usual. */
function usualLines(shifted: (shift: number) => FrontAndBack<ShoulderLine>): FrontAndBack<ShoulderLine> {
  const usual = shifted(0);
  const mean = ({ front, back }: FrontAndBack<ShoulderLine>): number => (front.angle + back.angle) / 2;
  if (usual.front.angle > STEEPEST_RAD)
    return findLinesAt(shifted, ({ front }) => front.angle - STEEPEST_RAD, -MOST_SHIFT_MM, 0);
  return mean(usual) < FLATTEST_RAD
    ? findLinesAt(shifted, (lines) => mean(lines) - FLATTEST_RAD, 0, MOST_SHIFT_MM)
    : usual;
}

/** The lines at which what grows with the shift is 0, by bisection. */
function findLinesAt(
  shifted: (shift: number) => FrontAndBack<ShoulderLine>,
  off: (lines: FrontAndBack<ShoulderLine>) => number,
  from: number,
  to: number,
): FrontAndBack<ShoulderLine> {
  let [least, most] = [from, to];
  for (let step = 0; step < 40; step += 1) {
    const middle = (least + most) / 2;
    if (off(shifted(middle)) > 0) most = middle;
    else least = middle;
  }
  return shifted((least + most) / 2);
}
