// How many layers of cloth a triangle has: one, and a second where a facing lies behind it.

import { isInside } from '../../geometry/isInside';
import type { Point } from '../../geometry/point';

/** What lies behind a panel: its outline in the panel's coordinates, mm on paper. */
export interface Facing {
  /** Key of the panel. */
  readonly panel: string;
  readonly ring: readonly Point[];
}

/** A triangle is parted into the square of this many alike ones, each of which is behind the facing or not by its middle. */
const PARTS = 4;

/** Layers of a triangle with these corners, from 1 to 1 + the number of facings. */
export function layersAt(
  corners: readonly [Point, Point, Point],
  facings: readonly (readonly Point[])[],
): number {
  if (facings.length === 0) return 1;
  const [a, b, c] = corners;
  const at = (u: number, v: number): Point => ({
    x: a.x + u * (b.x - a.x) + v * (c.x - a.x),
    y: a.y + u * (b.y - a.y) + v * (c.y - a.y),
  });
  const middles: Point[] = [];
  for (let i = 0; i < PARTS; i += 1)
    for (let j = 0; i + j < PARTS; j += 1) {
      middles.push(at((i + 1 / 3) / PARTS, (j + 1 / 3) / PARTS));
      if (i + j < PARTS - 1) middles.push(at((i + 2 / 3) / PARTS, (j + 2 / 3) / PARTS));
    }
  const behind = facings.reduce(
    (sum, ring) => sum + middles.filter((middle) => isInside(ring, middle)).length,
    0,
  );
  return 1 + behind / middles.length;
}
