// Where the marks of seams and centres came to lie, against the levels of the body they belong to.

import type { Point } from '../../geometry/point';
import type { LevelName } from '../../terms/names';
import { zOf } from '../body/shape';
import { radiusAt } from '../body/surface';
import { COLUMN_STEP, COLUMNS } from '../body/tape';
import type { WornBody } from '../body/wornBody';
import type { PlacedMesh } from '../mesh/carriedOver';
import type { MeshLine } from '../mesh/garmentMesh';
import { type Part, partAt } from './regions';

/** A mark at a level: where it is, and how far it lies above (+) or below (−) that level of the body, mm. */
export interface MarkPlace {
  readonly level: LevelName;
  readonly part: Part;
  readonly rise: number;
}

/** x to the side, y forwards, z up, mm. */
type Place = readonly [x: number, y: number, z: number];

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
      const [x, forward, z] = placeOn(sewn, k, places);
      marks.push({ level: name, part: partAt(x, forward), rise: z - zOf(body.levels, name) });
    }
  }
  return marks;
}

/** Farther than this on paper from the bust point, a seam or dart is not the one that is drafted through it, mm. Our own bound. */
const PAST_BUST_POINT_MM = 20;

/**
 * Where the seam that is drafted through the bust point crosses the level of the bust, mm; null where none is, and where it ends
 * short of that level.
 *
 * @param drafted the bust point on paper, mm
 */
export function bustSeamAt({ mesh, places }: PlacedMesh, drafted: Point): Place | null {
  const { flat } = mesh;
  const away = ({ cut }: MeshLine): number =>
    Math.min(...cut.map((i) => Math.hypot(flat[2 * i]! - drafted.x, flat[2 * i + 1]! - drafted.y)));
  const [nearest] = mesh.lines
    .filter(({ kind, panel }) => kind === 'seam' && panel.piece.block === 'front')
    .map((line) => ({ line, far: away(line) }))
    .sort((a, b) => a.far - b.far);
  if (!nearest || nearest.far > PAST_BUST_POINT_MM) return null;
  const { cut, sewn } = nearest.line;
  const k = crossing(cut.map((i) => flat[2 * i + 1]! - drafted.y));
  return k && placeOn(sewn, k, places);
}

/** A place on a line of sewn vertices. */
function placeOn(sewn: readonly number[], { step, part }: Crossing, places: Float64Array): Place {
  const [p, q] = [3 * sewn[step]!, 3 * sewn[step + 1]!];
  const at = (j: number): number => places[p + j]! * (1 - part) + places[q + j]! * part;
  return [at(0), at(1), at(2)];
}

interface Crossing {
  readonly step: number;
  readonly part: number;
}

/** The first step in which heights change their sign, and how far along it. */
function crossing(heights: readonly number[]): Crossing | null {
  for (let i = 0; i + 1 < heights.length; i += 1) {
    const [a, b] = [heights[i]!, heights[i + 1]!];
    if (a * b <= 0 && a !== b) return { step: i, part: a / (a - b) };
  }
  return null;
}

/** The bust point on the body: as far to the side as measured, at the level of the bust. mm */
export function bustPoint(body: WornBody): Place {
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
