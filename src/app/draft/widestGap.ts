// Where a new wedge has most room.

import type { Side, Style } from '../../engine';

/** The station in the middle of the widest stretch between two wedges of a block, or between one and an edge. */
export function widestGap(style: Style, side: Side): number {
  const stations = style.wedges.filter((wedge) => wedge.block === side).map((wedge) => wedge.station);
  const posts = [-1, ...stations, 1].sort((a, b) => a - b);
  let best = { width: 0, middle: 0 };
  for (let i = 1; i < posts.length; i += 1) {
    const [from, to] = [posts[i - 1] ?? -1, posts[i] ?? 1];
    if (to - from > best.width + 1e-9) best = { width: to - from, middle: (from + to) / 2 };
  }
  return best.middle;
}
