// Where a new wedge has most room.

import { wedgesOf } from '../../../document';
import { type BlockName, type Draft, type Side, type Style, stationOf, xAt } from '../../../engine';

/**
 * The station in the middle of the widest panel of one half's block at the waist, as drafted, darts parting panels too. Where nothing
 * could be drafted, the middle of the widest stretch between the stations.
 */
export function widestGap(style: Style, side: Side, blockName: BlockName, { levels, blocks }: Draft): number {
  const waist = levels.find(({ name }) => name === 'waist');
  const block = blocks?.[blockName];
  if (!waist || !block) {
    const stations = wedgesOf(style, side)
      .filter((wedge) => wedge.block === blockName)
      .map(({ station }) => station);
    return widestMiddle(
      -1,
      1,
      stations.map((station) => ({ from: station, to: station })),
    );
  }
  const parts = block.wedges.map(({ innerLeg, outerLeg }) => ({
    from: xAt(innerLeg, waist.y),
    to: xAt(outerLeg, waist.y),
  }));
  const sideX = xAt(block.sideSeam, waist.y);
  return stationOf(widestMiddle(0, sideX, parts), block.bustLine, block.width.get('waist') ?? sideX);
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The middle of the widest of what the parts leave between `from` and `to`; of those alike the first. */
function widestMiddle(from: number, to: number, parts: readonly Stretch[]): number {
  const sorted = [...parts, { from: to, to }].sort((a, b) => a.from - b.from);
  let best = { width: 0, middle: from };
  let left = from;
  for (const part of sorted) {
    const width = part.from - left;
    if (width > best.width + 1e-9) best = { width, middle: left + width / 2 };
    left = part.to;
  }
  return best.middle;
}
