// The angle of a dart, and the legs of one that is closed at both ends: they are sewn to each other from point to point, so they are
// of one length.

import { first, last } from '../../geometry/lists';
import type { Point } from '../../geometry/point';
import { seamLength } from '../../geometry/seamLength';
import { combine, type SmoothLine, xAt } from '../../geometry/smoothLine';
import { dartLeg } from './extent';

interface Legs {
  readonly innerLeg: SmoothLine;
  readonly outerLeg: SmoothLine;
}

/** Legs nearer in length than this are of one length. mm */
const ALIKE_MM = 1e-7;

/**
 * The angle of a dart `width` wide at the end of legs `leg` long, rad; both in mm or both in anything else. Not a number
 * where the legs are too short for the width. Source: plane trigonometry of an isosceles triangle.
 */
export const dartAngle = (width: number, leg: number): number => 2 * Math.asin(width / (2 * leg));

/** The straight fold of a dart from its upper to its lower point. */
export function foldBetween(upper: Point, lower: Point): SmoothLine {
  const slope = (lower.x - upper.x) / (lower.y - upper.y);
  return { ys: [upper.y, lower.y], xs: [upper.x, lower.x], slopes: [slope, slope] };
}

/**
 * The legs of a dart on a straight fold, `taken` apart at every height. On an upright fold half of it lies on either side;
 * on a slanting one that would make one leg longer, and what lies on either side is shared so that it does not.
 *
 * @param fold from its upper to its lower point, mm
 */
export function closedLegs(fold: SmoothLine, taken: SmoothLine): Legs {
  const upper = first(fold.ys);
  const lower = last(fold.ys);
  const legs = (shift: number): Legs => ({
    innerLeg: dartLeg(fold, taken, shift - 0.5, { upper, lower }),
    outerLeg: dartLeg(fold, taken, shift + 0.5, { upper, lower }),
  });
  // A leg is shortest on the fold and longer the farther off it lies, on either side: what differs only falls with the shift.
  const differ = ({ innerLeg, outerLeg }: Legs): number =>
    seamLength(innerLeg, upper, lower) - seamLength(outerLeg, upper, lower);
  let least = -0.5;
  let most = 0.5;
  let shift = 0;
  let even = legs(shift);
  let off = differ(even);
  // Secant method, safeguarded by bisection so that it always converges.
  let previous: { readonly shift: number; readonly off: number } | null = null;
  for (let step = 0; step < 60 && Math.abs(off) > ALIKE_MM; step += 1) {
    if (off > 0) least = shift;
    else most = shift;
    const next: number = previous
      ? shift - (off * (shift - previous.shift)) / (off - previous.off)
      : shift + 0.01;
    previous = { shift, off };
    shift = next > least && next < most ? next : (least + most) / 2;
    even = legs(shift);
    off = differ(even);
  }
  return even;
}

/** Legs between two heights that were moved, each height by itself, on a straight fold again and of one length. */
export function closedAgain({ innerLeg, outerLeg }: Legs, upper: number, lower: number): Legs {
  const fold = foldBetween({ x: xAt(innerLeg, upper), y: upper }, { x: xAt(innerLeg, lower), y: lower });
  return closedLegs(fold, combine(outerLeg, 1, innerLeg, -1));
}
