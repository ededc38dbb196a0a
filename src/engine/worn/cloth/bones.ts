// Bones in their channels along seams and centre edges: stiff against bending, and hardly longer when pulled.

import { distance } from '../../geometry/point';
import type { GarmentMesh, MeshLine } from '../mesh/garmentMesh';
import { type BlockPattern, eitherWay } from './pattern';
import type { StencilList } from './stencils';
import { BONE, LEAST_BONE_MM } from './stiffness';

/** Springs between neighbouring vertices of channels: two vertices each, their length when cut, mm, and stiffness, N/mm. */
export interface Channels {
  readonly ends: Int32Array;
  readonly lengths: Float64Array;
  readonly stiffness: Float64Array;
}

/** Length on paper of each step of a line, mm: the mean of both mates where they differ is within truing's tolerance of one. */
function stepsOf({ cut }: MeshLine, { flat }: GarmentMesh): number[] {
  const pointOf = (i: number) => ({ x: flat[2 * i]!, y: flat[2 * i + 1]! });
  return cut.slice(1).map((i, k) => distance(pointOf(cut[k]!), pointOf(i)));
}

/** Whether a line carries a bone: a seam between panels that is long enough, or a centre that lies on no fold. */
export function isBoned(line: MeshLine, mesh: GarmentMesh): boolean {
  if (line.kind === 'centre') return !line.onFold;
  return line.kind === 'seam' && stepsOf(line, mesh).reduce((sum, step) => sum + step, 0) > LEAST_BONE_MM;
}

/**
 * Adds the bending of the bones, and returns the springs along their channels.
 *
 * @param busk whether a busk closes centre front
 */
export function addBones(list: StencilList, mesh: GarmentMesh, busk: boolean): Channels {
  const ends: number[] = [];
  const lengths: number[] = [];
  const stiffness: number[] = [];
  for (const line of mesh.lines) {
    if (!isBoned(line, mesh)) continue;
    const steps = stepsOf(line, mesh);
    const isBusk = busk && line.kind === 'centre' && line.panel.piece.block === 'front';
    for (const [k, step] of steps.entries()) {
      if (line.sewn[k]! === line.sewn[k + 1]!) continue;
      ends.push(line.sewn[k]!, line.sewn[k + 1]!);
      lengths.push(step);
      stiffness.push(BONE.stretch / step);
    }
    for (let k = 1; k < steps.length; k += 1) {
      const [a, b] = [steps[k - 1]!, steps[k]!];
      list.vertices.push(line.sewn[k - 1]!, line.sewn[k]!, line.sewn[k + 1]!, -1);
      list.weights.push(1 / a, -1 / a - 1 / b, 1 / b, 0);
      list.stiffness.push((2 * (isBusk ? BONE.busk : BONE.bend)) / (a + b));
      list.upright.push(0);
    }
  }
  return {
    ends: Int32Array.from(ends),
    lengths: Float64Array.from(lengths),
    stiffness: Float64Array.from(stiffness),
  };
}

/**
 * The energy of the channels, N·mm.
 *
 * @param X x, y and z of each sewn vertex, mm
 * @param G takes the gradient on top of what it has, N
 */
export function channelEnergy(
  { ends, lengths, stiffness }: Channels,
  X: Float64Array,
  G: Float64Array,
): number {
  let energy = 0;
  for (let k = 0; k < lengths.length; k += 1) {
    const [a, b] = [3 * ends[2 * k]!, 3 * ends[2 * k + 1]!];
    const [x, y, z] = [X[b]! - X[a]!, X[b + 1]! - X[a + 1]!, X[b + 2]! - X[a + 2]!];
    const length = Math.sqrt(x * x + y * y + z * z);
    const longer = length - lengths[k]!;
    const force = (stiffness[k]! * longer) / length;
    energy += 0.5 * stiffness[k]! * longer * longer;
    G[a]! -= force * x;
    G[a + 1]! -= force * y;
    G[a + 2]! -= force * z;
    G[b]! += force * x;
    G[b + 1]! += force * y;
    G[b + 2]! += force * z;
  }
  return energy;
}

/** Indices of three blocks for each spring: those of its ends with themselves, and that of the two. */
export function channelSlots({ ends, lengths }: Channels, pattern: BlockPattern): Int32Array {
  const slots = new Int32Array(3 * lengths.length);
  for (let k = 0; k < lengths.length; k += 1) {
    const [a, b] = [ends[2 * k]!, ends[2 * k + 1]!];
    slots.set([pattern.slotOf(a, a), pattern.slotOf(b, b), eitherWay(pattern.slotOf(a, b))], 3 * k);
  }
  return slots;
}

/**
 * Adds the second derivatives of the channels to `H`, nine numbers a block.
 *
 * @param isTrue whether they are the true ones; else each term is made positive: the part of a pressed channel that turns is left
 *   out
 */
export function addChannelCurvature(
  { ends, lengths, stiffness }: Channels,
  slots: Int32Array,
  X: Float64Array,
  isTrue: boolean,
  H: Float64Array,
): void {
  const n = new Float64Array(3);
  for (let k = 0; k < lengths.length; k += 1) {
    const [a, b] = [3 * ends[2 * k]!, 3 * ends[2 * k + 1]!];
    for (let j = 0; j < 3; j += 1) n[j] = X[b + j]! - X[a + j]!;
    const square = n[0]! * n[0]! + n[1]! * n[1]! + n[2]! * n[2]!;
    const length = Math.sqrt(square);
    const part = (length - lengths[k]!) / length;
    const turn = isTrue ? part : Math.max(0, part);
    for (let r = 0; r < 3; r += 1)
      for (let s = 0; s < 3; s += 1) {
        const value = stiffness[k]! * (((1 - turn) * n[r]! * n[s]!) / square + (r === s ? turn : 0));
        H[9 * slots[3 * k]! + 3 * r + s]! += value;
        H[9 * slots[3 * k + 1]! + 3 * r + s]! += value;
        H[9 * slots[3 * k + 2]! + 3 * r + s]! -= value;
      }
  }
}
