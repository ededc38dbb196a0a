// Solves with a factor: forwards through its fronts, then back.

import type { Factor } from './cholesky';

/** Puts the solution of L·Lᵀ·x = b into `b`, which has three numbers a vertex. */
export function substitute({ tree, numbers: L, work }: Factor, b: Float64Array): void {
  const { fronts } = tree;
  for (let q = 0; q < fronts.length; q += 1) {
    const { own, rows, start, coordinates } = fronts[q]!;
    for (let i = 0; i < own; i += 1) {
      const at = coordinates[Math.floor(i / 3)]! + (i % 3);
      const row = start + i * own;
      let sum = b[at]!;
      for (let k = 0; k < i; k += 1) sum -= L[row + k]! * work[k]!;
      work[i] = sum / L[row + i]!;
      b[at] = work[i]!;
    }
    for (let i = own; i < rows; i += 1) {
      const row = start + i * own;
      let sum = 0;
      for (let k = 0; k < own; k += 1) sum += L[row + k]! * work[k]!;
      b[coordinates[Math.floor(i / 3)]! + (i % 3)]! -= sum;
    }
  }
  for (let q = fronts.length - 1; q >= 0; q -= 1) {
    const { own, rows, start, coordinates } = fronts[q]!;
    for (let i = 0; i < own; i += 1) work[i] = b[coordinates[Math.floor(i / 3)]! + (i % 3)]!;
    for (let i = own; i < rows; i += 1) {
      const x = b[coordinates[Math.floor(i / 3)]! + (i % 3)]!;
      const row = start + i * own;
      for (let k = 0; k < own; k += 1) work[k]! -= L[row + k]! * x;
    }
    for (let i = own - 1; i >= 0; i -= 1) {
      const row = start + i * own;
      const x = work[i]! / L[row + i]!;
      work[i] = x;
      for (let k = 0; k < i; k += 1) work[k]! -= L[row + k]! * x;
    }
    for (let i = 0; i < own; i += 1) b[coordinates[Math.floor(i / 3)]! + (i % 3)] = work[i]!;
  }
}
