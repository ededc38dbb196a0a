// The cloth's stretch: constant strain in each triangle, orthotropic along warp and weft.

import type { GarmentMesh } from '../mesh/garmentMesh';
import type { BlockPattern } from './pattern';
import type { ClothStiffness } from './stiffness';

/**
 * With u and v the images of the unit vectors across and along the grain, the energy of a triangle with A of cloth is
 * A/2·[weft·(|u| − 1)² + warp·(|v| − 1)² + shear·(u·v)²], weft and warp being less where the cloth is pressed together.
 */
export interface Membrane {
  /** Three sewn vertices for each triangle. */
  readonly vertices: Int32Array;
  /** Inverse of each triangle's edges across and along the grain, row by row, 1/mm. */
  readonly inverse: Float64Array;
  /** Area of each triangle and of each vertex's share, mm². */
  readonly areas: Float64Array;
  readonly vertexAreas: Float64Array;
  /** The same of all layers of cloth together, mm²: more than the area where a facing lies behind. */
  readonly amounts: Float64Array;
  readonly vertexAmounts: Float64Array;
  readonly cloth: ClothStiffness;
}

/** The membrane of a mesh's triangles, at rest where each is as it was cut. */
export function makeMembrane(mesh: GarmentMesh, cloth: ClothStiffness): Membrane {
  const count = mesh.panelOfTriangle.length;
  const vertices = new Int32Array(3 * count);
  const inverse = new Float64Array(4 * count);
  const areas = new Float64Array(count);
  const vertexAreas = new Float64Array(mesh.count);
  const amounts = new Float64Array(count);
  const vertexAmounts = new Float64Array(mesh.count);
  for (let t = 0; t < count; t += 1) {
    const { grain } = mesh.panels[mesh.panelOfTriangle[t]!]!;
    const [cos, sin] = [Math.cos(grain), Math.sin(grain)];
    const [a, b, c] = [mesh.triangles[3 * t]!, mesh.triangles[3 * t + 1]!, mesh.triangles[3 * t + 2]!];
    const edge = (i: number): [number, number] => {
      const x = mesh.flat[2 * i]! - mesh.flat[2 * a]!;
      const y = mesh.flat[2 * i + 1]! - mesh.flat[2 * a + 1]!;
      return [x * cos - y * sin, x * sin + y * cos];
    };
    const [m00, m10] = edge(b);
    const [m01, m11] = edge(c);
    const det = m00 * m11 - m01 * m10;
    inverse.set([m11 / det, -m01 / det, -m10 / det, m00 / det], 4 * t);
    areas[t] = Math.abs(det) / 2;
    amounts[t] = mesh.layers[t]! * areas[t]!;
    for (const [k, i] of [a, b, c].entries()) {
      const v = mesh.sewnAs[i]!;
      vertices[3 * t + k] = v;
      vertexAreas[v]! += areas[t]! / 3;
      vertexAmounts[v]! += amounts[t]! / 3;
    }
  }
  return { vertices, inverse, areas, vertexAreas, amounts, vertexAmounts, cloth };
}

/**
 * The energy, N·mm.
 *
 * @param X x, y and z of each sewn vertex, mm
 * @param G takes the gradient on top of what it has, N
 */
export function membraneEnergy(membrane: Membrane, X: Float64Array, G: Float64Array): number {
  const { vertices, inverse, amounts, cloth } = membrane;
  let energy = 0;
  for (let t = 0; t < amounts.length; t += 1) {
    const a = 3 * vertices[3 * t]!;
    const b = 3 * vertices[3 * t + 1]!;
    const c = 3 * vertices[3 * t + 2]!;
    const d0 = inverse[4 * t]!;
    const d1 = inverse[4 * t + 1]!;
    const d2 = inverse[4 * t + 2]!;
    const d3 = inverse[4 * t + 3]!;
    const e1x = X[b]! - X[a]!;
    const e1y = X[b + 1]! - X[a + 1]!;
    const e1z = X[b + 2]! - X[a + 2]!;
    const e2x = X[c]! - X[a]!;
    const e2y = X[c + 1]! - X[a + 1]!;
    const e2z = X[c + 2]! - X[a + 2]!;
    const ux = e1x * d0 + e2x * d2;
    const uy = e1y * d0 + e2y * d2;
    const uz = e1z * d0 + e2z * d2;
    const vx = e1x * d1 + e2x * d3;
    const vy = e1y * d1 + e2y * d3;
    const vz = e1z * d1 + e2z * d3;
    const lu = Math.sqrt(ux * ux + uy * uy + uz * uz);
    const lv = Math.sqrt(vx * vx + vy * vy + vz * vz);
    const eu = lu - 1;
    const ev = lv - 1;
    const es = ux * vx + uy * vy + uz * vz;
    const Eu = cloth.weft * (eu < 0 ? cloth.squeezed : 1) * amounts[t]!;
    const Ev = cloth.warp * (ev < 0 ? cloth.squeezed : 1) * amounts[t]!;
    const Es = cloth.shear * amounts[t]!;
    energy += 0.5 * (Eu * eu * eu + Ev * ev * ev + Es * es * es);
    const su = (Eu * eu) / lu;
    const sv = (Ev * ev) / lv;
    const ss = Es * es;
    const gux = su * ux + ss * vx;
    const guy = su * uy + ss * vy;
    const guz = su * uz + ss * vz;
    const gvx = sv * vx + ss * ux;
    const gvy = sv * vy + ss * uy;
    const gvz = sv * vz + ss * uz;
    const bx = gux * d0 + gvx * d1;
    const by = guy * d0 + gvy * d1;
    const bz = guz * d0 + gvz * d1;
    const cx = gux * d2 + gvx * d3;
    const cy = guy * d2 + gvy * d3;
    const cz = guz * d2 + gvz * d3;
    G[b]! += bx;
    G[b + 1]! += by;
    G[b + 2]! += bz;
    G[c]! += cx;
    G[c + 1]! += cy;
    G[c + 2]! += cz;
    G[a]! -= bx + cx;
    G[a + 1]! -= by + cy;
    G[a + 2]! -= bz + cz;
  }
  return energy;
}

/** Blocks of each triangle's six pairs of corners. */
export function membraneSlots({ vertices }: Membrane, pattern: BlockPattern): Int32Array {
  const slots = new Int32Array(2 * vertices.length);
  let s = 0;
  for (let t = 0; t < vertices.length; t += 3)
    for (let i = 0; i < 3; i += 1)
      for (let j = i; j < 3; j += 1, s += 1) slots[s] = pattern.slotOf(vertices[t + i]!, vertices[t + j]!);
  return slots;
}
