// From where the garment is looked at, and what is seen at a place of the picture.

import type { Extent } from './extent';
import type { WornPicture } from './wornPicture';

export interface Camera {
  /** Turned about the upright axis, rad: 0 sees the front, π/2 the wearer's left side, π the back. */
  readonly turn: number;
  /** Looked down on, rad. */
  readonly tilt: number;
  /** Times the size at which the garment fills the picture. */
  readonly zoom: number;
}

export const FRONT: Camera = { turn: 0, tilt: 0.08, zoom: 1 };
export const VIEWS = { front: 0, side: Math.PI / 2, back: Math.PI } as const;

/** Turned from a view by less than this it still is that view, rad. */
const STILL_SEEN = 0.26;

/** Whether the camera looks from the front, the side or the back, or nearly so. */
export function isSeenFrom({ turn }: Camera, view: keyof typeof VIEWS): boolean {
  const away = (turn - VIEWS[view]) / (2 * Math.PI);
  return Math.abs(away - Math.round(away)) * 2 * Math.PI < STILL_SEEN;
}

/** One press of a key or button that zooms. */
export const KEY_ZOOM = 1.15;

const MOST_TILT = 1.2;
const ZOOMS = { least: 0.6, most: 6 } as const;

/** The camera turned and zoomed, within its limits. */
export const moved = (
  { turn, tilt, zoom }: Camera,
  by: { turn?: number; tilt?: number; zoom?: number },
): Camera => ({
  turn: turn + (by.turn ?? 0),
  tilt: Math.max(-MOST_TILT, Math.min(MOST_TILT, tilt + (by.tilt ?? 0))),
  zoom: Math.max(ZOOMS.least, Math.min(ZOOMS.most, zoom * (by.zoom ?? 1))),
});

/** Middle and half size of what is shown, mm. */
export interface Frame {
  readonly middle: number;
  readonly half: number;
}

/** So much of the body is seen above the garment and below it, mm. */
const ROUND_MM = 55;

/**
 * What garments seen side by side need: from their top to their hem and from side to side, with some of the body round them.
 *
 * @param aspect width of one picture over its height
 */
export function frameOf(pictures: readonly Pick<WornPicture, 'extent'>[], aspect: number): Frame {
  const most = (of: keyof Extent, sign = 1): number =>
    sign * Math.max(...pictures.map(({ extent }) => sign * extent[of]));
  const [top, bottom, out] = [most('top'), most('bottom', -1), most('out')];
  return { middle: (top + bottom) / 2, half: Math.max((top - bottom) / 2 + ROUND_MM, (out + 15) / aspect) };
}

/** Rows of the matrix that turns x, y, z in mm into right, up and towards the viewer, each −1 to 1 across the picture's height. */
export function projection({ turn, tilt, zoom }: Camera, { middle, half }: Frame): Float32Array {
  const [ct, st, cp, sp] = [Math.cos(turn), Math.sin(turn), Math.cos(tilt), Math.sin(tilt)];
  const s = zoom / half;
  // Seen from the front, the wearer's left is on the right.
  const right = [ct, -st, 0];
  const towards = [st * cp, ct * cp, sp];
  const up = [-st * sp, -ct * sp, cp];
  const row = ([x = 0, y = 0, z = 0]: readonly number[]): number[] => [s * x, s * y, s * z, -s * z * middle];
  return Float32Array.from([...row(right), ...row(up), ...row(towards)]);
}

/** Right, up and towards of a point, as {@link projection} has them. */
export const projected = (m: Float32Array, x: number, y: number, z: number): [number, number, number] =>
  [0, 4, 8].map(
    (r) => (m[r] as number) * x + (m[r + 1] as number) * y + (m[r + 2] as number) * z + (m[r + 3] as number),
  ) as [number, number, number];

export interface Seen {
  readonly triangle: number;
  /** The vertex nearest to the place. */
  readonly vertex: number;
}

/** The foremost triangle of the cloth at a place of the picture (right and up from its middle, −1 to 1 over its height). */
export function seenAt(
  { places, triangles }: WornPicture,
  m: Float32Array,
  right: number,
  up: number,
): Seen | null {
  const at: [number, number, number][] = [];
  for (let i = 0; i < places.length; i += 3)
    at.push(projected(m, places[i] as number, places[i + 1] as number, places[i + 2] as number));
  let best: Seen | null = null;
  let nearest = Number.NEGATIVE_INFINITY;
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => triangles[t + k] as number);
    const [a, b, c] = corners.map((v) => at[v]) as [number, number, number][];
    if (!a || !b || !c) continue;
    const area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    const u = ((right - a[0]) * (c[1] - a[1]) - (up - a[1]) * (c[0] - a[0])) / area;
    const v = ((b[0] - a[0]) * (up - a[1]) - (b[1] - a[1]) * (right - a[0])) / area;
    if (!(u >= 0 && v >= 0 && u + v <= 1)) continue;
    const depth = a[2] + u * (b[2] - a[2]) + v * (c[2] - a[2]);
    if (depth <= nearest) continue;
    nearest = depth;
    const weights = [1 - u - v, u, v];
    const most = weights.indexOf(Math.max(...weights));
    best = { triangle: t / 3, vertex: corners[most] ?? 0 };
  }
  return best;
}
