// What other items leave of one row: intervals that are not free, with what they belong to.

import { cellsOfRow, type Depths, depthInCells } from './depths';
import { type Lay, weightOf } from './lay';
import { countAt, NONE, type NoFit, ONE } from './noFit';

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
  const { heights } = strip;
  const count = xs.length;
  const above = -(heights[shape] as number);
  taken.count = 0;
  taken.dear = 0;
  for (let j = 0; j < count; j += 1) {
    const across = row - (rows[j] as number);
    const other = shapes[j] as number;
    if (across < above || across > (heights[other] as number) || j === i) continue;
    const { fit, depths } = strip.couple(other, shape);
    const r = across - fit.first;
    const held = countAt(fit, r);
    const x = xs[j] as number;
    if (held === NONE || x + (fit.from[r] as number) >= most) continue;
    const weight = weightOf(lay, i, j);
    if (held === ONE)
      take(taken, x + (fit.from[r] as number), x + (fit.to[r] as number), weight, depths, r, x);
    else takeSeveral(taken, fit, most, weight, depths, r, x);
  }
}

function takeSeveral(
  taken: Taken,
  fit: NoFit,
  most: number,
  weight: number,
  depths: Depths,
  r: number,
  x: number,
): void {
  const intervals = fit.several.get(r) as readonly number[];
  for (let k = 0; k < intervals.length; k += 2) {
    const from = x + (intervals[k] as number);
    if (from >= most) break;
    take(taken, from, x + (intervals[k + 1] as number), weight, depths, r, x);
  }
}

/** @param r the row from the first at which the two shapes may overlap */
function take(
  taken: Taken,
  from: number,
  to: number,
  weight: number,
  depths: Depths,
  r: number,
  x: number,
): void {
  const at = taken.count;
  if (to <= 0 || at >= MOST_TAKEN) return;
  taken.from[at] = from;
  taken.to[at] = to;
  taken.weight[at] = weight;
  taken.depths[at] = depths;
  taken.cells[at] = cellsOfRow(depths, r);
  taken.left[at] = x + depths.left;
  taken.count = at + 1;
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
  const deep = depthInCells(depths[k] as Depths, cells[k] as number, x - (left[k] as number));
  return (weight[k] as number) * Math.min(deep, x - (from[k] as number), (to[k] as number) - x);
}
