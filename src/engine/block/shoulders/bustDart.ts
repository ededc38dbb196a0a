// How wide the front's bust dart opens: as the front is longer than the back, and as the girth above the bust asks.

import type { Body } from '../../body/body';
import type { Style } from '../../style/style';
import type { Wedge } from '../../style/wedgeFields';
import { isDart } from '../../style/wedgeKind';
import { inches } from '../../terms/units';
import { dartAngle } from '../lines/closedDart';
import { halfGirth, type Level } from '../lines/levels';
import { weightAt } from '../lines/station';

/** Spans of what the front is longer than the back that a bust dart is made for, mm. */
const [LEAST_LONGER_MM, MOST_LONGER_MM] = [12, 110];

/**
 * The angle of the bust dart, rad. The front is longer than the back from its own neck point by w; laid in the side seam at the
 * bust line, L from the bust point, that is a dart of 2·asin(w/2L). Turned about the bust point it keeps its angle. It is at
 * least half that of the cone by which the front narrows above the bust, within what the most w gives.
 */
export function bustDartAngle(longerMm: number, sideMm: number, coneRad: number): number {
  const ofLength = (width: number): number => dartAngle(width, Math.max(sideMm, width));
  const byLength = ofLength(Math.min(MOST_LONGER_MM, Math.max(LEAST_LONGER_MM, longerMm)));
  return Math.max(byLength, Math.min(ofLength(MOST_LONGER_MM), coneRad / 2));
}

/** A cone is not read over less than this, our own bound, no source: a tape lies no flatter. mm */
const LEAST_CONE_MM = inches(2);

/**
 * The angle between the straight legs of a front wedge that takes from the bust point up to the over-bust line all that the girths
 * ask of it there, rad; 0 where there is no over-bust line. A wedge sized by hand asks for what it would have been asked that takes as
 * much once it is eased there.
 *
 * @param straightAt what it would take at a height on the straight line from the bust to its end above, mm
 */
export function coneAngle(
  wedge: Wedge,
  style: Style,
  body: Body,
  levels: readonly Level[],
  straightAt: (y: number) => number,
): number {
  const [above, bust] = [
    levels.find(({ name }) => name === 'overBust'),
    levels.find(({ name }) => name === 'bust'),
  ];
  if (!above || !bust) return 0;
  if (wedge.sizing === 'manual')
    return isDart(wedge)
      ? 0
      : coneOver(askedBefore(wedge.intake.overBust ?? 0, straightAt(above.y)), above, bust);
  const upward = style.wedges.filter(({ block, upper }) => block === 'front' && !upper);
  const byHand = upward
    .filter(({ sizing }) => sizing === 'manual')
    .reduce((sum, { intake }) => sum + (intake.overBust ?? 0), 0);
  const weights = upward
    .filter(({ sizing }) => sizing === 'balanced')
    .reduce((sum, each) => sum + weightAt('overBust', each), 0);
  const side = (style.balance.sideShare * (halfGirth(bust) - halfGirth(above))) / 2;
  const asked = frontAtBust(wedge, style, body, levels, bust) - above.net.front - side - byHand;
  const own = weights > 0 ? (asked * weightAt('overBust', wedge)) / weights : 0;
  return coneOver(own, above, bust);
}

const coneOver = (takesMm: number, above: Level, bust: Level): number =>
  2 * Math.atan(Math.max(0, takesMm) / (2 * Math.max(LEAST_CONE_MM, bust.y - above.y)));

/** A wedge leaves its straight way above the bust by this part of what girths ask for beyond it; two legs and the side share. */
const EASED_PART = 2 / 3;

/** What a wedge takes above the bust that is asked for `askedMm` there and takes `straightMm` on its straight way, mm. */
export const easedTowards = (straightMm: number, askedMm: number): number =>
  straightMm + EASED_PART * (askedMm - straightMm);

/** What was asked of a wedge that takes `takesMm` above the bust after it was eased, mm. */
const askedBefore = (takesMm: number, straightMm: number): number =>
  straightMm + (takesMm - straightMm) / EASED_PART;

/**
 * The front's width at the bust, mm. A front without a seam up from the bust is cut no wider there than usual, yet its dart is
 * for the whole of the bust: what the back leaves, where its half lies on the straight line from over-bust to under-bust.
 */
function frontAtBust(
  wedge: Wedge,
  style: Style,
  { frontArc }: Body,
  levels: readonly Level[],
  bust: Level,
): number {
  const [above, below] = [
    levels.find(({ name }) => name === 'overBust'),
    levels.find(({ name }) => name === 'underBust'),
  ];
  const isSet = style.frontShare.bust !== undefined || frontArc.bust !== undefined;
  if (!isDart(wedge) || isSet || !above || !below) return bust.net.front;
  const part = (bust.y - above.y) / (below.y - above.y);
  const back = above.net.back + part * (below.net.back - above.net.back);
  return Math.max(bust.net.front, bust.net.front + bust.net.back - back);
}
