// Where one shape overlaps another: the distances along the cloth that are not free, for each distance across it in rows.

import type { LayShape } from './layShape';

/**
 * For two shapes A and B, with B's zero `across` rows below A's: the open intervals along the cloth from A's zero within which B's
 * must not lie. Known as the no-fit polygon, here by rows, each made when it is first asked for.
 */
export interface NoFit {
  /** They overlap only where `across` is at least the first and at most the last. */
  readonly first: number;
  readonly last: number;
  /** By rows from {@link first}: how many intervals there are, {@link NONE}, {@link ONE}, more, or not made yet. */
  readonly counts: Uint8Array;
  /** The first interval of each row, mm; set where there is one. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** All intervals of the rows that have several. */
  readonly several: Map<number, readonly number[]>;
  readonly make: (across: number) => readonly number[];
}

/** What {@link NoFit.counts} says of a row. */
const [NOT_MADE, NONE, ONE, SEVERAL] = [0, 1, 2, 3] as const;

export { NONE, ONE };

/** How many intervals row `r` from the first has, as in {@link NoFit.counts}; never {@link NOT_MADE}. */
export function countAt(fit: NoFit, r: number): number {
  const known = fit.counts[r] as number;
  if (known !== NOT_MADE) return known;
  const intervals = fit.make(fit.first + r);
  const count = intervals.length === 0 ? NONE : intervals.length === 2 ? ONE : SEVERAL;
  fit.counts[r] = count;
  if (count !== NONE) {
    fit.from[r] = intervals[0] as number;
    fit.to[r] = intervals[1] as number;
  }
  if (count === SEVERAL) fit.several.set(r, intervals);
  return count;
}

/** Two numbers for each interval, mm, growing and apart. Empty outside the rows at which they may overlap. */
export function intervalsAt(fit: NoFit, across: number): readonly number[] {
  if (across < fit.first || across > fit.last) return [];
  const r = across - fit.first;
  const count = countAt(fit, r);
  if (count === NONE) return [];
  return count === ONE
    ? [fit.from[r] as number, fit.to[r] as number]
    : (fit.several.get(r) as readonly number[]);
}

/** Shapes are kept so far apart, so that rounding never lays one on the other. mm */
export const APART_MM = 1e-6;

/** How many rows a shape takes up, the last one often in part: two overlap only where their zeros lie less than that apart. */
export const rowsHigh = ({ width }: LayShape, rowHeight: number): number =>
  Math.ceil(width / rowHeight - APART_MM);

/** @param rowHeight mm */
export function noFit(a: LayShape, b: LayShape, rowHeight: number): NoFit {
  const [first, last] = [-rowsHigh(b, rowHeight), rowsHigh(a, rowHeight)];
  const rows = last - first + 1;
  return {
    first,
    last,
    counts: new Uint8Array(rows),
    from: new Float64Array(rows),
    to: new Float64Array(rows),
    several: new Map(),
    make: (across) => overlaps(a, b, across * rowHeight),
  };
}

/** The intervals with B's zero `down` mm below A's. */
function overlaps(a: LayShape, b: LayShape, down: number): readonly number[] {
  const apart: number[] = [];
  let [i, j] = [0, 0];
  while (i + 1 < a.ys.length && j + 1 < b.ys.length) {
    const [aEnd, bEnd] = [a.ys[i + 1] as number, (b.ys[j + 1] as number) + down];
    const from = Math.max(a.ys[i] as number, (b.ys[j] as number) + down);
    const to = Math.min(aEnd, bEnd);
    if (to - from > APART_MM) joinSlabs(apart, a, i, b, j, down, from, to);
    if (aEnd <= bEnd) i += 1;
    else j += 1;
  }
  return apart;
}

/** Adds what two slabs do not leave free between the heights `from` and `to`, mm from A's zero. */
function joinSlabs(
  apart: number[],
  a: LayShape,
  i: number,
  b: LayShape,
  j: number,
  down: number,
  from: number,
  to: number,
): void {
  const [aTop, aFoot] = [a.ys[i] as number, a.ys[i + 1] as number];
  const [bTop, bFoot] = [(b.ys[j] as number) + down, (b.ys[j + 1] as number) + down];
  const [aFrom, aTo] = [(from - aTop) / (aFoot - aTop), (to - aTop) / (aFoot - aTop)];
  const [bFrom, bTo] = [(from - bTop) / (bFoot - bTop), (to - bTop) / (bFoot - bTop)];
  for (let p = a.starts[i] as number; p < (a.starts[i + 1] as number); p += 1)
    for (let q = b.starts[j] as number; q < (b.starts[j + 1] as number); q += 1)
      // Both ends change evenly from one height to the other, so that they are farthest out at one of the two.
      insert(
        apart,
        Math.min(
          sideAt(a.spans, 4 * p, aFrom) - sideAt(b.spans, 4 * q + 2, bFrom),
          sideAt(a.spans, 4 * p, aTo) - sideAt(b.spans, 4 * q + 2, bTo),
        ) - APART_MM,
        Math.max(
          sideAt(a.spans, 4 * p + 2, aFrom) - sideAt(b.spans, 4 * q, bFrom),
          sideAt(a.spans, 4 * p + 2, aTo) - sideAt(b.spans, 4 * q, bTo),
        ) + APART_MM,
      );
}

const sideAt = (spans: Float64Array, k: number, part: number): number => {
  const start = spans[k] as number;
  return start + ((spans[k + 1] as number) - start) * part;
};

/** Puts an interval into a flat list of intervals that are apart, joined with those that it meets. */
function insert(apart: number[], start: number, end: number): void {
  let i = 0;
  while (i < apart.length && (apart[i + 1] as number) < start) i += 2;
  let [from, to, j] = [start, end, i];
  while (j < apart.length && (apart[j] as number) <= end) {
    from = Math.min(from, apart[j] as number);
    to = Math.max(to, apart[j + 1] as number);
    j += 2;
  }
  if (j - i === 2) {
    apart[i] = from;
    apart[i + 1] = to;
  } else apart.splice(i, j - i, from, to);
}
