// Where one shape overlaps another: the distances along the cloth that are not free, for each distance across it in rows.

import type { LayShape } from './layShape';

/**
 * For two shapes A and B, with B's zero `across` rows below A's: the open intervals along the cloth from A's zero within which B's
 * must not lie. Known as the no-fit polygon, here by rows, each made when it is first asked for.
 */
export interface NoFit {
  /** The least and the greatest `across` at which they may overlap. */
  readonly first: number;
  readonly last: number;
  /** Rows from {@link first} that have been made, and how one is made. */
  readonly made: (Float64Array | undefined)[];
  readonly make: (across: number) => Float64Array;
}

/** Two numbers for each interval, mm, growing and apart. Empty outside the rows at which they may overlap. */
export function intervalsAt(fit: NoFit, across: number): Float64Array {
  const { first, last, made } = fit;
  if (across < first || across > last) return NONE;
  const known = made[across - first];
  if (known) return known;
  const intervals = fit.make(across);
  made[across - first] = intervals;
  return intervals;
}

/** Shapes are kept so far apart, so that rounding never lays one on the other. mm */
export const APART_MM = 1e-6;

const NONE = new Float64Array(0);

/** @param rowHeight mm */
export function noFit(a: LayShape, b: LayShape, rowHeight: number): NoFit {
  return byRows(-Math.floor(b.width / rowHeight), Math.floor(a.width / rowHeight), (across) =>
    overlaps(a, b, across * rowHeight),
  );
}

/** The same two shapes the other way round: where A must not lie beside B. */
export function swappedNoFit(fit: NoFit): NoFit {
  return byRows(-fit.last, -fit.first, (across) =>
    intervalsAt(fit, -across)
      .map((x) => -x)
      .reverse(),
  );
}

const byRows = (first: number, last: number, make: (across: number) => Float64Array): NoFit => ({
  first,
  last,
  made: new Array(last - first + 1).fill(undefined),
  make,
});

/** The intervals with B's zero `down` mm below A's. */
function overlaps(a: LayShape, b: LayShape, down: number): Float64Array {
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
  return apart.length === 0 ? NONE : Float64Array.from(apart);
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
