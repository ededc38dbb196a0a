// Stencils: energies ½·s·|Σ w·x|², the square of a weighted sum of places, for the bending of cloth and bones. Their second
// derivative is constant.

import { type BlockPattern, eitherWay } from './pattern';

/** Stencils being collected: up to four vertices each, −1 for none. */
export interface StencilList {
  readonly vertices: number[];
  readonly weights: number[];
  readonly stiffness: number[];
  /** 1 where x does not count: it lies in the plane of symmetry. */
  readonly upright: number[];
}

export interface Stencils {
  readonly vertices: Int32Array;
  readonly weights: Float64Array;
  readonly stiffness: Float64Array;
  readonly upright: Uint8Array;
}

/** A list without stencils. */
export const emptyStencils = (): StencilList => ({ vertices: [], weights: [], stiffness: [], upright: [] });

/** The stencils of a list in typed arrays. */
export const packed = ({ vertices, weights, stiffness, upright }: StencilList): Stencils => ({
  vertices: Int32Array.from(vertices),
  weights: Float64Array.from(weights),
  stiffness: Float64Array.from(stiffness),
  upright: Uint8Array.from(upright),
});

/**
 * The energy, N·mm.
 *
 * @param X x, y and z of each sewn vertex, mm
 * @param G takes the gradient on top of what it has, N
 */
export function stencilEnergy(
  { vertices, weights, stiffness, upright }: Stencils,
  X: Float64Array,
  G: Float64Array,
): number {
  let energy = 0;
  for (let k = 0; k < stiffness.length; k += 1) {
    const i0 = 3 * vertices[4 * k]!;
    const i1 = 3 * vertices[4 * k + 1]!;
    const i2 = 3 * vertices[4 * k + 2]!;
    const i3 = 3 * vertices[4 * k + 3]!;
    const w0 = weights[4 * k]!;
    const w1 = weights[4 * k + 1]!;
    const w2 = weights[4 * k + 2]!;
    const w3 = weights[4 * k + 3]!;
    for (let j = upright[k]!; j < 3; j += 1) {
      let sum = w0 * X[i0 + j]! + w1 * X[i1 + j]! + w2 * X[i2 + j]!;
      if (i3 >= 0) sum += w3 * X[i3 + j]!;
      const force = stiffness[k]! * sum;
      energy += 0.5 * force * sum;
      G[i0 + j]! += w0 * force;
      G[i1 + j]! += w1 * force;
      G[i2 + j]! += w2 * force;
      if (i3 >= 0) G[i3 + j]! += w3 * force;
    }
  }
  return energy;
}

/** Adds the second derivatives to `H`, nine numbers a block. */
export function addStencilCurvature(
  { vertices, weights, stiffness, upright }: Stencils,
  pattern: BlockPattern,
  H: Float64Array,
): void {
  for (let k = 0; k < stiffness.length; k += 1)
    for (let a = 0; a < 4; a += 1)
      for (let b = a; b < 4; b += 1) {
        const [i, j] = [vertices[4 * k + a]!, vertices[4 * k + b]!];
        if (i < 0 || j < 0) continue;
        const twice = a !== b && i === j ? 2 : 1;
        const h = 9 * eitherWay(pattern.slotOf(i, j));
        const value = twice * stiffness[k]! * weights[4 * k + a]! * weights[4 * k + b]!;
        if (upright[k]! === 0) H[h]! += value;
        H[h + 4]! += value;
        H[h + 8]! += value;
      }
}
