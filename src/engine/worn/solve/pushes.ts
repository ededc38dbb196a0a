// Ways to push a garment that is at rest, to see whether it comes to another rest of less energy.

import { type Ground, standOffAt } from '../cloth/ground';

/** Waves of this height, mm, so many round the body, and by how much of a turn they are farther on 1 mm higher, rad. */
const HEIGHT_MM = 12;
const WAVES = 5;
const TURN = 1 / 30;

/** What stands off is pushed in by this many times its stand-off, so that it lies half as far inside the body. */
const PUSHED_IN = 1.5;

/**
 * The places of cloth at rest, x, y and z of each vertex, pushed along the radius in two ways: into waves round the body, and in where it
 * stands off. The first leads from one ripple of a free edge to the other, the second from a back that stands off to one that lies in
 * the hollow, and the other way round. Of waves of 8 mm some led back.
 */
export const pushesOf = (places: Float64Array, ground: Ground): readonly Float64Array[] => [
  pushed(places, (x, y, z) => HEIGHT_MM * Math.sin(WAVES * Math.atan2(x, y) + TURN * z)),
  pushed(places, (x, y, z) => -PUSHED_IN * Math.max(0, standOffAt(ground, x, y, z).off)),
];

/** @param by how far a place is pushed out, mm */
function pushed(places: Float64Array, by: (x: number, y: number, z: number) => number): Float64Array {
  const to = places.slice();
  for (let v = 0; v < places.length; v += 3) {
    const [x, y, z] = [places[v]!, places[v + 1]!, places[v + 2]!];
    const part = 1 + by(x, y, z) / Math.hypot(x, y);
    to[v] = x * part;
    to[v + 1] = y * part;
  }
  return to;
}
