// The armhole of a shoulder band: one hollow from the shoulder's tip to the corner under the arm.

import { armholeAbove } from '../block/shoulders/shoulderFrame';
import type { Cubic } from '../geometry/cubic';
import type { Heading } from '../geometry/cubicLength';
import type { Point } from '../geometry/point';

/**
 * It lies farthest in at half its height, or higher where the corner is far out: a line that comes down upright and ends at half a
 * right angle stays hollow only where it has more height below that place than width beside it.
 */
const HEIGHT_OF_WIDTH = 1.6;
/** The part of its height that lies below that place, at the least and at the most. */
const BELOW = { least: 1 / 2, most: 2 / 3 } as const;

/** Above it the armhole is at least so many times as high as it goes in from the tip, unless that place would lie below the half. */
const HEIGHT_OF_IN = 3;

/** Handles below it: of the height there from its upper end, of the width there from the corner. */
const HANDLES = { upper: 0.4, lower: 0.55 } as const;

/**
 * The armhole from the tip, which it leaves square to the shoulder, upright where it lies farthest in, down to the underarm. Level
 * with the band's lower edge it would end in a sliver that cannot be sewn; it comes down at half a right angle.
 *
 * @param inward how far out it lies at the place where it lies farthest in: x, mm
 */
export function bandArmhole(tip: Heading, inward: number, underarm: Point): [Cubic, Cubic] {
  const height = underarm.y - tip.point.y;
  const across = underarm.x - inward;
  const most = Math.min(BELOW.most * height, height - HEIGHT_OF_IN * (tip.point.x - inward));
  const below = Math.max(BELOW.least * height, Math.min(HEIGHT_OF_WIDTH * across, most));
  const middle = { x: inward, y: underarm.y - below };
  const corner = HANDLES.lower * across;
  return [
    armholeAbove(tip, middle),
    {
      start: middle,
      startHandle: { x: inward, y: middle.y + HANDLES.upper * below },
      endHandle: { x: underarm.x - corner, y: underarm.y - corner },
      end: underarm,
    },
  ];
}
