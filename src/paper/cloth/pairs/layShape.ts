// An outline on a strip of cloth as slabs between its corners, from which is told where another would lie on it.

import type { Point } from '../../../engine';

/** An outline in one of the ways it may lie: x along the cloth, y across it, mm, the least x at 0 and the least y at its inset. */
export interface LayShape {
  readonly outline: readonly Point[];
  /** Along the cloth, mm. */
  readonly length: number;
  /** Across the cloth from 0 to its greatest y, mm. */
  readonly width: number;
  /** Its least y, mm: 0, or less than a row where it is the mirror image of another in the rows of that one. */
  readonly inset: number;
  /** The heights of its corners, mm, growing; a slab lies between each two neighbours. */
  readonly ys: Float64Array;
  /** The spans of slab `k` are those with index `starts[k]` to `starts[k + 1]` less one. */
  readonly starts: Int32Array;
  /** Four numbers for each span, mm: its left end at the slab's first and second height, and its right end likewise. */
  readonly spans: Float64Array;
}

/** Corners nearer than this in height are at one height. mm */
const ONE_HEIGHT_MM = 1e-7;

/**
 * @param ring a simple ring, x along the cloth and y across it, mm; its end not repeated
 * @param inset mm
 */
export function layShape(ring: readonly Point[], inset = 0): LayShape {
  const [left, right] = extent(ring.map(({ x }) => x));
  const [first, last] = extent(ring.map(({ y }) => y));
  const outline = ring.map(({ x, y }) => ({ x: x - left, y: y - first + inset }));
  const ys = heights(outline);
  const starts = new Int32Array(ys.length);
  const spans: number[] = [];
  for (let k = 0; k + 1 < ys.length; k += 1) {
    const [from, to] = [ys[k] as number, ys[k + 1] as number];
    const sides = crossing(outline, from, to);
    for (let i = 1; i < sides.length; i += 2) spans.push(...(sides[i - 1] as Side), ...(sides[i] as Side));
    starts[k + 1] = spans.length / 4;
  }
  return {
    outline,
    length: right - left,
    width: last - first + inset,
    inset,
    ys: Float64Array.from(ys),
    starts,
    spans: Float64Array.from(spans),
  };
}

type Side = readonly [atFirst: number, atSecond: number];

const extent = (values: readonly number[]): readonly [least: number, most: number] => [
  Math.min(...values),
  Math.max(...values),
];

function heights(outline: readonly Point[]): number[] {
  const all = outline.map(({ y }) => y).sort((p, q) => p - q);
  return all.filter((y, i) => i === 0 || y - (all[i - 1] as number) > ONE_HEIGHT_MM);
}

/** The x at both heights of each side that crosses a slab, from left to right. */
function crossing(outline: readonly Point[], from: number, to: number): Side[] {
  const middle = (from + to) / 2;
  const sides: Side[] = [];
  for (const [i, a] of outline.entries()) {
    const b = outline[(i + 1) % outline.length] ?? a;
    if (a.y > middle === b.y > middle) continue;
    const xAt = (y: number): number => a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
    sides.push([xAt(from), xAt(to)]);
  }
  return sides.sort((p, q) => p[0] + p[1] - q[0] - q[1]);
}
