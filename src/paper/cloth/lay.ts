// A lay that is being worked on: where each item lies, how far each two overlap, and what an overlap of theirs weighs.

import { depth, type Place, type Strip, shapeOf } from './strip';

export interface Lay {
  readonly strip: Strip;
  /** By item. */
  readonly places: Place[];
  /** How far item i and item j overlap, mm, at index i·n + j and j·n + i. */
  readonly depths: Float64Array;
  /** What a mm of it weighs, likewise. */
  readonly weights: Float64Array;
}

export function layAt(strip: Strip, places: readonly Place[]): Lay {
  const count = strip.items.length;
  const lay: Lay = {
    strip,
    places: [...places],
    depths: new Float64Array(count * count),
    weights: new Float64Array(count * count).fill(1),
  };
  for (let i = 0; i < count; i += 1) measure(lay, i);
  return lay;
}

export function move(lay: Lay, i: number, place: Place): void {
  lay.places[i] = place;
  measure(lay, i);
}

function measure({ strip, places, depths }: Lay, i: number): void {
  const count = places.length;
  const place = places[i] as Place;
  for (let j = 0; j < count; j += 1) {
    if (j === i) continue;
    const other = places[j] as Place;
    const deep = depth(strip, other.shape, place.shape, place.row - other.row, place.x - other.x);
    depths[i * count + j] = deep;
    depths[j * count + i] = deep;
  }
}

export function overlapsAny({ places, depths }: Lay, i: number): boolean {
  const count = places.length;
  for (let k = i * count; k < (i + 1) * count; k += 1) if ((depths[k] as number) > 0) return true;
  return false;
}

/** Items that overlap others, in their order. */
export const overlapping = (lay: Lay): number[] =>
  lay.places.flatMap((_, i) => (overlapsAny(lay, i) ? [i] : []));

/** All overlaps added up, mm. */
export function totalDepth({ depths }: Lay): number {
  let sum = 0;
  for (let k = 0; k < depths.length; k += 1) sum += depths[k] as number;
  return sum / 2;
}

/** What is used along the cloth, mm. */
export const usedLength = (strip: Strip, places: readonly Place[]): number =>
  places.reduce((most, { shape, x }) => Math.max(most, x + shapeOf(strip, shape).length), 0);

/** Weighs the overlaps that are left more, the deepest most, and lets the others lose weight. */
export function weigh({ depths, weights }: Lay): void {
  let deepest = 0;
  for (let k = 0; k < depths.length; k += 1) deepest = Math.max(deepest, depths[k] as number);
  for (let k = 0; k < depths.length; k += 1) {
    const deep = depths[k] as number;
    weights[k] =
      deep > 0
        ? (weights[k] as number) * (LEAST_GROWTH + ((MOST_GROWTH - LEAST_GROWTH) * deep) / deepest)
        : Math.max(1, (weights[k] as number) * DECAY);
  }
}

const [LEAST_GROWTH, MOST_GROWTH, DECAY] = [1.1, 1.4, 0.97];
