// An order of elimination that keeps a sparse factor small: nested dissection of the mesh by its coordinates.

/** A part of the mesh that is eliminated at once, after those it holds. */
export interface DissectionNode {
  /** Its own vertices. */
  readonly own: readonly number[];
  /** Indices of the nodes it parts; they stand before it. */
  readonly children: readonly number[];
}

/** At most so many vertices are not parted further. */
const LEAF = 12;

/**
 * Parts a graph again and again by a row of vertices that separates two halves of its plane (A. George, "Nested dissection of a
 * regular finite element mesh", SIAM Journal on Numerical Analysis 10, 1973).
 *
 * @param neighbours of each vertex
 * @param u and `v`: coordinates of the vertices in some plane where neighbours lie near each other
 */
export function dissect(
  neighbours: readonly (readonly number[])[],
  u: Float64Array,
  v: Float64Array,
): DissectionNode[] {
  const nodes: DissectionNode[] = [];
  const marks = new Int32Array(neighbours.length);
  let stamp = 0;
  const mark = (vertices: readonly number[]): number => {
    stamp += 1;
    for (const i of vertices) marks[i] = stamp;
    return stamp;
  };
  const part = (vertices: readonly number[]): number => {
    if (vertices.length <= LEAF) return nodes.push({ own: vertices, children: [] }) - 1;
    const along = spread(vertices, u) > spread(vertices, v) ? u : v;
    const sorted = [...vertices].sort((a, b) => along[a]! - along[b]! || a - b);
    const middle = Math.floor(sorted.length / 2);
    const [low, high] = [sorted.slice(0, middle), sorted.slice(middle)];
    const [inLow, inHigh] = [mark(low), mark(high)];
    const touching = (list: readonly number[], other: number): number[] =>
      list.filter((i) => neighbours[i]!.some((j) => marks[j]! === other));
    const [a, b] = [touching(low, inHigh), touching(high, inLow)];
    const own = a.length <= b.length ? a : b;
    const parting = mark(own);
    const children = [low, high]
      .map((list) => list.filter((i) => marks[i]! !== parting))
      .filter((list) => list.length > 0)
      .map(part);
    return nodes.push({ own, children }) - 1;
  };
  part(neighbours.map((_, i) => i));
  return nodes;
}

function spread(vertices: readonly number[], values: Float64Array): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const i of vertices) {
    least = Math.min(least, values[i]!);
    most = Math.max(most, values[i]!);
  }
  return most - least;
}
