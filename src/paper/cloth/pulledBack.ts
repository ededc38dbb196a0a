// All items moved along the cloth at once, towards its start, each pair on the sides of each other on which it lies.

import type { Lay } from './lay';
import { takenBetween } from './pairs/couples';
import { shapeOf } from './strip';

/**
 * The least x of each item, mm, with every item in its row and its way, and each pair in the order along the cloth that it has; two
 * that overlap are taken apart by the shorter way along the cloth. Null where the items would reach to `below` mm or no order holds.
 * The longest paths of Y.-Z. Liao and C. K. Wong, "An algorithm to compact a VLSI symbolic layout with mixed constraints", IEEE
 * Transactions on Computer-Aided Design 2 (1983).
 */
export function pulledBack(lay: Lay, below: number): Float64Array | null {
  const { strip, shapes } = lay;
  const steps = stepsOf(lay);
  const xs = new Float64Array(shapes.length);
  const most = Float64Array.from(shapes, (shape) => below - shapeOf(strip, shape).length);
  if (most.some((x) => x <= 0)) return null;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let isDone = true;
    for (let k = 0; k < steps.length; k += 3) {
      const to = steps[k + 1] as number;
      const x = (xs[steps[k] as number] as number) + (steps[k + 2] as number);
      if (x <= (xs[to] as number) + EVEN_MM) continue;
      if (x >= (most[to] as number)) return null;
      xs[to] = x;
      isDone = false;
    }
    if (isDone) return xs;
  }
  return null;
}

/** Lengths that differ by less are even. mm */
const EVEN_MM = 1e-9;

/** Orders that can be kept are done sooner; those that contradict each other never are. */
const MOST_ROUNDS = 20;

/** Three numbers for each step: an item, another, and how far this one's x lies after that one's at least, mm. */
function stepsOf({ strip, shapes, rows, xs }: Lay): number[] {
  const order = Array.from(xs, (_, i) => i).sort((a, b) => (xs[a] as number) - (xs[b] as number) || a - b);
  const steps: number[] = [];
  for (let n = 0; n < order.length; n += 1) {
    const i = order[n] as number;
    for (let m = n + 1; m < order.length; m += 1) {
      const j = order[m] as number;
      const across = (rows[j] as number) - (rows[i] as number);
      if (
        -across > (strip.heights[shapes[j] as number] as number) ||
        across > (strip.heights[shapes[i] as number] as number)
      )
        continue;
      const intervals = takenBetween(strip.couple(shapes[i] as number, shapes[j] as number), across);
      const along = (xs[j] as number) - (xs[i] as number);
      let k = 0;
      // Past each interval that it lies behind, or in and nearer to its end.
      while (k < intervals.length && 2 * along >= (intervals[k] as number) + (intervals[k + 1] as number))
        k += 2;
      if (k > 0) steps.push(i, j, intervals[k - 1] as number);
      if (k < intervals.length) steps.push(j, i, -(intervals[k] as number));
    }
  }
  return steps;
}
