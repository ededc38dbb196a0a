// What the factor of a sparse matrix needs to know beforehand: its fronts, and where each block of the matrix goes.

import type { BlockPattern } from '../cloth/pattern';
import { dissect } from './dissection';

/** A dense front: rows of its own vertices first, then those of later fronts that it touches. Indices count single coordinates. */
interface Front {
  /** How many rows are its own, and how many it has in all. */
  readonly own: number;
  readonly rows: number;
  /** Where its columns start among the factor's numbers. */
  readonly start: number;
  /** First coordinate of each of its vertices. */
  readonly coordinates: Int32Array;
  /** Blocks of the matrix that belong to it, from and to. */
  readonly blocks: readonly [from: number, to: number];
  readonly children: readonly number[];
  /** For each child, where the rows that it leaves stand here. */
  readonly childRows: readonly Int32Array[];
}

/** Fronts in the order of elimination, and the pattern of the matrix. */
export interface FrontTree {
  readonly pattern: BlockPattern;
  readonly fronts: readonly Front[];
  /** Row and column of each block within its front. */
  readonly rowIn: Int32Array;
  readonly columnIn: Int32Array;
  /** Numbers of the factor, the most that stand on the stack of what fronts leave, and the side of the largest front. */
  readonly size: number;
  readonly stack: number;
  readonly largest: number;
}

/**
 * The fronts of a matrix whose blocks join each vertex with its neighbours.
 *
 * @param neighbours of each vertex, without itself
 * @param u and `v`: coordinates of the vertices in a plane where neighbours lie near each other, by which the order is chosen
 */
export function makeFronts(
  neighbours: readonly (readonly number[])[],
  u: Float64Array,
  v: Float64Array,
): FrontTree {
  const nodes = dissect(neighbours, u, v);
  const order = nodes.flatMap(({ own }) => own);
  const position = new Int32Array(neighbours.length);
  for (const [k, i] of order.entries()) position[i] = k;
  const borders = bordersOf(nodes, neighbours, position);
  const { pattern, firstOf } = patternOf(neighbours, order, position);

  const local = new Int32Array(neighbours.length);
  const [rowIn, columnIn] = [new Int32Array(pattern.blocks), new Int32Array(pattern.blocks)];
  const fronts: Front[] = [];
  let [size, depth, stack, largest, next] = [0, 0, 0, 0, 0];
  for (const [q, { own, children }] of nodes.entries()) {
    const all = [...own, ...borders[q]!];
    for (const [k, i] of all.entries()) local[i] = k;
    const from = next;
    for (const i of own) {
      next = firstOf[i]!;
      for (; next < pattern.blocks && pattern.rows[next]! === i; next += 1) {
        rowIn[next] = 3 * local[i]!;
        columnIn[next] = 3 * local[pattern.columns[next]!]!;
      }
    }
    const [ownRows, rows] = [3 * own.length, 3 * all.length];
    fronts.push({
      own: ownRows,
      rows,
      start: size,
      coordinates: Int32Array.from(all, (i) => 3 * i),
      blocks: [from, next],
      children,
      childRows: children.map((child) => Int32Array.from(borders[child]!, (i) => 3 * local[i]!)),
    });
    size += rows * ownRows;
    largest = Math.max(largest, rows);
    depth += (rows - ownRows) ** 2;
    stack = Math.max(stack, depth);
    for (const child of children) depth -= (fronts[child]!.rows - fronts[child]!.own) ** 2;
  }
  return { pattern, fronts, rowIn, columnIn, size, stack, largest };
}

/** The later vertices that each node touches, itself or through its children, in the order of elimination. */
function bordersOf(
  nodes: readonly { readonly own: readonly number[]; readonly children: readonly number[] }[],
  neighbours: readonly (readonly number[])[],
  position: Int32Array,
): number[][] {
  const borders: number[][] = [];
  let done = 0;
  for (const { own, children } of nodes) {
    done += own.length;
    const found = new Set<number>();
    for (const i of own) for (const j of neighbours[i]!) if (position[j]! >= done) found.add(j);
    for (const child of children) for (const j of borders[child]!) if (position[j]! >= done) found.add(j);
    borders.push([...found].sort((a, b) => position[a]! - position[b]!));
  }
  return borders;
}

/** Blocks of each vertex with itself, then with its later neighbours. */
function patternOf(
  neighbours: readonly (readonly number[])[],
  order: readonly number[],
  position: Int32Array,
): { pattern: BlockPattern; firstOf: Int32Array } {
  const rows: number[] = [];
  const columns: number[] = [];
  const firstOf = new Int32Array(neighbours.length);
  for (const i of order) {
    firstOf[i] = rows.length;
    rows.push(i);
    columns.push(i);
    for (const j of neighbours[i]!)
      if (position[j]! > position[i]!) {
        rows.push(i);
        columns.push(j);
      }
  }
  const [rowOf, columnOf] = [Int32Array.from(rows), Int32Array.from(columns)];
  const find = (i: number, j: number): number => {
    let k = firstOf[i]!;
    while (columnOf[k]! !== j) k += 1;
    return k;
  };
  return {
    firstOf,
    pattern: {
      blocks: rows.length,
      rows: rowOf,
      columns: columnOf,
      slotOf: (i, j) => (position[i]! > position[j]! ? ~find(j, i) : find(i, j)),
    },
  };
}
