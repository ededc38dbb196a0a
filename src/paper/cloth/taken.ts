// What other items leave of one row: intervals that are not free, with what they belong to.

import type { Lay } from './lay';
import { depthsIn, rowIn } from './pairs/couples';
import { cellsOfRow, PARTS } from './pairs/depths';
import { countAt, NONE, ONE } from './pairs/noFit';

/** Room for the intervals of a row, used again for each; the first `count` hold. */
export interface Taken {
  count: number;
  /** mm along the cloth. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** The weight of a part of a cell. */
  readonly weight: Float64Array;
  /**
   * The depths in the shape that takes it; the cell at x = 0 in this row, half a cell on, so that the whole part of a sum is the
   * nearest cell; and cells for each mm along the cloth, less than 0 where they run against it.
   */
  readonly parts: Uint8Array[];
  readonly cells: Float64Array;
  readonly perMm: Float64Array;
  /** The interval that last made a place too dear: the next place often lies in it as well, so that it is asked first. */
  dear: number;
}

const MOST_TAKEN = 4096;

export const roomForTaken = (): Taken => ({
  count: 0,
  from: new Float64Array(MOST_TAKEN),
  to: new Float64Array(MOST_TAKEN),
  weight: new Float64Array(MOST_TAKEN),
  parts: [],
  cells: new Float64Array(MOST_TAKEN),
  perMm: new Float64Array(MOST_TAKEN),
  dear: 0,
});

/** Collects what the others take of a row from 0 to `most` mm, for item `i` in the way `shape`, whose first row it is. */
export function collect(taken: Taken, lay: Lay, i: number, shape: number, row: number, most: number): void {
  const { strip, shapes, rows, xs, sizes, weights } = lay;
  const { heights } = strip;
  const count = xs.length;
  const size = sizes[i] as number;
  const own = i * count;
  const above = -(heights[shape] as number);
  let found = 0;
  taken.dear = 0;
  for (let j = 0; j < count; j += 1) {
    const across = row - (rows[j] as number);
    const other = shapes[j] as number;
    const x = xs[j] as number;
    if (across < above || across > (heights[other] as number) || j === i) continue;
    const couple = strip.couple(other, shape);
    const { table, sign, shift } = couple;
    const { fit } = table;
    const r = rowIn(couple, across);
    const held = countAt(fit, r);
    if (held === NONE) continue;
    const weight = (weights[own + j] as number) * size * (sizes[j] as number);
    // Where the table's zero lies, on the side of the other on which its distances grow.
    const zero = x - sign * shift;
    const depths = depthsIn(table);
    const several = held === ONE ? null : (fit.several.get(r) as readonly number[]);
    const last = several ? several.length : 2;
    for (let k = 0; k < last; k += 2) {
      const start = several ? (several[k] as number) : (fit.from[r] as number);
      const end = several ? (several[k + 1] as number) : (fit.to[r] as number);
      const from = zero + (sign > 0 ? start : -end);
      const to = zero + (sign > 0 ? end : -start);
      // What lies before the cloth or behind it.
      if (to <= 0 || from >= most || found >= MOST_TAKEN) continue;
      taken.from[found] = from;
      taken.to[found] = to;
      taken.weight[found] = (weight * depths.cell) / PARTS;
      taken.parts[found] = depths.parts;
      taken.perMm[found] = sign / depths.cell;
      taken.cells[found] = cellsOfRow(depths, r) + 0.5 - (sign * zero + depths.left) / depths.cell;
      found += 1;
    }
  }
  taken.count = found;
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

/** The weighted depth of interval `k` at `x` mm: the depth known, or the way out along the cloth where that is shorter. */
function priceOf({ from, to, weight, parts, cells, perMm }: Taken, k: number, x: number): number {
  const each = perMm[k] as number;
  const cell = ((cells[k] as number) + x * each) | 0;
  const way = Math.min(x - (from[k] as number), (to[k] as number) - x) * Math.abs(each) * PARTS;
  return (weight[k] as number) * Math.min((parts[k] as Uint8Array)[cell] || 1, way);
}
