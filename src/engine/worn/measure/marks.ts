// Where the marks of seams and centres came to lie, against the levels of the body they belong to.

import type { LevelName } from '../../terms/names';
import { zOf } from '../body/shape';
import { radiusAt } from '../body/surface';
import { COLUMN_STEP, COLUMNS } from '../body/tape';
import type { WornBody } from '../body/wornBody';
import type { PlacedMesh } from '../mesh/carriedOver';
import { type Part, partAt } from './regions';

/** A mark at a level: where it is, and how far it lies above (+) or below (−) that level of the body, mm. */
export interface MarkPlace {
  readonly level: LevelName;
  readonly part: Part;
  readonly rise: number;
  readonly at: readonly [x: number, y: number, z: number];
}

/** The levels at which a wearer sees it when a mark lies elsewhere. */
const SEEN: readonly LevelName[] = ['overBust', 'bust', 'waist', 'highHip', 'hip'];

/**
 * The marks of all seams and centres that cross a level of the draft.
 *
 * @param levels heights of the draft's levels on paper, mm below the shoulder level
 */
export function markPlaces(
  { mesh, places }: PlacedMesh,
  body: WornBody,
  levels: readonly { readonly name: LevelName; readonly y: number }[],
): MarkPlace[] {
  const marks: MarkPlace[] = [];
  for (const { name, y } of levels) {
    if (!SEEN.includes(name) || !body.levels.some((level) => level.name === name)) continue;
    for (const { kind, cut, sewn } of mesh.lines) {
      if (kind !== 'seam' && kind !== 'centre') continue;
      const k = crossing(cut.map((i) => mesh.flat[2 * i + 1]! - y));
      if (!k) continue;
      const [p, q] = [3 * sewn[k.step]!, 3 * sewn[k.step + 1]!];
      const at = [0, 1, 2].map((j) => places[p + j]! * (1 - k.part) + places[q + j]! * k.part);
      const [x = 0, forward = 0, z = 0] = at;
      marks.push({
        level: name,
        part: partAt(x, forward),
        rise: z - zOf(body.levels, name),
        at: [x, forward, z],
      });
    }
  }
  return marks;
}

/** The first step in which heights change their sign, and how far along it. */
function crossing(heights: readonly number[]): { step: number; part: number } | null {
  for (let i = 0; i + 1 < heights.length; i += 1) {
    const [a, b] = [heights[i]!, heights[i + 1]!];
    if (a * b <= 0 && a !== b) return { step: i, part: a / (a - b) };
  }
  return null;
}

/** The bust point on the body: as far to the side as measured, at the level of the bust. mm */
export function bustPoint(body: WornBody): readonly [x: number, y: number, z: number] {
  const z = zOf(body.levels, 'bust');
  let [best, found] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i < COLUMNS / 2; i += 1) {
    const t = i * COLUMN_STEP;
    const miss = Math.abs(radiusAt(body.surface, t, z) * Math.sin(t) - body.bustPointX);
    if (miss < best) [best, found] = [miss, t];
  }
  const r = radiusAt(body.surface, found, z);
  return [r * Math.sin(found), r * Math.cos(found), z];
}
