// The lines of a block from top edge to hem: a wedge's axis, what it takes, the side line.

import { type FairKnot, fairLine } from '../../geometry/fairLine';
import type { SmoothLine } from '../../geometry/smoothLine';

/** How a line opens from the bust line upwards, where it opens like a cone. */
export interface Cone {
  /** Height of the bust line, mm. */
  readonly bust: number;
  /** It is rounded off within so much of the bust line, mm. */
  readonly round: number;
}

/** A line that passes beside the bust point is rounded off within so much of the bust line, mm. */
export const PAST_BUST_ROUND_MM = 25;

/** A cone under a level that lies near the bust line is rounded off over this part of its height at the most. */
const MOST_ROUNDED = 0.45;

/** Past the topmost level a cone goes straight on so far, and within twice as far again it turns upright. mm */
const STRAIGHT_PAST_MM = 12.5;

/**
 * The fair line through the values at the levels, mm. Above the bust line it is straight or nearly so, on past the topmost level,
 * where it would else arrive upright. Where it has an extremum at the bust line and one level above it, the line
 * is a cone there and not an S: with v the change of the value up to that level, h its height above the bust line and r the
 * rounding, its slope is v/(h − r/2); a parabola within r of the bust line, then straight through the level.
 *
 * @param knots at strictly increasing heights
 */
export function lineDown(knots: readonly FairKnot[], cone: Cone | null): SmoothLine {
  const [above, bust, below] = knots;
  if (!cone || !above || !bust || !below || bust.y !== cone.bust) return fairLine(knots);
  const change = above.value - bust.value;
  const height = bust.y - above.y;
  if (change * (below.value - bust.value) < 0)
    return fairLine([
      ...pastTop(above, change / height),
      { y: above.y, value: above.value, slope: -change / height },
      ...knots.slice(1),
    ]);
  const round = Math.min(cone.round, MOST_ROUNDED * height);
  const slope = change / (height - round / 2);
  return fairLine([
    ...pastTop(above, slope),
    { y: above.y, value: above.value, slope: -slope },
    { y: bust.y - round, value: bust.value + (slope * round) / 2, slope: -slope },
    { y: bust.y, value: bust.value, slope: 0 },
    ...knots.slice(2),
  ]);
}

/** The way on past the topmost level, with `slope` per mm upwards. */
const pastTop = ({ y, value }: FairKnot, slope: number): FairKnot[] => [
  { y: y - 3 * STRAIGHT_PAST_MM, value: value + 2 * STRAIGHT_PAST_MM * slope, slope: 0 },
  { y: y - STRAIGHT_PAST_MM, value: value + STRAIGHT_PAST_MM * slope, slope: -slope },
];
