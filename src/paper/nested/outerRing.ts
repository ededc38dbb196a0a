// An outline around several rings: the lines that a nest of sizes takes room by.

import type { Point } from '../../engine';
import { boxAround } from '../geometry/box';

/** Height of the bands in which the extents are taken; what lies beyond the outline is less than a band's slant. mm */
const BAND_MM = 2;

/**
 * A closed ring around rings, its first point not repeated: down along the least x of all and up along the greatest, band by band.
 * It holds every ring whose lines run from left to right without a gap at any height.
 */
export function outerRing(rings: readonly (readonly Point[])[]): Point[] {
  const box = boxAround(rings.flat());
  if (!box) return [];
  const count = Math.max(1, Math.ceil((box.bottom - box.top) / BAND_MM));
  const left = new Float64Array(count).fill(Infinity);
  const right = new Float64Array(count).fill(-Infinity);
  const bandOf = (y: number): number => Math.min(count - 1, Math.max(0, Math.floor((y - box.top) / BAND_MM)));
  for (const ring of rings)
    for (const [i, b] of ring.entries()) {
      const a = ring[(i + ring.length - 1) % ring.length] as Point;
      const [first, last] = [bandOf(Math.min(a.y, b.y)), bandOf(Math.max(a.y, b.y))];
      for (let band = first; band <= last; band += 1) {
        left[band] = Math.min(left[band] as number, xWithin(a, b, box.top + band * BAND_MM, Math.min));
        right[band] = Math.max(right[band] as number, xWithin(a, b, box.top + band * BAND_MM, Math.max));
      }
    }
  const bands = Array.from({ length: count }, (_, band) => band).filter((band) => left[band] !== Infinity);
  const edge = (side: Float64Array, band: number): Point[] => {
    const y = box.top + band * BAND_MM;
    const x = side[band] as number;
    return [
      { x, y },
      { x, y: Math.min(y + BAND_MM, box.bottom) },
    ];
  };
  return [
    ...bands.flatMap((band) => edge(left, band)),
    ...[...bands].reverse().flatMap((band) => edge(right, band).reverse()),
  ];
}

/** The least or greatest x of a segment within a band. */
function xWithin(a: Point, b: Point, top: number, pick: (one: number, other: number) => number): number {
  const at = (y: number): number => {
    if (a.y === b.y) return pick(a.x, b.x);
    const t = Math.min(1, Math.max(0, (y - a.y) / (b.y - a.y)));
    return a.x + (b.x - a.x) * t;
  };
  return a.y === b.y ? pick(a.x, b.x) : pick(at(top), at(top + BAND_MM));
}
