// What other items leave of one row: intervals that are not free, with what they belong to.

import type { Lay } from './lay';
import { type Couple, depthsIn, rowIn } from './pairs/couples';
import { cellsOfRow, type Depths, depthInCells } from './pairs/depths';
import { countAt, NONE, ONE } from './pairs/noFit';

/** Room for the intervals of a row, used again for each; the first `count` hold. */
export interface Taken {
  count: number;
  /** mm along the cloth. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** The weight of a mm. */
  readonly weight: Float64Array;
  /** The depths in the shape that takes it, the index of their row, and where their first column stands along the cloth, mm; with
   *  the sign 1 their columns run along the cloth, with -1 against it. */
  readonly depths: Depths[];
  readonly cells: Int32Array;
  readonly left: Float64Array;
  readonly sign: Int8Array;
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
  sign: new Int8Array(MOST_TAKEN),
  dear: 0,
});

/** Collects what the others take of a row from 0 to `most` mm, for item `i` in the way `shape`, whose first row it is. */
export function collect(taken: Taken, lay: Lay, i: number, shape: number, row: number, most: number): void {
  const { strip, shapes, rows, xs, sizes, weights } = lay;
  const { heights } = strip;
  const count = xs.length;
  const [size, own] = [sizes[i] as number, i * count];
  const above = -(heights[shape] as number);
  taken.count = 0;
  taken.dear = 0;
  for (let j = 0; j < count; j += 1) {
    const across = row - (rows[j] as number);
    const other = shapes[j] as number;
    if (across < above || across > (heights[other] as number) || j === i) continue;
    const couple = strip.couple(other, shape);
    const { table, sign, shift } = couple;
    const { fit } = table;
    const r = rowIn(couple, across);
    const held = countAt(fit, r);
    if (held === NONE) continue;
    const weight = (weights[own + j] as number) * size * (sizes[j] as number);
    // Of the table's zero, on the side of the other on which its distances grow.
    const zero = (xs[j] as number) - sign * shift;
    if (held === ONE) take(taken, couple, r, fit.from[r] as number, fit.to[r] as number, zero, most, weight);
    else {
      const several = fit.several.get(r) as readonly number[];
      for (let k = 0; k < several.length; k += 2)
        take(taken, couple, r, several[k] as number, several[k + 1] as number, zero, most, weight);
    }
  }
}

/**
 * Adds an interval of a row of a table, unless it lies before 0 or from `most` mm on.
 *
 * @param r the row from the first at which the two shapes may overlap
 * @param start the interval in the table, from `start` to `end`, mm
 * @param zero where the table's zero lies along the cloth, mm
 */
function take(
  taken: Taken,
  { table, sign }: Couple,
  r: number,
  start: number,
  end: number,
  zero: number,
  most: number,
  weight: number,
): void {
  const at = taken.count;
  const from = zero + (sign > 0 ? start : -end);
  const to = zero + (sign > 0 ? end : -start);
  if (to <= 0 || from >= most || at >= MOST_TAKEN) return;
  const depths = depthsIn(table);
  taken.from[at] = from;
  taken.to[at] = to;
  taken.weight[at] = weight;
  taken.depths[at] = depths;
  taken.cells[at] = cellsOfRow(depths, r);
  taken.left[at] = zero + sign * depths.left;
  taken.sign[at] = sign;
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

function priceOf({ from, to, weight, depths, cells, left, sign }: Taken, k: number, x: number): number {
  const along = (x - (left[k] as number)) * (sign[k] as number);
  const deep = depthInCells(depths[k] as Depths, cells[k] as number, along);
  return (weight[k] as number) * Math.min(deep, x - (from[k] as number), (to[k] as number) - x);
}
