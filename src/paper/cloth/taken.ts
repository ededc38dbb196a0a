// What other items leave of one row: intervals that are not free, with what they belong to.

import type { Depths } from './depths';
import type { Lay } from './lay';
import { intervalsAt } from './noFit';
import type { Strip } from './strip';

/** Room for the intervals of a row, used again for each; the first `count` hold. */
export interface Taken {
  count: number;
  /** mm along the cloth. */
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** The weight of a mm. */
  readonly weight: Float64Array;
  /** The shape that takes it, its zero along the cloth, and the row from the first at which the shapes may overlap. */
  readonly shape: Int32Array;
  readonly zero: Float64Array;
  readonly row: Int32Array;
}

const MOST_TAKEN = 4096;

export const roomForTaken = (): Taken => ({
  count: 0,
  from: new Float64Array(MOST_TAKEN),
  to: new Float64Array(MOST_TAKEN),
  weight: new Float64Array(MOST_TAKEN),
  shape: new Int32Array(MOST_TAKEN),
  zero: new Float64Array(MOST_TAKEN),
  row: new Int32Array(MOST_TAKEN),
});

/** Collects what the others take of a row from 0 to `most` mm, for item `i` in the way `shape`, whose first row it is. */
export function collect(taken: Taken, lay: Lay, i: number, shape: number, row: number, most: number): void {
  const { strip, shapes, rows, xs, weights } = lay;
  const count = xs.length;
  let at = 0;
  for (let j = 0; j < count; j += 1) {
    if (j === i) continue;
    const across = row - (rows[j] as number);
    const fit = strip.between(shapes[j] as number, shape);
    if (across < fit.first || across > fit.last) continue;
    const intervals = intervalsAt(fit, across);
    const x = xs[j] as number;
    for (let k = 0; k < intervals.length && at < MOST_TAKEN; k += 2) {
      const from = x + (intervals[k] as number);
      const to = x + (intervals[k + 1] as number);
      if (to <= 0 || from >= most) continue;
      taken.from[at] = from;
      taken.to[at] = to;
      taken.weight[at] = weights[i * count + j] as number;
      taken.shape[at] = shapes[j] as number;
      taken.zero[at] = x;
      taken.row[at] = across - fit.first;
      at += 1;
    }
  }
  taken.count = at;
}

export const tableAt = ({ shape }: Taken, strip: Strip, k: number, own: number): Depths =>
  strip.depths(shape[k] as number, own);
