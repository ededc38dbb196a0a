// A lay that is being worked on: where each item lies, how far each two overlap, and what an overlap of theirs weighs.

import { depthBetween } from './pairs/couples';
import { type Place, type Strip, shapeOf } from './strip';

export interface Lay {
  readonly strip: Strip;
  /** By item: the shape that it lies in, the row of its zero, and its zero along the cloth, mm. */
  readonly shapes: Int32Array;
  readonly rows: Int32Array;
  readonly xs: Float64Array;
  /** What an overlap of an item counts for its size: 1 in the mean. */
  readonly sizes: Float64Array;
  /** How far item i and item j overlap, mm, times both their sizes, at index i·n + j and j·n + i. */
  readonly depths: Float64Array;
  /** What one of it weighs, likewise. */
  readonly weights: Float64Array;
  /** By item, how many others it overlaps. */
  readonly overlaps: Int32Array;
}

export function layAt(strip: Strip, places: readonly Place[]): Lay {
  const count = strip.items.length;
  const lay: Lay = {
    strip,
    shapes: Int32Array.from(places, ({ shape }) => shape),
    rows: Int32Array.from(places, ({ row }) => row),
    xs: Float64Array.from(places, ({ x }) => x),
    sizes: sizesOf(strip),
    depths: new Float64Array(count * count),
    weights: new Float64Array(count * count).fill(1),
    overlaps: new Int32Array(count),
  };
  for (let i = 0; i < count; i += 1) measure(lay, i);
  return lay;
}

/** By item, the fourth root of the area of its box, over the mean: of two overlaps as deep that of larger items is worse. */
function sizesOf(strip: Strip): Float64Array {
  const roots = Float64Array.from(strip.items, ({ ways: [way = 0] }) => {
    const { length, width } = shapeOf(strip, way);
    return (length * width) ** 0.25;
  });
  const mean = roots.reduce((sum, root) => sum + root, 0) / roots.length;
  return roots.map((root) => root / mean);
}

/** Where each item lies, or would with other `xs`. */
export const placesIn = ({ shapes, rows, xs: own }: Lay, xs = own): Place[] =>
  Array.from(xs, (x, i) => ({ shape: shapes[i] as number, row: rows[i] as number, x }));

export function move(lay: Lay, i: number, { shape, row, x }: Place): void {
  lay.shapes[i] = shape;
  lay.rows[i] = row;
  lay.xs[i] = x;
  measure(lay, i);
}

function measure({ strip, shapes, rows, xs, sizes, depths, overlaps }: Lay, i: number): void {
  const { heights, lengths } = strip;
  const count = xs.length;
  const shape = shapes[i] as number;
  const row = rows[i] as number;
  const x = xs[i] as number;
  const above = -(heights[shape] as number);
  const end = x + (lengths[shape] as number);
  for (let j = 0; j < count; j += 1) {
    if (j === i) continue;
    const other = shapes[j] as number;
    const across = row - (rows[j] as number);
    const along = x - (xs[j] as number);
    let counted = 0;
    if (
      across >= above &&
      across <= (heights[other] as number) &&
      along < (lengths[other] as number) &&
      end > (xs[j] as number)
    )
      counted =
        depthBetween(strip.couple(other, shape), across, along) * (sizes[i] as number) * (sizes[j] as number);
    const before = depths[i * count + j] as number;
    if (before === counted) continue;
    depths[i * count + j] = counted;
    depths[j * count + i] = counted;
    const change = Number(counted > 0) - Number(before > 0);
    overlaps[i] = (overlaps[i] as number) + change;
    overlaps[j] = (overlaps[j] as number) + change;
  }
}

export const overlapsAny = ({ overlaps }: Lay, i: number): boolean => (overlaps[i] as number) > 0;

/** Items that overlap others, in their order. */
export function overlapping(lay: Lay): number[] {
  const found: number[] = [];
  for (let i = 0; i < lay.xs.length; i += 1) if (overlapsAny(lay, i)) found.push(i);
  return found;
}

/** All overlaps added up, mm. */
export function totalDepth({ depths, overlaps }: Lay): number {
  const count = overlaps.length;
  let sum = 0;
  for (let i = 0; i < count; i += 1) {
    if (overlaps[i] === 0) continue;
    for (let k = i * count + i + 1; k < (i + 1) * count; k += 1) sum += depths[k] as number;
  }
  return sum;
}

/** What is used along the cloth, mm. */
export const usedLength = (strip: Strip, places: readonly Place[]): number =>
  places.reduce((most, { shape, x }) => Math.max(most, x + shapeOf(strip, shape).length), 0);

/** Weighs the overlaps that are left more, the deepest most, and lets the others lose weight. */
export function weigh(lay: Lay): void {
  const { depths, weights } = lay;
  const count = lay.xs.length;
  const deepest = deepestOverlap(lay);
  for (let i = 0; i < count; i += 1)
    for (let j = i + 1; j < count; j += 1) {
      const k = i * count + j;
      const deep = depths[k] as number;
      const weight = weights[k] as number;
      if (deep === 0 && weight === 1) continue;
      const next =
        deep > 0
          ? weight * (LEAST_GROWTH + ((MOST_GROWTH - LEAST_GROWTH) * deep) / deepest)
          : Math.max(1, weight * DECAY);
      weights[k] = next;
      weights[j * count + i] = next;
    }
}

function deepestOverlap({ depths, overlaps }: Lay): number {
  const count = overlaps.length;
  let deepest = 0;
  for (let i = 0; i < count; i += 1) {
    if (overlaps[i] === 0) continue;
    for (let k = i * count + i + 1; k < (i + 1) * count; k += 1) {
      const deep = depths[k] as number;
      if (deep > deepest) deepest = deep;
    }
  }
  return deepest;
}

const [LEAST_GROWTH, MOST_GROWTH, DECAY] = [1.1, 1.4, 0.97];
