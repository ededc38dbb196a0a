// Bending: across every edge between two triangles, seams included, and across the plane of symmetry.

import type { GarmentMesh } from '../mesh/garmentMesh';
import type { Membrane } from './membrane';
import type { StencilList } from './stencils';

/**
 * Adds the hinges of a mesh (isometric quadratic bending: M. Bergou, M. Wardetzky, D. Harmon, D. Zorin, E. Grinspun, "A quadratic
 * bending model for inextensible surfaces", Symposium on Geometry Processing 2006). Across a seam the angles are those of each
 * panel's own flat. Layers slide on one another, so each bends for itself. A closed centre is a hinge to the mirror image: without it the plane of symmetry would be a free crease.
 *
 * @param mirrored whether a sewn vertex lies on the plane of symmetry
 */
export function addHinges(
  list: StencilList,
  mesh: GarmentMesh,
  { vertices, areas, cloth }: Membrane,
  mirrored: Uint8Array,
): void {
  const { flat, triangles, layers, count } = mesh;
  const half = new Map<number, number>();
  const cotangent = (at: number, b: number, c: number): number => {
    const [x1, y1] = [flat[2 * b]! - flat[2 * at]!, flat[2 * b + 1]! - flat[2 * at + 1]!];
    const [x2, y2] = [flat[2 * c]! - flat[2 * at]!, flat[2 * c + 1]! - flat[2 * at + 1]!];
    return (x1 * x2 + y1 * y2) / Math.abs(x1 * y2 - x2 * y1);
  };
  /** Corners of a triangle's edge `e` in the order of `low`, the opposite one last, with both cotangents at the edge's ends. */
  const cornersOf = (e: number, low: number) => {
    const t = e - (e % 3);
    const k = e % 3;
    const turned = vertices[e]! !== low;
    const a = triangles[t + (turned ? (k + 1) % 3 : k)]!;
    const b = triangles[t + (turned ? k : (k + 1) % 3)]!;
    const o = triangles[t + ((k + 2) % 3)]!;
    return { opposite: vertices[t + ((k + 2) % 3)]!, atLow: cotangent(a, b, o), atHigh: cotangent(b, a, o) };
  };
  for (let e = 0; e < vertices.length; e += 1) {
    const t = Math.floor(e / 3);
    const [p, q] = [vertices[e]!, vertices[3 * t + ((e + 1) % 3)]!];
    const [low, high] = p < q ? [p, q] : [q, p];
    const key = low * count + high;
    const f = half.get(key);
    if (f === undefined) {
      half.set(key, e);
      continue;
    }
    half.delete(key);
    const [one, two] = [cornersOf(f, low), cornersOf(e, low)];
    if (one.opposite === two.opposite) continue;
    list.vertices.push(low, high, one.opposite, two.opposite);
    list.weights.push(
      one.atHigh + two.atHigh,
      one.atLow + two.atLow,
      -one.atLow - one.atHigh,
      -two.atLow - two.atHigh,
    );
    const g = Math.floor(f / 3);
    list.stiffness.push((1.5 * cloth.bend * (layers[g]! + layers[t]!)) / (areas[g]! + areas[t]!));
    list.upright.push(0);
  }
  for (const [key, e] of half) {
    const [low, high] = [Math.floor(key / count), key % count];
    if (mirrored[low]! === 0 || mirrored[high]! === 0) continue;
    const { opposite, atLow, atHigh } = cornersOf(e, low);
    // The mirror image's corner has the same weight; half of the hinge's energy belongs to this half.
    list.vertices.push(low, high, opposite, -1);
    list.weights.push(2 * atHigh, 2 * atLow, -2 * (atLow + atHigh), 0);
    const t = Math.floor(e / 3);
    list.stiffness.push((3 * cloth.bend * layers[t]!) / (4 * areas[t]!));
    list.upright.push(1);
  }
}
