// The waist tape: each seam's mark at the waist is held at the height of the body's waist by a soft spring.

import type { GarmentMesh } from '../mesh/garmentMesh';
import { type BlockPattern, eitherWay } from './pattern';
import { WAIST_TAPE } from './stiffness';

/** A mark between two vertices of a line: `part` of the way to the second, held at height `z`, mm. */
export interface TapeMarks {
  readonly ends: Int32Array;
  readonly parts: Float64Array;
  readonly heights: Float64Array;
}

/** A seam that ends short of the waist by no more is held at its end, as far from the waist as it was cut. mm */
const NEAR_WAIST_MM = 70;

/**
 * The marks at which the seams and centres of a mesh are held at the waist.
 *
 * @param y height of the waist on paper, mm below the shoulder level
 * @param z height of the waist on the body, mm above the shoulder level
 */
export function tapeMarks(mesh: GarmentMesh, y: number, z: number): TapeMarks {
  const ends: number[] = [];
  const parts: number[] = [];
  const heights: number[] = [];
  const add = (a: number, b: number, part: number, height: number): void => {
    if (a === b) return;
    ends.push(a, b);
    parts.push(part);
    heights.push(height);
  };
  for (const { kind, cut, sewn } of mesh.lines) {
    if (kind !== 'seam' && kind !== 'centre') continue;
    const heightOf = (k: number): number => mesh.flat[2 * cut[k]! + 1]! - y;
    const last = cut.length - 1;
    let k = 0;
    while (k < last && (heightOf(k) * heightOf(k + 1) > 0 || heightOf(k) === heightOf(k + 1))) k += 1;
    if (k < last) {
      add(sewn[k]!, sewn[k + 1]!, heightOf(k) / (heightOf(k) - heightOf(k + 1)), z);
      continue;
    }
    const end = Math.abs(heightOf(0)) < Math.abs(heightOf(last)) ? 0 : last;
    if (Math.abs(heightOf(end)) >= NEAR_WAIST_MM) continue;
    const inner = end === 0 ? 1 : last - 1;
    add(sewn[inner]!, sewn[end]!, 1, z - heightOf(end));
  }
  return {
    ends: Int32Array.from(ends),
    parts: Float64Array.from(parts),
    heights: Float64Array.from(heights),
  };
}

/** How far above its height a mark is, mm. */
const over = ({ ends, parts, heights }: TapeMarks, X: Float64Array, k: number): number =>
  X[3 * ends[2 * k]! + 2]! * (1 - parts[k]!) + X[3 * ends[2 * k + 1]! + 2]! * parts[k]! - heights[k]!;

/**
 * The energy, N·mm.
 *
 * @param X x, y and z of each sewn vertex, mm
 * @param G takes the gradient on top of what it has, N
 */
export function tapeEnergy(marks: TapeMarks, X: Float64Array, G: Float64Array): number {
  let energy = 0;
  for (let k = 0; k < marks.parts.length; k += 1) {
    const force = WAIST_TAPE * over(marks, X, k);
    energy += 0.5 * force * over(marks, X, k);
    G[3 * marks.ends[2 * k]! + 2]! += force * (1 - marks.parts[k]!);
    G[3 * marks.ends[2 * k + 1]! + 2]! += force * marks.parts[k]!;
  }
  return energy;
}

/** What all marks together pull the garment upwards, N; below zero where they hold it down. */
export function tapeReaction(marks: TapeMarks, X: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < marks.parts.length; k += 1) sum -= WAIST_TAPE * over(marks, X, k);
  return sum;
}

/** Adds the second derivatives to `H`. */
export function addTapeCurvature({ ends, parts }: TapeMarks, pattern: BlockPattern, H: Float64Array): void {
  for (let k = 0; k < parts.length; k += 1) {
    const [a, b, w] = [ends[2 * k]!, ends[2 * k + 1]!, parts[k]!];
    H[9 * pattern.slotOf(a, a) + 8]! += WAIST_TAPE * (1 - w) ** 2;
    H[9 * pattern.slotOf(b, b) + 8]! += WAIST_TAPE * w * w;
    H[9 * eitherWay(pattern.slotOf(a, b)) + 8]! += WAIST_TAPE * w * (1 - w);
  }
}
