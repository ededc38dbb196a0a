// The place of an item that costs least among rows that are tried.

import type { Lay } from './lay';
import { type Place, rowsFor, shapeOf } from './strip';
import { collect, costAt, type Taken } from './taken';

/** What is asked for: a place for an item on a strip of a length, mm; and the best one so far. */
interface Looking {
  readonly lay: Lay;
  readonly item: number;
  readonly length: number;
  readonly random: () => number;
  readonly taken: Taken;
  /** The place so far, and its weighted overlap with all others; 0 where it overlaps none, infinite before any is found. */
  shape: number;
  row: number;
  x: number;
  cost: number;
}

/**
 * The best place for an item on a strip of length `length` mm, in each of its ways: in the row in which it lies, in `tries` rows drawn
 * from all and as many drawn near its own, and nearer and nearer to the best of these. The first free place that is found is taken.
 * Null where it has no room at all.
 */
export function bestPlace(
  lay: Lay,
  item: number,
  length: number,
  tries: number,
  random: () => number,
  taken: Taken,
): Place | null {
  const { strip, shapes, rows } = lay;
  const asked = strip.items[item];
  if (!asked) return null;
  const [shape, row] = [shapes[item] as number, rows[item] as number];
  const best: Looking = {
    lay,
    item,
    length,
    random,
    taken,
    shape,
    row,
    x: 0,
    cost: Number.POSITIVE_INFINITY,
  };
  tryRow(best, shape, row);
  for (let n = 0; n < tries && best.cost > 0; n += 1) {
    const way = asked.ways[Math.floor(random() * asked.ways.length)] as number;
    const [first, last] = rowsFor(strip, asked, way);
    tryRow(best, way, first + Math.floor(random() * (last - first + 1)));
  }
  const all = strip.width / strip.rowHeight;
  for (let n = 0; n < tries && best.cost > 0; n += 1) {
    const way = asked.ways[Math.floor(random() * asked.ways.length)] as number;
    tryRow(best, way, row + Math.round(((random() - 0.5) * all) / NEAR));
  }
  // Nearer and nearer to the best row so far.
  for (let reach = Math.ceil(all / FIRST_REACH); reach >= 1 && best.cost > 0; reach = Math.floor(reach / 2)) {
    const near = best.row;
    tryRow(best, best.shape, near - reach);
    tryRow(best, best.shape, near + reach);
  }
  return best.cost < Number.POSITIVE_INFINITY ? { shape: best.shape, row: best.row, x: best.x } : null;
}

/** Rows near its own reach over this part of all rows. */
const NEAR = 12;

/** Near the best row, the first rows that are tried lie this part of all rows from it. */
const FIRST_REACH = 24;

/** Tries the ends of the cloth and of what is taken in the row nearest to the one asked for. */
function tryRow(best: Looking, shape: number, asked: number): void {
  const { lay, item, length, random, taken } = best;
  const { strip } = lay;
  const most = length - shapeOf(strip, shape).length;
  const [first, last] = rowsFor(strip, strip.items[item] as (typeof strip.items)[number], shape);
  if (most < 0 || last < first) return;
  const row = Math.min(last, Math.max(first, asked));
  collect(taken, lay, item, shape, row, most);
  const { count, from, to } = taken;
  const isFromEnd = random() < 0.5;
  // Begun anywhere, so that free places at the start of the cloth are not always the first.
  const start = Math.floor(random() * count);
  let { cost } = best;
  // The ends of the cloth and of each interval; costAt is called in one place, so that it is compiled into this loop.
  for (let step = -2; step < 2 * count && cost > 0; step += 1) {
    const k = (start + (step >> 1)) % count;
    const x =
      step < 0 ? ((step === -2) === isFromEnd ? most : 0) : (((step & 1) === 0 ? to : from)[k] as number);
    if (x < 0 || x > most) continue;
    const found = costAt(taken, x, cost);
    if (found >= cost) continue;
    cost = found;
    best.shape = shape;
    best.row = row;
    best.x = x;
    best.cost = cost;
  }
}
