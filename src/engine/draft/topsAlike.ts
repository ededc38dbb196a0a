// The top edge of a garment whose halves differ, where one half has the under-bust line that it is measured from and the other has not.

import { halfWayLine, hasUnderBustLine } from '../block/lines/topHeight';
import { checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import type { Style } from '../style/style';
import { SIDES, type Side } from '../terms/names';

/**
 * The style for each half. Where one half alone goes without the under-bust level, the top edge of both is measured from half way
 * between bust and waist; on the half that has the level it is so many mm above the waist. Else both have the style as it is.
 */
export function topsAlike(
  style: Style,
  bodies: Readonly<Record<Side, Measurements>>,
): Readonly<Record<Side, Style>> {
  const alike = { left: style, right: style };
  if (style.topFrom !== 'underBust') return alike;
  const having = SIDES.flatMap((side) => {
    const { body } = checkBody(bodies[side]);
    return body && hasUnderBustLine(body) ? [{ side, body }] : [];
  });
  const [only] = having;
  if (!only || having.length > 1) return alike;
  const { side, body } = only;
  const above = body.neckToWaist - halfWayLine(body);
  return { ...alike, [side]: { ...style, topFrom: 'waist', topAbove: above + style.topAbove } };
}
