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

function measure({ strip, shapes, rows, xs, sizes, depths }: Lay, i: number): void {
  const count = xs.length;
  const [shape, row, x] = [shapes[i] as number, rows[i] as number, xs[i] as number];
  for (let j = 0; j < count; j += 1) {
    if (j === i) continue;
    const couple = strip.couple(shapes[j] as number, shape);
    const deep = depthBetween(couple, row - (rows[j] as number), x - (xs[j] as number));
    const counted = deep * (sizes[i] as number) * (sizes[j] as number);
    depths[i * count + j] = counted;
    depths[j * count + i] = counted;
  }
}

export function overlapsAny({ xs, depths }: Lay, i: number): boolean {
  const count = xs.length;
  for (let k = i * count; k < (i + 1) * count; k += 1) if ((depths[k] as number) > 0) return true;
  return false;
}

/** Items that overlap others, in their order. */
export function overlapping(lay: Lay): number[] {
  const found: number[] = [];
  for (let i = 0; i < lay.xs.length; i += 1) if (overlapsAny(lay, i)) found.push(i);
  return found;
}

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
    const [deep, weight] = [depths[k] as number, weights[k] as number];
    if (deep > 0) weights[k] = weight * (LEAST_GROWTH + ((MOST_GROWTH - LEAST_GROWTH) * deep) / deepest);
    else if (weight > 1) weights[k] = Math.max(1, weight * DECAY);
  }
}

const [LEAST_GROWTH, MOST_GROWTH, DECAY] = [1.1, 1.4, 0.97];
