// The height of the level top edge, and the line it is measured from.

import type { Body } from '../../body/body';
import type { Style } from '../../style/style';
import { fitsBetween, overBustHeight } from './levels';

/** A level top edge at the armpit stands so far under it, mm. Our own bound, no source. */
const UNDER_ARMPIT_MM = 12;

/**
 * How far under its line a level top edge lies that the style asks for 0 above it, mm: 12 from an over-bust line at the measured
 * armpit, else 0.
 */
export const topUnderLine = (
  { underarmToWaist }: Pick<Body, 'underarmToWaist'>,
  { topFrom, overBustAbove }: Pick<Style, 'topFrom' | 'overBustAbove'>,
): number =>
  topFrom === 'overBust' && overBustAbove === undefined && underarmToWaist !== null ? UNDER_ARMPIT_MM : 0;

/** Height of the level top edge, mm below the shoulder level. */
export function topHeight(body: Body, style: Style): number {
  const lines = {
    overBust: overBustHeight(body, style),
    underBust: underBustLine(body),
    waist: body.neckToWaist,
  };
  return lines[style.topFrom] + topUnderLine(body, style) - style.topAbove;
}

type Lengths = Pick<Body, 'neckToBust' | 'neckToUnderBust' | 'neckToWaist'>;

/** Whether a draft has the under-bust level: it lies far enough from the bust and from the waist, and between them. */
export const hasUnderBustLine = ({ neckToBust, neckToUnderBust, neckToWaist }: Lengths): boolean =>
  fitsBetween(neckToUnderBust, neckToBust, neckToWaist);

/**
 * Half way from bust to waist, mm below the shoulder level: about where the under-bust lies on women of middling measurements
 * (343 mm between 273 and 406); our own rule, no source.
 */
export const halfWayLine = ({
  neckToBust,
  neckToWaist,
}: Pick<Lengths, 'neckToBust' | 'neckToWaist'>): number => (neckToBust + neckToWaist) / 2;

/**
 * The line that a top edge stands on which is measured from the under-bust, mm below the shoulder level: where the under-bust was
 * measured, or half way from bust to waist where a draft goes without that level.
 */
const underBustLine = (lengths: Lengths): number =>
  hasUnderBustLine(lengths) ? lengths.neckToUnderBust : halfWayLine(lengths);
