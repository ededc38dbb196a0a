// The shape of one mesh carried over to another of the same panels: each vertex where its place on paper was.

import type { GarmentMesh } from './garmentMesh';

/** A mesh with the place of each sewn vertex: x, y, z, mm. */
export interface PlacedMesh {
  readonly mesh: GarmentMesh;
  readonly places: Float64Array;
}

/** Places for the vertices of `to`, by linear interpolation in the triangles of `from`; beyond them, in the nearest triangle. */
export function carriedOver(from: PlacedMesh, to: GarmentMesh): Float64Array {
  const places = new Float64Array(3 * to.count);
  const shares = new Float64Array(to.count);
  const byPanel = to.panels.map(({ piece }) => {
    const p = from.mesh.panels.findIndex((panel) => panel.piece.id === piece.id);
    const own: number[] = [];
    for (let t = 0; t < from.mesh.panelOfTriangle.length; t += 1)
      if (from.mesh.panelOfTriangle[t]! === p) own.push(t);
    return own;
  });
  const weights = new Float64Array(3);
  for (let i = 0; i < to.sewnAs.length; i += 1) {
    const list = byPanel[to.panelOfVertex[i]!]!;
    const t = nearestTriangle(from.mesh, list, to.flat[2 * i]!, to.flat[2 * i + 1]!, weights);
    const v = to.sewnAs[i]!;
    for (let k = 0; k < 3; k += 1) {
      const q = 3 * from.mesh.sewnAs[from.mesh.triangles[3 * t + k]!]!;
      for (let j = 0; j < 3; j += 1) places[3 * v + j]! += weights[k]! * from.places[q + j]!;
    }
    shares[v]! += 1;
  }
  for (let v = 0; v < to.count; v += 1) for (let j = 0; j < 3; j += 1) places[3 * v + j]! /= shares[v]!;
  return places;
}

/** The triangle that holds a place on paper, or the nearest one, with the place's weights in it. */
function nearestTriangle(
  { flat, triangles }: GarmentMesh,
  list: readonly number[],
  x: number,
  y: number,
  weights: Float64Array,
): number {
  let best = Number.NEGATIVE_INFINITY;
  let found = list[0]!;
  for (const t of list) {
    const [a, b, c] = [2 * triangles[3 * t]!, 2 * triangles[3 * t + 1]!, 2 * triangles[3 * t + 2]!];
    const [bx, by] = [flat[b]! - flat[a]!, flat[b + 1]! - flat[a + 1]!];
    const [cx, cy] = [flat[c]! - flat[a]!, flat[c + 1]! - flat[a + 1]!];
    const [px, py] = [x - flat[a]!, y - flat[a + 1]!];
    const area = bx * cy - cx * by;
    const u = (px * cy - cx * py) / area;
    const v = (bx * py - px * by) / area;
    const inside = Math.min(u, v, 1 - u - v) * Math.sqrt(Math.abs(area));
    if (inside > best) {
      best = inside;
      found = t;
      weights[0] = 1 - u - v;
      weights[1] = u;
      weights[2] = v;
    }
    if (best >= -1e-9) break;
  }
  return found;
}
