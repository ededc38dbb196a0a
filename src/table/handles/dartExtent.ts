// The extent of a wedge by its style. The draft may end it sooner, at a level where its intake is 0; the user can open it there.

import type { DraftedWedge, Level, Wedge } from '../../engine';

type Extent = DraftedWedge['extent'];

/** Heights of the points of a wedge by its style, mm; null where it reaches the edge. A wedge on the centre line has no points. */
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

/** Nearer to its point than this, a dart cannot be given intake. mm */
const AT_POINT_MM = 5;

/** Whether a wedge of an extent can have intake at height `y`, mm. */
export const crosses = ({ upper, lower }: Extent, y: number): boolean =>
  (upper === null || y >= upper + AT_POINT_MM) && (lower === null || y <= lower - AT_POINT_MM);
