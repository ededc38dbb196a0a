// The body as it is drawn: its skin as triangles, pressed in where the garment presses it.

import { type LevelName, sectionPoints, type WholeMesh, type WornHalf } from '../../../engine';
import { extentOf } from './extent';
import { unitNormals } from './normals';

/** x to the wearer's left, y forwards, z up, mm; three numbers a vertex, three vertices a triangle. */
export interface Solid {
  readonly places: Float32Array<ArrayBuffer>;
  readonly triangles: Uint32Array<ArrayBuffer>;
  /** By vertex, of length 1, outwards. */
  readonly normals: Float32Array<ArrayBuffer>;
}

/** Rows of as many vertices, from the top down, evenly apart. */
interface Skin extends Omit<Solid, 'normals'> {
  readonly around: number;
}

const ROW_MM = 4.5;
/** The body is shown so far beyond the garment, and fades into the page over so much more, mm. */
export const BODY_BEYOND_MM = 8;
export const FADING_MM = 80;

/** The skin goes on so far where it has faded: it hides the inside of the body from a camera that looks down into it, mm. */
const HIDING_MM = 60;
/** One of so many columns of the body's sections is drawn. */
const EVERY = 2;

/**
 * As much of the body's skin as is seen beyond the garment, pressed in where the cloth presses it; the left half of a left body,
 * the right half of a right one.
 */
export function bodySolid(halves: readonly WornHalf[], cloth: WholeMesh): Solid {
  const { places, triangles } = yielding(skinOf(halves, cloth), cloth);
  return { places, triangles, normals: unitNormals(places, triangles) };
}

function skinOf(halves: readonly WornHalf[], { places: cloth }: WholeMesh): Skin {
  const [left, right = left] = halves;
  if (!left || !right) return { places: new Float32Array(0), triangles: new Uint32Array(0), around: 1 };
  const zOf = (name: LevelName): number => left.body.levels.find((level) => level.name === name)?.z ?? 0;
  const garment = extentOf(cloth);
  const beyond = BODY_BEYOND_MM + FADING_MM + HIDING_MM;
  const top = Math.min(-20, zOf('overBust') + 130, garment.top + beyond);
  const bottom = Math.max(zOf('hip') - 90, garment.bottom - beyond);
  const rows = Math.ceil((top - bottom) / ROW_MM);
  const places: number[] = [];
  let around = 0;
  for (let j = 0; j <= rows; j += 1) {
    const z = top + ((bottom - top) * j) / rows;
    const [ring, other] = [sectionPoints(left.body.surface, z), sectionPoints(right.body.surface, z)];
    const kept = ring
      .map((point, k) => (point.x < 0 ? (other[k] ?? point) : point))
      .filter((_, k) => k % EVERY === 0);
    around = kept.length;
    for (const { x, y } of kept) places.push(x, y, z);
  }
  const triangles: number[] = [];
  for (let j = 0; j < rows; j += 1)
    for (let i = 0; i < around; i += 1) {
      const [a, b] = [j * around + i, j * around + ((i + 1) % around)];
      const [c, d] = [a + around, b + around];
      // Parted along the crease under the breast, which falls from the middle to both sides; across it the shading has teeth.
      if (i < around / 2) triangles.push(a, c, d, a, d, b);
      else triangles.push(a, c, b, b, c, d);
    }
  return { places: Float32Array.from(places), triangles: Uint32Array.from(triangles), around };
}

/** The skin lies so far under the cloth that presses it in, and gives way so far round a place of the cloth, mm. */
const UNDER_MM = 2;
const REACH_MM = 18;

/** Times that hollows between two places of the cloth are evened out. */
const EVENED = 16;

/** The body's skin pressed in where the cloth presses it, so that it does not come out through the cloth. */
function yielding(
  { places, triangles, around }: Skin,
  { places: cloth, standOff }: WholeMesh,
): Omit<Solid, 'normals'> {
  const depths = new Float32Array(places.length / 3);
  const top = places[2] ?? 0;
  const rows = depths.length / around;
  for (const [w, off] of standOff.entries()) {
    if (off > 0) continue;
    const [x, y, z] = [cloth[3 * w], cloth[3 * w + 1], cloth[3 * w + 2]] as [number, number, number];
    const reach = REACH_MM - off;
    const first = Math.max(0, Math.ceil((top - z - reach) / ROW_MM - 1));
    const last = Math.min(rows - 1, Math.floor((top - z + reach) / ROW_MM + 1));
    for (let v = first * around; v < (last + 1) * around; v += 1) {
      const dx = (places[3 * v] as number) - x;
      const dy = (places[3 * v + 1] as number) - y;
      const dz = (places[3 * v + 2] as number) - z;
      const square = dx * dx + dy * dy + dz * dz;
      if (square >= reach * reach) continue;
      const depth = (UNDER_MM - off) * Math.min(1, 2 * (1 - Math.sqrt(square) / reach));
      if (depth > (depths[v] as number)) depths[v] = depth;
    }
  }
  for (let round = 0; round < EVENED; round += 1) evenOut(depths, around);
  const pressed = places.slice();
  for (const [v, depth] of depths.entries()) {
    const [i, j] = [3 * v, 3 * v + 1];
    const [x = 0, y = 0] = places.subarray(i, j + 1);
    const r = Math.hypot(x, y) || 1;
    pressed[i] = x * (1 - depth / r);
    pressed[j] = y * (1 - depth / r);
  }
  return { places: pressed, triangles };
}

/** Makes each depth at least the mean of those beside it, above it and below it. */
function evenOut(depths: Float32Array, around: number): void {
  const last = depths.slice();
  const at = (v: number): number => last[v] as number;
  for (let v = around; v < depths.length - around; v += 1) {
    const i = v % around;
    const [before, after] = [i === 0 ? v + around - 1 : v - 1, i === around - 1 ? v - around + 1 : v + 1];
    depths[v] = Math.max(at(v), (at(v - around) + at(v + around) + at(before) + at(after)) / 4);
  }
}
