// The extent of a wedge by its style. The draft may end it sooner, at a level where its intake is 0; the user can open it there.

import type { DraftedWedge, Level, Wedge } from '../../engine';

type Extent = DraftedWedge['extent'];

/** Heights of the points of a wedge by its style, mm; null where it reaches the edge. */
export function askedExtent(
  wedge: Pick<Wedge, 'upper' | 'lower'> | undefined,
  levels: readonly Pick<Level, 'name' | 'y'>[],
): Extent {
  const height = (point: Wedge['upper']): number | null => {
    const level = levels.find(({ name }) => name === point?.from);
    return point && level ? level.y + point.below : null;
  };
  return { upper: height(wedge?.upper), lower: height(wedge?.lower) };
}
