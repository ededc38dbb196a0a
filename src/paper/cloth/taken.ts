// What other items leave of one row: intervals that are not free, with what they belong to.

import { cellsOfRow, type Depths, LEAST_PART } from './depths';
import { type Lay, weightOf } from './lay';
import { intervalsAt } from './noFit';

/** Room for the intervals of a row, used again for each; the first `count` hold. */
export interface Taken {
  count: number;
  /** mm along the cloth. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** The weight of a mm. */
  readonly weight: Float64Array;
  /** The depths in the shape that takes it, the index of their row, and where their first column stands along the cloth, mm. */
  readonly depths: Depths[];
  readonly cells: Int32Array;
  readonly left: Float64Array;
  /** The interval that last made a place too dear: the next place often lies in it as well, so that it is asked first. */
  dear: number;
}

const MOST_TAKEN = 4096;

export const roomForTaken = (): Taken => ({
  count: 0,
  from: new Float64Array(MOST_TAKEN),
  to: new Float64Array(MOST_TAKEN),
  weight: new Float64Array(MOST_TAKEN),
  depths: [],
  cells: new Int32Array(MOST_TAKEN),
  left: new Float64Array(MOST_TAKEN),
  dear: 0,
});

/** Collects what the others take of a row from 0 to `most` mm, for item `i` in the way `shape`, whose first row it is. */
export function collect(taken: Taken, lay: Lay, i: number, shape: number, row: number, most: number): void {
  const { strip, shapes, rows, xs } = lay;
  const count = xs.length;
  let at = 0;
  for (let j = 0; j < count; j += 1) {
    if (j === i) continue;
    const { fit, depths } = strip.couple(shapes[j] as number, shape);
    const across = row - (rows[j] as number);
    if (across < fit.first || across > fit.last) continue;
    const intervals = intervalsAt(fit, across);
    const x = xs[j] as number;
    for (let k = 0; k < intervals.length && at < MOST_TAKEN; k += 2) {
      const from = x + (intervals[k] as number);
      const to = x + (intervals[k + 1] as number);
      if (to <= 0 || from >= most) continue;
      taken.from[at] = from;
      taken.to[at] = to;
      taken.weight[at] = weightOf(lay, i, j);
      taken.depths[at] = depths;
      taken.cells[at] = cellsOfRow(depths, across - fit.first);
      taken.left[at] = x + depths.left;
      at += 1;
    }
  }
  taken.count = at;
  taken.dear = 0;
}

/** What a place at `x` mm costs: the weighted depths of all intervals in which it lies; added up no further than to `below`. */
export function costAt(taken: Taken, x: number, below: number): number {
  const { count, from, to, dear } = taken;
  if (dear < count && x > (from[dear] as number) && x < (to[dear] as number)) {
    const cost = priceOf(taken, dear, x);
    if (cost >= below) return cost;
  }
  let cost = 0;
  for (let k = 0; k < count; k += 1) {
    if (x <= (from[k] as number) || x >= (to[k] as number)) continue;
    cost += priceOf(taken, k, x);
    if (cost < below) continue;
    taken.dear = k;
    break;
  }
  return cost;
}

function priceOf({ from, to, weight, depths, cells, left }: Taken, k: number, x: number): number {
  const { distances, cell } = depths[k] as Depths;
  const column = Math.round((x - (left[k] as number)) / cell);
  let deep = Math.max(LEAST_PART * cell, distances[(cells[k] as number) + column] ?? 0);
  deep = Math.min(deep, x - (from[k] as number), (to[k] as number) - x);
  return (weight[k] as number) * deep;
}
