// A mesh drawn more finely than it was sewn: each triangle in four, bent as its normals say, so that outlines and the lines between
// colours run smoothly.

import { unitNormals } from './normals';

/** A value by vertex, and what it is at the middles of edges. */
type Values = Float32Array<ArrayBuffer>;

interface Finer {
  readonly places: Values;
  readonly triangles: Uint32Array<ArrayBuffer>;
  /** Four triangles of the finer mesh to one of the mesh, in its order. */
  readonly values: readonly Values[];
  /** The vertex in the middle of an edge, by its ends; either way round. */
  readonly middleOf: (a: number, b: number) => number | undefined;
}

/**
 * Parts every triangle in four. A middle lies on the cubic that leaves both ends of its edge at right angles to their normals
 * (A. Vlachos, J. Peters, C. Boyd, J. L. Mitchell, Curved PN triangles, Symposium on Interactive 3D Graphics 2001); its values
 * are three eighths of those of both ends and an eighth of those of both corners across it, as C. Loop has them (1987).
 */
export function finer(places: Float32Array, triangles: Uint32Array, values: readonly Float32Array[]): Finer {
  const count = places.length / 3;
  const normals = unitNormals(places, triangles);
  const edges = edgesOf(triangles, count);
  const all = new Float32Array(3 * (count + edges.size));
  all.set(places);
  const finerValues = values.map((list) => {
    const longer = new Float32Array(count + edges.size);
    longer.set(list);
    return longer;
  });
  for (const { a, b, middle, across } of edges.values()) {
    const [atA, atB] = [lean(places, normals, a, b), lean(places, normals, b, a)];
    for (let j = 0; j < 3; j += 1)
      all[3 * middle + j] =
        ((places[3 * a + j] as number) + (places[3 * b + j] as number)) / 2 -
        (atA * (normals[3 * a + j] as number) + atB * (normals[3 * b + j] as number)) / 8;
    for (const [k, list] of values.entries()) {
      const at = (v: number): number => list[v] as number;
      const ends = at(a) + at(b);
      const longer = finerValues[k] as Float32Array;
      longer[middle] =
        across.length === 2 ? (3 * ends) / 8 + (at(across[0] ?? a) + at(across[1] ?? b)) / 8 : ends / 2;
    }
  }
  const middleOf = (a: number, b: number): number | undefined => edges.get(keyOf(a, b, count))?.middle;
  const parted: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    const [ab, bc, ca] = [middleOf(a, b), middleOf(b, c), middleOf(c, a)] as [number, number, number];
    parted.push(a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca);
  }
  return { places: all, triangles: Uint32Array.from(parted), values: finerValues, middleOf };
}

interface SharedEdge {
  readonly a: number;
  readonly b: number;
  readonly middle: number;
  /** The corners across the edge, one for each triangle that has it. */
  readonly across: number[];
}

const keyOf = (a: number, b: number, count: number): number => Math.min(a, b) * count + Math.max(a, b);

function edgesOf(triangles: Uint32Array, count: number): Map<number, SharedEdge> {
  const edges = new Map<number, SharedEdge>();
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k += 1) {
      const [a, b, c] = [0, 1, 2].map((j) => triangles[t + ((k + j) % 3)]) as [number, number, number];
      const key = keyOf(a, b, count);
      const edge = edges.get(key) ?? { a, b, middle: count + edges.size, across: [] };
      edge.across.push(c);
      edges.set(key, edge);
    }
  return edges;
}

/** How far the end `b` of an edge lies above the plane through `a` square to the normal there, mm. */
const lean = (places: Float32Array, normals: Float32Array, a: number, b: number): number =>
  [0, 1, 2].reduce(
    (sum, j) =>
      sum + ((places[3 * b + j] as number) - (places[3 * a + j] as number)) * (normals[3 * a + j] as number),
    0,
  );
