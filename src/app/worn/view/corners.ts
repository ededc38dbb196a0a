// Normals of a solid, and strokes as two triangles each.

/** Mean normals by vertex, weighed by area, of no set length; they point outwards as the triangles do. */
export function normalsOf(places: Float32Array, triangles: Uint32Array): Float32Array {
  const normals = new Float32Array(places.length);
  const at = (v: number, j: number): number => places[3 * v + j] as number;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    const u = [0, 1, 2].map((j) => at(b, j) - at(a, j)) as [number, number, number];
    const w = [0, 1, 2].map((j) => at(c, j) - at(a, j)) as [number, number, number];
    const normal = [u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0]];
    for (const v of [a, b, c])
      for (let j = 0; j < 3; j += 1)
        normals[3 * v + j] = (normals[3 * v + j] as number) + (normal[j] as number);
  }
  return normals;
}

/** The same of length 1. */
export function unitNormals(places: Float32Array, triangles: Uint32Array): Float32Array {
  const normals = normalsOf(places, triangles);
  for (let i = 0; i < normals.length; i += 3) {
    const [x, y, z] = [normals[i], normals[i + 1], normals[i + 2]] as [number, number, number];
    const size = Math.hypot(x, y, z) || 1;
    normals.set([x / size, y / size, z / size], i);
  }
  return normals;
}

/** Six corners for each stroke: its end, the other end, and on which side of it the corner lies. */
export function strokeCorners(strokes: Float32Array): {
  place: Float32Array;
  other: Float32Array;
  side: Float32Array;
} {
  const place: number[] = [];
  const other: number[] = [];
  const side: number[] = [];
  for (let i = 0; i < strokes.length; i += 6) {
    const [p, q] = [[...strokes.subarray(i, i + 3)], [...strokes.subarray(i + 3, i + 6)]];
    // As seen from its own end a corner's side turns about.
    for (const [from, to, at] of [
      [p, q, 1],
      [p, q, -1],
      [q, p, 1],
      [q, p, 1],
      [q, p, -1],
      [p, q, 1],
    ] as const) {
      place.push(...from);
      other.push(...to);
      side.push(at);
    }
  }
  return { place: Float32Array.from(place), other: Float32Array.from(other), side: Float32Array.from(side) };
}
