// The channels of the bones: ribbons on the cloth along their lines, rounded so that light tells them, between two rows of stitches.

type Values = Float32Array<ArrayBuffer>;
type Triple = [number, number, number];

/** A line of a bone by its vertices; at an open edge its channel lies on one side only, away from the opening. */
interface BoneLine {
  readonly vertices: readonly number[];
  readonly open: boolean;
}

/** Ribbons as triangles with normals of their own. */
export interface Channels {
  readonly places: Values;
  readonly normals: Values;
  readonly triangles: Uint32Array<ArrayBuffer>;
  /** The vertex of the cloth that has each one's values. */
  readonly of: Uint32Array<ArrayBuffer>;
}

const HALF_WIDTH_MM = 4.5;
/** How far the normals at both sides of a ribbon lean outwards. */
const ROUNDED = 0.7;

/** @param normals of the cloth by vertex, of length 1 */
export function channelsOf(
  lines: readonly BoneLine[],
  places: Float32Array,
  normals: Float32Array,
): Channels & { readonly stitches: Values } {
  const ribbon = {
    places: [] as number[],
    normals: [] as number[],
    triangles: [] as number[],
    of: [] as number[],
  };
  const stitches: number[] = [];
  for (const { vertices, open } of lines) {
    let sides: Triple[] | null = null;
    for (const [i, v] of vertices.entries()) {
      const at = tripleAt(places, v);
      const normal = tripleAt(normals, v);
      const [before, after] = [vertices[i - 1] ?? v, vertices[i + 1] ?? v].map((k) => tripleAt(places, k));
      if (!before || !after) continue;
      const along = at.map((_, j) => (after[j] ?? 0) - (before[j] ?? 0)) as Triple;
      const over = unit(cross(normal, along));
      const middle = open ? Math.sign(at[0] * over[0] || 1) * HALF_WIDTH_MM : 0;
      const ends = [-1, 0, 1].map((side) => plus(at, over, middle + side * HALF_WIDTH_MM));
      const base = ribbon.of.length;
      for (const [k, place] of ends.entries()) {
        ribbon.places.push(...place);
        ribbon.normals.push(...plus(normal, over, (k - 1) * ROUNDED));
        ribbon.of.push(v);
      }
      if (sides) {
        for (const k of [0, 1])
          ribbon.triangles.push(
            ...[base - 3 + k, base + k, base - 2 + k],
            ...[base - 2 + k, base + k, base + 1 + k],
          );
        for (const k of [0, 2]) stitches.push(...(sides[k] ?? at), ...(ends[k] ?? at));
      }
      sides = ends;
    }
  }
  return {
    places: Float32Array.from(ribbon.places),
    normals: Float32Array.from(ribbon.normals),
    triangles: Uint32Array.from(ribbon.triangles),
    of: Uint32Array.from(ribbon.of),
    stitches: Float32Array.from(stitches),
  };
}

const tripleAt = (list: Float32Array, v: number): Triple => [
  list[3 * v] as number,
  list[3 * v + 1] as number,
  list[3 * v + 2] as number,
];

const plus = (a: Triple, b: Triple, by: number): Triple => [
  a[0] + by * b[0],
  a[1] + by * b[1],
  a[2] + by * b[2],
];

const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

function unit(a: Triple): Triple {
  const size = Math.hypot(...a) || 1;
  return [a[0] / size, a[1] / size, a[2] / size];
}
