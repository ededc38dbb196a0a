// What a tape reads round a section: the length of its convex hull.

/** Columns of the surface: directions from 0 (front) to π (back), both included, evenly apart. */
export const COLUMNS = 181;

/** Angle between two columns, rad. */
export const COLUMN_STEP = Math.PI / (COLUMNS - 1);

/** Sine and cosine of each column's direction: x to the side, y forwards. */
export const SINES = Float64Array.from({ length: COLUMNS }, (_, i) => Math.sin(i * COLUMN_STEP));
export const COSINES = Float64Array.from({ length: COLUMNS }, (_, i) => Math.cos(i * COLUMN_STEP));

/**
 * Length of the convex hull of a section that is alike on both sides, mm: a tape spans hollows. Graham scan of one half in the
 * order of its columns, which lie round the axis.
 *
 * @param radii distance from the axis in each column, front to back, mm
 */
export function tapeLength(radii: Float64Array): number {
  let [top, bottom] = [0, COLUMNS - 1];
  for (let i = 0; i < COLUMNS; i += 1) {
    xs[i] = radii[i]! * SINES[i]!;
    ys[i] = radii[i]! * COSINES[i]!;
    if (ys[i]! > ys[top]!) top = i;
    if (ys[i]! < ys[bottom]!) bottom = i;
  }
  let size = 0;
  for (let i = top; i <= bottom; i += 1) {
    while (size > 1) {
      const a = hull[size - 2]!;
      const b = hull[size - 1]!;
      const turn = (xs[b]! - xs[a]!) * (ys[i]! - ys[a]!) - (ys[b]! - ys[a]!) * (xs[i]! - xs[a]!);
      if (turn < 0) break;
      size -= 1;
    }
    hull[size] = i;
    size += 1;
  }
  let half = xs[top]! + xs[bottom]!;
  for (let k = 1; k < size; k += 1) {
    const [a, b] = [hull[k - 1]!, hull[k]!];
    half += Math.sqrt((xs[b]! - xs[a]!) ** 2 + (ys[b]! - ys[a]!) ** 2);
  }
  return 2 * half;
}

const xs = new Float64Array(COLUMNS);
const ys = new Float64Array(COLUMNS);
const hull = new Int32Array(COLUMNS);
