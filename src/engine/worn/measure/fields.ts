// What the sewn cloth does at every place: strain, distance from the body, contact.

import { standOffAt } from '../cloth/ground';
import type { Draped } from '../solve/drape';

/** Strains by triangle, no unit; the others by sewn vertex. */
export interface Fields {
  /** Along and across the grain: longer is above zero. */
  readonly warp: Float64Array;
  readonly weft: Float64Array;
  /** How far the angle between warp and weft is from a right angle, rad. */
  readonly shear: Float64Array;
  /** Distance from the skin, mm; below zero where the cloth presses into it. */
  readonly standOff: Float64Array;
  /** Pressure of the estimated ground, kPa. It compares places and drafts, and says nothing of what a body bears. */
  readonly contact: Float64Array;
}

/** kPa in one N/mm². */
export const KPA = 1000;

/** Measures the fields of a garment at its places. */
export function fieldsOf({ garment, places: X }: Pick<Draped, 'garment' | 'places'>): Fields {
  const { vertices, inverse, areas, vertexAreas } = garment.membrane;
  const [warp, weft, shear] = [0, 1, 2].map(() => new Float64Array(areas.length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const [u, v] = [new Float64Array(3), new Float64Array(3)];
  for (let t = 0; t < areas.length; t += 1) {
    const [a, b, c] = [3 * vertices[3 * t]!, 3 * vertices[3 * t + 1]!, 3 * vertices[3 * t + 2]!];
    for (let j = 0; j < 3; j += 1) {
      const [e1, e2] = [X[b + j]! - X[a + j]!, X[c + j]! - X[a + j]!];
      u[j] = e1 * inverse[4 * t]! + e2 * inverse[4 * t + 2]!;
      v[j] = e1 * inverse[4 * t + 1]! + e2 * inverse[4 * t + 3]!;
    }
    const [lu, lv] = [Math.hypot(...u), Math.hypot(...v)];
    weft[t] = lu - 1;
    warp[t] = lv - 1;
    const cosine = (u[0]! * v[0]! + u[1]! * v[1]! + u[2]! * v[2]!) / (lu * lv);
    shear[t] = Math.asin(Math.max(-1, Math.min(1, cosine)));
  }
  const standOff = new Float64Array(vertexAreas.length);
  const contact = new Float64Array(vertexAreas.length);
  for (let i = 0; i < standOff.length; i += 1) {
    const { off, pressure } = standOffAt(garment.ground, X[3 * i]!, X[3 * i + 1]!, X[3 * i + 2]!);
    standOff[i] = off;
    contact[i] = KPA * pressure;
  }
  return { warp, weft, shear, standOff, contact };
}
