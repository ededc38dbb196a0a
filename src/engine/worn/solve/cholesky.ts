// The factor L of a sparse symmetric matrix L·Lᵀ by the multifrontal method (I. S. Duff, J. K. Reid, "The multifrontal solution of
// indefinite sparse symmetric linear equations", ACM Transactions on Mathematical Software 9, 1983), in blocks of 3 × 3.

import type { FrontTree } from './fronts';

export interface Factor {
  readonly tree: FrontTree;
  readonly numbers: Float64Array;
  readonly stack: Float64Array;
  readonly front: Float64Array;
  /** Where the rows that each front leaves stand on the stack. */
  readonly tops: Int32Array;
  readonly work: Float64Array;
}

/** Room for a factor with these fronts; its numbers are those of the last matrix that was factorized. */
export const makeFactor = (tree: FrontTree): Factor => ({
  tree,
  numbers: new Float64Array(tree.size),
  stack: new Float64Array(tree.stack),
  front: new Float64Array(tree.largest * tree.largest),
  tops: new Int32Array(tree.fronts.length),
  work: new Float64Array(tree.largest),
});

/** A pivot that is not larger shows that the matrix is not positive. */
const LEAST_PIVOT = 1e-10;

/**
 * Factors a matrix. False where it is not positive: the factor is then of no use.
 *
 * @param blocks nine numbers a block, in the tree's pattern
 * @param shift added to the diagonal
 */
export function factorize(factor: Factor, blocks: Float64Array, shift: number): boolean {
  const { tree, front, tops } = factor;
  let top = 0;
  for (const [q, { own, rows, children }] of tree.fronts.entries()) {
    front.fill(0, 0, rows * rows);
    gather(factor, q, blocks, shift);
    if (!eliminate(factor, q)) return false;
    // What is left stands on the stack in the place of the children' own.
    if (children.length > 0) top = tops[children[0]!]!;
    tops[q] = top;
    leave(factor, q, top);
    top += (rows - own) ** 2;
  }
  return true;
}

/** Adds the blocks of the matrix and what the children left to the lower half of a front. */
function gather({ tree, front, stack, tops }: Factor, q: number, blocks: Float64Array, shift: number): void {
  const { rows, blocks: range, children, childRows } = tree.fronts[q]!;
  for (let p = range[0]; p < range[1]; p += 1) {
    const [i, j] = [tree.rowIn[p]!, tree.columnIn[p]!];
    const h = 9 * p;
    if (j >= i)
      for (let a = 0; a < 3; a += 1)
        for (let b = 0; b < 3; b += 1) front[(j + b) * rows + i + a]! += blocks[h + 3 * a + b]!;
    else
      for (let a = 0; a < 3; a += 1)
        for (let b = 0; b < 3; b += 1) front[(i + a) * rows + j + b]! += blocks[h + 3 * a + b]!;
    if (i === j) for (let a = 0; a < 3; a += 1) front[(i + a) * rows + i + a]! += shift;
  }
  for (let c = 0; c < children.length; c += 1) {
    const map = childRows[c]!;
    const [from, side] = [tops[children[c]!]!, 3 * map.length];
    for (let i = 0; i < map.length; i += 1)
      for (let a = 0; a < 3; a += 1) {
        const row = (map[i]! + a) * rows;
        const left = from + (3 * i + a) * side;
        for (let j = 0; j <= i; j += 1) {
          const column = map[j]!;
          const u = left + 3 * j;
          if (column <= map[i]!) {
            front[row + column]! += stack[u]!;
            front[row + column + 1]! += stack[u + 1]!;
            front[row + column + 2]! += stack[u + 2]!;
          } else for (let b = 0; b < 3; b += 1) front[(column + b) * rows + map[i]! + a]! += stack[u + b]!;
        }
      }
  }
}

