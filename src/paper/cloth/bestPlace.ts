// The place of an item that costs least among rows that are tried.

import { depthAt } from './depths';
import type { Lay } from './lay';
import { type Place, rowsFor, type Strip, shapeOf } from './strip';
import { collect, type Taken, tableAt } from './taken';

export interface PricedPlace {
  readonly place: Place;
  /** Weighted overlap with all others, mm; 0 where it overlaps none. */
  readonly cost: number;
}

/**
 * The best place for item `i` on a strip of length `length` mm, in each of its ways and `tries` rows that are drawn at random,
 * beside the row in which it lies. The first free place that is found is taken. Null where it has no room at all.
 */
export function bestPlace(
  lay: Lay,
  i: number,
  length: number,
  tries: number,
  random: () => number,
  taken: Taken,
): PricedPlace | null {
  const { strip, shapes, rows: ownRows } = lay;
  const item = strip.items[i];
  if (!item) return null;
  const own: Place = { shape: shapes[i] as number, row: ownRows[i] as number, x: lay.xs[i] as number };
  let best: Place | null = null;
  let least = Number.POSITIVE_INFINITY;
  const tryRow = (shape: number, asked: number): void => {
    const most = length - shapeOf(strip, shape).length;
    const [first, last] = rowsFor(strip, item, shape);
    if (most < 0 || last < first) return;
    const row = Math.min(last, Math.max(first, asked));
    collect(taken, lay, i, shape, row, most);
    const found = cheapest(taken, strip, shape, most, least, random);
    if (found === null) return;
    best = { shape, row, x: found.x };
    least = found.cost;
  };
  tryRow(own.shape, own.row);
  for (let n = 0; n < tries && least > 0; n += 1) {
    const shape = item.ways[Math.floor(random() * item.ways.length)] as number;
    const [first, last] = rowsFor(strip, item, shape);
    tryRow(shape, first + Math.floor(random() * (last - first + 1)));
  }
  // Nearer and nearer to the best row so far.
  const rows = strip.width / strip.rowHeight;
  for (let reach = Math.ceil(rows / FIRST_REACH); reach >= 1 && least > 0; reach = Math.floor(reach / 2)) {
    const { shape, row }: Place = best ?? own;
    tryRow(shape, row - reach);
    tryRow(shape, row + reach);
  }
  return best && { place: best, cost: least };
}

/** Near the best row, the first rows that are tried lie this part of all rows from it. */
const FIRST_REACH = 24;

/** The cheapest x from 0 to `most` mm, where it costs less than `below`: an end of the cloth or of what is taken. */
function cheapest(
  taken: Taken,
  strip: Strip,
  shape: number,
  most: number,
  below: number,
  random: () => number,
): { x: number; cost: number } | null {
  const { count, from, to } = taken;
  let found: number | null = null;
  let least = below;
  const consider = (x: number): boolean => {
    if (x < 0 || x > most) return false;
    const cost = costAt(taken, strip, shape, x, least);
    if (cost >= least) return false;
    found = x;
    least = cost;
    return cost === 0;
  };
  const priced = () => (found === null ? null : { x: found, cost: least });
  // Begun anywhere, so that free places at the start of the cloth are not always the first.
  const start = Math.floor(random() * count);
  if (random() < 0.5 ? consider(0) || consider(most) : consider(most) || consider(0)) return priced();
  for (let step = 0; step < count; step += 1) {
    const k = (start + step) % count;
    if (consider(to[k] as number) || consider(from[k] as number)) break;
  }
  return priced();
}

function costAt(taken: Taken, strip: Strip, shape: number, x: number, below: number): number {
  const { count, from, to, weight } = taken;
  let cost = 0;
  for (let k = 0; k < count; k += 1) {
    const [start, end] = [from[k] as number, to[k] as number];
    if (x <= start || x >= end) continue;
    const deep = depthAt(
      tableAt(taken, strip, k, shape),
      taken.row[k] as number,
      x - (taken.zero[k] as number),
    );
    cost += (weight[k] as number) * Math.min(x - start, end - x, deep);
    if (cost >= below) break;
  }
  return cost;
}
