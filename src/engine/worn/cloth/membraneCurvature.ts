// The second derivative of the cloth's stretch, added to the blocks of a matrix.

import type { Membrane } from './membrane';

const uu = new Float64Array(9);
const uv = new Float64Array(9);
const vv = new Float64Array(9);
const c0 = new Float64Array(3);
const c1 = new Float64Array(3);

/**
 * Adds the second derivatives to `H`, nine numbers a block.
 *
 * @param slots of each triangle's pairs of corners
 * @param isTrue whether they are the true ones; else each term is made positive: the part of a pressed thread that turns is
 *   left out, and that of the shear's own force
 */
export function addMembraneCurvature(
  { vertices, inverse, amounts, cloth }: Membrane,
  slots: Int32Array,
  X: Float64Array,
  isTrue: boolean,
  H: Float64Array,
): void {
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
    const Eu = cloth.weft * (lu < 1 ? cloth.squeezed : 1) * amounts[t]!;
    const Ev = cloth.warp * (lv < 1 ? cloth.squeezed : 1) * amounts[t]!;
    const Es = cloth.shear * amounts[t]!;
    const gu = isTrue ? (lu - 1) / lu : Math.max(0, (lu - 1) / lu);
    const gv = isTrue ? (lv - 1) / lv : Math.max(0, (lv - 1) / lv);
    const force = isTrue ? Es * (ux * vx + uy * vy + uz * vz) : 0;
    own(uu, (Eu * (1 - gu)) / (lu * lu), Eu * gu, ux, uy, uz, Es, vx, vy, vz);
    own(vv, (Ev * (1 - gv)) / (lv * lv), Ev * gv, vx, vy, vz, Es, ux, uy, uz);
    uv[0] = Es * vx * ux + force;
    uv[1] = Es * vx * uy;
    uv[2] = Es * vx * uz;
    uv[3] = Es * vy * ux;
    uv[4] = Es * vy * uy + force;
    uv[5] = Es * vy * uz;
    uv[6] = Es * vz * ux;
    uv[7] = Es * vz * uy;
    uv[8] = Es * vz * uz + force;
    c0[0] = -d0 - d2;
    c0[1] = d0;
    c0[2] = d2;
    c1[0] = -d1 - d3;
    c1[1] = d1;
    c1[2] = d3;
    let s = 6 * t;
    for (let i = 0; i < 3; i += 1) for (let j = i; j < 3; j += 1, s += 1) addPair(slots[s]!, i, j, H);
  }
}

/** s·u⊗u + turn·1 + Es·v⊗v: the block of a thread with itself. */
function own(
  block: Float64Array,
  s: number,
  turn: number,
  ux: number,
  uy: number,
  uz: number,
  Es: number,
  vx: number,
  vy: number,
  vz: number,
): void {
  block[0] = s * ux * ux + turn + Es * vx * vx;
  block[4] = s * uy * uy + turn + Es * vy * vy;
  block[8] = s * uz * uz + turn + Es * vz * vz;
  const xy = s * ux * uy + Es * vx * vy;
  const xz = s * ux * uz + Es * vx * vz;
  const yz = s * uy * uz + Es * vy * vz;
  block[1] = xy;
  block[3] = xy;
  block[2] = xz;
  block[6] = xz;
  block[5] = yz;
  block[7] = yz;
}

/** Adds the block of two corners of the triangle at hand. */
function addPair(slot: number, i: number, j: number, H: Float64Array): void {
  const k1 = c0[i]! * c0[j]!;
  const k2 = c0[i]! * c1[j]!;
  const k3 = c1[i]! * c0[j]!;
  const k4 = c1[i]! * c1[j]!;
  if (slot >= 0) {
    const p = 9 * slot;
    for (let r = 0; r < 3; r += 1)
      for (let s = 0; s < 3; s += 1)
        H[p + 3 * r + s]! +=
          k1 * uu[3 * r + s]! + k2 * uv[3 * r + s]! + k3 * uv[3 * s + r]! + k4 * vv[3 * r + s]!;
  } else {
    const p = 9 * ~slot;
    for (let r = 0; r < 3; r += 1)
      for (let s = 0; s < 3; s += 1)
        H[p + 3 * s + r]! +=
          k1 * uu[3 * r + s]! + k2 * uv[3 * r + s]! + k3 * uv[3 * s + r]! + k4 * vv[3 * r + s]!;
  }
}
