// Where a wedge is asked to end. The draft may shut it sooner, at a level where it takes nothing yet; a hand can open it there.

import type { DraftedWedge, Level, Wedge } from '../../engine';

type Extent = DraftedWedge['extent'];

/** Heights of the points a wedge has in its style, mm; null where it reaches the edge. On the centre line it has none. */
export function askedExtent(
  wedge: Pick<Wedge, 'station' | 'upper' | 'lower'> | undefined,
  levels: readonly Pick<Level, 'name' | 'y'>[],
): Extent {
  const height = (point: Wedge['upper']): number | null => {
    const level = levels.find(({ name }) => name === point?.from);
    return point && level ? level.y + point.below : null;
  };
  if (!wedge || wedge.station <= -1) return { upper: null, lower: null };
  return { upper: height(wedge.upper), lower: height(wedge.lower) };
}

/** Nearer to its point than this a dart takes nothing. mm */
const AT_POINT_MM = 5;

/** Whether a wedge can take cloth out at a height, mm. */
export const crosses = ({ upper, lower }: Extent, y: number): boolean =>
  (upper === null || y >= upper + AT_POINT_MM) && (lower === null || y <= lower - AT_POINT_MM);
