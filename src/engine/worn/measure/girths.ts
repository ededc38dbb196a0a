// The sewn garment measured round: along a level's line on the cloth, and by a tape at a height of the body.

import type { PlacedMesh } from '../mesh/carriedOver';
import type { GarmentMesh } from '../mesh/garmentMesh';

/**
 * What the cloth of one half measures along a height of paper as it is worn, stretched or not, mm.
 *
 * @param y on paper, mm below the shoulder level
 */
export function clothLength({ mesh, places }: PlacedMesh, y: number): number {
  const { triangles, flat, sewnAs } = mesh;
  let length = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const cuts: number[][] = [];
    for (let k = 0; k < 3; k += 1) {
      const [a, b] = [triangles[t + k]!, triangles[t + ((k + 1) % 3)]!];
      const [above, below] = [flat[2 * a + 1]! - y, flat[2 * b + 1]! - y];
      if (above < 0 === below < 0) continue;
      cuts.push(between(places, 3 * sewnAs[a]!, 3 * sewnAs[b]!, above / (above - below)));
    }
    if (cuts.length === 2) length += Math.hypot(...[0, 1, 2].map((j) => cuts[0]![j]! - cuts[1]![j]!));
  }
  return length;
}

/**
 * What a tape round garment and gap reads at a height of the body, mm, for a half and its mirror image; null where top edge or hem
 * cross that height, or no cloth lies there, so that the tape would run over the body.
 */
export function tapeRound({ mesh, places }: PlacedMesh, z: number): number | null {
  const { triangles, sewnAs, count } = mesh;
  const points: number[][] = [];
  // A side of one triangle alone is an edge of the cloth.
  const edges = new Set<number>();
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k += 1) {
      const [i, j] = [sewnAs[triangles[t + k]!]!, sewnAs[triangles[t + ((k + 1) % 3)]!]!];
      const [below, above] = [places[3 * i + 2]! - z, places[3 * j + 2]! - z];
      if (below < 0 === above < 0) continue;
      const side = sideOf(i, j, count);
      if (!edges.delete(side)) edges.add(side);
      const [x = 0, y = 0] = between(places, 3 * i, 3 * j, below / (below - above));
      points.push([x, y], [-x, y]);
    }
  if (edges.size !== CENTRES) return null;
  const centres = centreSides(mesh);
  return [...edges].every((side) => centres.has(side)) ? hullLength(points) : null;
}

/** Edges of the cloth of half a garment at a height between top edge and hem: at centre front and at centre back. */
const CENTRES = 2;

/** Sides of triangles that lie on a centre. */
const centreSides = ({ lines, count }: GarmentMesh): ReadonlySet<number> =>
  new Set(
    lines
      .filter(({ kind }) => kind === 'centre')
      .flatMap(({ sewn }) => sewn.slice(1).map((to, i) => sideOf(sewn[i]!, to, count))),
  );

/** One number for the side between two sewn vertices. */
const sideOf = (i: number, j: number, count: number): number => Math.min(i, j) * count + Math.max(i, j);

const between = (places: Float64Array, a: number, b: number, part: number): number[] =>
  [0, 1, 2].map((j) => places[a + j]! + part * (places[b + j]! - places[a + j]!));

/** Length of the convex hull by the monotone chain (A. M. Andrew, Information Processing Letters 9, 1979). */
function hullLength(points: readonly number[][]): number {
  const sorted = [...points].sort((p, q) => p[0]! - q[0]! || p[1]! - q[1]!);
  const chain = (list: readonly number[][]): number[][] => {
    const kept: number[][] = [];
    for (const point of list) {
      while (kept.length > 1) {
        const [a, b] = [kept[kept.length - 2]!, kept[kept.length - 1]!];
        if ((b[0]! - a[0]!) * (point[1]! - a[1]!) - (b[1]! - a[1]!) * (point[0]! - a[0]!) > 0) break;
        kept.pop();
      }
      kept.push(point);
    }
    return kept;
  };
  return [chain(sorted), chain([...sorted].reverse())]
    .flatMap((half) =>
      half.slice(1).map((point, i) => Math.hypot(point[0]! - half[i]![0]!, point[1]! - half[i]![1]!)),
    )
    .reduce((sum, step) => sum + step, 0);
}