/** Columns of the factor that belong to a front. False at a pivot that is not positive. */
function eliminate({ tree, front: F, numbers: L }: Factor, q: number): boolean {
  const { own, rows, start } = tree.fronts[q]!;
  for (let j = 0; j < own; j += 3) {
    const r0 = start + j * own;
    const r1 = r0 + own;
    const r2 = r1 + own;
    let a00 = F[j * rows + j]!;
    let a10 = F[(j + 1) * rows + j]!;
    let a11 = F[(j + 1) * rows + j + 1]!;
    let a20 = F[(j + 2) * rows + j]!;
    let a21 = F[(j + 2) * rows + j + 1]!;
    let a22 = F[(j + 2) * rows + j + 2]!;
    for (let k = 0; k < j; k += 1) {
      const x = L[r0 + k]!;
      const y = L[r1 + k]!;
      const z = L[r2 + k]!;
      a00 -= x * x;
      a10 -= x * y;
      a11 -= y * y;
      a20 -= x * z;
      a21 -= y * z;
      a22 -= z * z;
    }
    if (!(a00 > LEAST_PIVOT)) return false;
    a00 = Math.sqrt(a00);
    a10 /= a00;
    a20 /= a00;
    a11 -= a10 * a10;
    if (!(a11 > LEAST_PIVOT)) return false;
    a11 = Math.sqrt(a11);
    a21 = (a21 - a20 * a10) / a11;
    a22 -= a20 * a20 + a21 * a21;
    if (!(a22 > LEAST_PIVOT)) return false;
    a22 = Math.sqrt(a22);
    L[r0 + j] = a00;
    L[r0 + j + 1] = 0;
    L[r0 + j + 2] = 0;
    L[r1 + j] = a10;
    L[r1 + j + 1] = a11;
    L[r1 + j + 2] = 0;
    L[r2 + j] = a20;
    L[r2 + j + 1] = a21;
    L[r2 + j + 2] = a22;
    const i00 = 1 / a00;
    const i11 = 1 / a11;
    const i22 = 1 / a22;
    for (let i = j + 3; i < rows; i += 3) {
      const s = start + i * own;
      const t = s + own;
      const w = t + own;
      const f = i * rows + j;
      const g = f + rows;
      const e = g + rows;
      let x0 = F[f]!;
      let x1 = F[f + 1]!;
      let x2 = F[f + 2]!;
      let y0 = F[g]!;
      let y1 = F[g + 1]!;
      let y2 = F[g + 2]!;
      let z0 = F[e]!;
      let z1 = F[e + 1]!;
      let z2 = F[e + 2]!;
      for (let k = 0; k < j; k += 1) {
        const p = L[r0 + k]!;
        const o = L[r1 + k]!;
        const r = L[r2 + k]!;
        const a = L[s + k]!;
        const b = L[t + k]!;
        const c = L[w + k]!;
        x0 -= a * p;
        x1 -= a * o;
        x2 -= a * r;
        y0 -= b * p;
        y1 -= b * o;
        y2 -= b * r;
        z0 -= c * p;
        z1 -= c * o;
        z2 -= c * r;
      }
      x0 *= i00;
      x1 = (x1 - x0 * a10) * i11;
      x2 = (x2 - x0 * a20 - x1 * a21) * i22;
      y0 *= i00;
      y1 = (y1 - y0 * a10) * i11;
      y2 = (y2 - y0 * a20 - y1 * a21) * i22;
      z0 *= i00;
      z1 = (z1 - z0 * a10) * i11;
      z2 = (z2 - z0 * a20 - z1 * a21) * i22;
      L[s + j] = x0;
      L[s + j + 1] = x1;
      L[s + j + 2] = x2;
      L[t + j] = y0;
      L[t + j + 1] = y1;
      L[t + j + 2] = y2;
      L[w + j] = z0;
      L[w + j + 1] = z1;
      L[w + j + 2] = z2;
    }
  }
  return true;
}

/** Puts what a front leaves for later ones on the stack: the lower half of its Schur complement. */
function leave({ tree, front: F, numbers: L, stack }: Factor, q: number, top: number): void {
  const { own, rows, start } = tree.fronts[q]!;
  const side = rows - own;
  for (let i = 0; i < side; i += 3) {
    const s = start + (own + i) * own;
    const t = s + own;
    const w = t + own;
    for (let j = 0; j <= i; j += 3) {
      const r0 = start + (own + j) * own;
      const r1 = r0 + own;
      const r2 = r1 + own;
      const f = (own + i) * rows + own + j;
      const g = f + rows;
      const e = g + rows;
      let x0 = F[f]!;
      let x1 = F[f + 1]!;
      let x2 = F[f + 2]!;
      let y0 = F[g]!;
      let y1 = F[g + 1]!;
      let y2 = F[g + 2]!;
      let z0 = F[e]!;
      let z1 = F[e + 1]!;
      let z2 = F[e + 2]!;
      for (let k = 0; k < own; k += 1) {
        const p = L[r0 + k]!;
        const o = L[r1 + k]!;
        const r = L[r2 + k]!;
        const a = L[s + k]!;
        const b = L[t + k]!;
        const c = L[w + k]!;
        x0 -= a * p;
        x1 -= a * o;
        x2 -= a * r;
        y0 -= b * p;
        y1 -= b * o;
        y2 -= b * r;
        z0 -= c * p;
        z1 -= c * o;
        z2 -= c * r;
      }
      const u = top + i * side + j;
      stack[u] = x0;
      stack[u + 1] = x1;
      stack[u + 2] = x2;
      stack[u + side] = y0;
      stack[u + side + 1] = y1;
      stack[u + side + 2] = y2;
      stack[u + 2 * side] = z0;
      stack[u + 2 * side + 1] = z1;
      stack[u + 2 * side + 2] = z2;
    }
  }
}
