// Normals of a solid.

/** Mean normals by vertex, weighed by area, of length 1; they point outwards as the triangles do. */
export function unitNormals(places: Float32Array, triangles: Uint32Array): Float32Array<ArrayBuffer> {
  const normals = weighedByArea(places, triangles);
  for (let i = 0; i < normals.length; i += 3) {
    const [x, y, z] = [normals[i], normals[i + 1], normals[i + 2]] as [number, number, number];
    const size = Math.hypot(x, y, z) || 1;
    normals.set([x / size, y / size, z / size], i);
  }
  return normals;
}

function weighedByArea(places: Float32Array, triangles: Uint32Array): Float32Array<ArrayBuffer> {
  const normals = new Float32Array(places.length);
  const at = (i: number): number => places[i] as number;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * (triangles[t] as number);
    const b = 3 * (triangles[t + 1] as number);
    const c = 3 * (triangles[t + 2] as number);
    const ux = at(b) - at(a);
    const uy = at(b + 1) - at(a + 1);
    const uz = at(b + 2) - at(a + 2);
    const wx = at(c) - at(a);
    const wy = at(c + 1) - at(a + 1);
    const wz = at(c + 2) - at(a + 2);
    for (let k = 0; k < 3; k += 1) {
      const v = 3 * (triangles[t + k] as number);
      normals[v] = (normals[v] as number) + uy * wz - uz * wy;
      normals[v + 1] = (normals[v + 1] as number) + uz * wx - ux * wz;
      normals[v + 2] = (normals[v + 2] as number) + ux * wy - uy * wx;
    }
  }
  return normals;
}
