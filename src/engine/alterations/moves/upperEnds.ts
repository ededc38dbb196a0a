// Ends of seams in neckline, shoulder and armhole after an alteration.

import type { Block } from '../../block/block';
import { partingEnds, type UpperEdges, type UpperEnd } from '../../block/shoulders/upperEdges';
import { type Heading, moveAlong } from '../../geometry/cubicLength';
import { heightAtLength, seamLength } from '../../geometry/seamLength';
import { type SmoothLine, slopeAt, xAt } from '../../geometry/smoothLine';
import type { Panel } from '../../panels/panel';
import { raisedHeight } from '../../panels/raise';
import type { PlannedLengths } from './lengths';

/**
 * The edges above of a block with their ends moved along their seams, and with a seam that was shortened.
 *
 * @param raised how far up an end is moved, mm by the wedge's id
 */
export function raiseEnds(
  block: Block,
  raised: ReadonlyMap<string, number>,
  lengths: PlannedLengths,
): UpperEdges | null {
  if (!block.upper) return null;
  const ends = block.upper.ends.map((end): UpperEnd => {
    const wedge = block.wedges.find(({ id }) => id === end.wedge);
    const raise = wedge && lengths.isAny ? lengths.raiseAt({ kind: 'wedge', block: block.name, wedge }) : [];
    const { x, y } = end.at.point;
    const to = raisedHeight(raise, y) - (raised.get(end.wedge) ?? 0);
    return to === y ? end : { ...end, at: { ...end.at, point: { x, y: to } } };
  });
  return { ...block.upper, ends };
}

/**
 * The ends in a neckline, set so that neck point and shoulder stay where they were drafted on the panel beyond them.
 *
 * @param drafted the block before it was altered
 * @param waist height that legs are measured from, mm
 */
export function neckKept(
  drafted: Block,
  upper: UpperEdges,
  panels: readonly Panel[],
  waist: number,
): UpperEdges {
  const ends = upper.ends.map((end, i): UpperEnd => {
    const before = drafted.upper?.ends[i];
    const wedge = drafted.wedges.find(({ id }) => id === end.wedge);
    const own = (number: number): Panel | undefined =>
      panels.find((panel) => panel.block === drafted.name && panel.number === number);
    const number = partingEnds(upper).indexOf(end) + 1;
    const [inner, outer] = [own(number)?.outer, own(number + 1)?.inner];
    if (end.isDart || end.edge !== 'neckline' || !before || !wedge || !inner || !outer) return end;
    const start = startBeyond(end, inner, outer, waist);
    const asDrafted = startBeyond(before, wedge.innerLeg, wedge.outerLeg, waist);
    if (start.point.x === asDrafted.point.x && start.point.y === asDrafted.point.y) return end;
    return { ...end, sewn: moveAlong(asDrafted, before.sewn)(start) };
  });
  return { ...upper, ends };
}

/** Where the panel beyond an end begins, and how its edge leaves: both legs are as long from the waist up. */
function startBeyond({ at }: UpperEnd, inner: SmoothLine, outer: SmoothLine, waist: number): Heading {
  const { y } = at.point;
  const longer = seamLength(inner, waist, y) - seamLength(outer, waist, y);
  const outerY = heightAtLength(outer, y, longer);
  const turn = Math.atan(slopeAt(inner, y)) - Math.atan(slopeAt(outer, outerY));
  return { point: { x: xAt(outer, outerY), y: outerY }, angle: at.angle + turn };
}
