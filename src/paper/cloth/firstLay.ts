// The lay a search starts from: the longest items first, each as far towards the start of the cloth as it goes.

import { usedLength } from './lay';
import { takenBetween } from './pairs/couples';
import { type Place, rowsFor, type Strip, type StripItem, shapeOf } from './strip';

/** Places that overlap nowhere, and the length they use, mm. */
export interface FoundLay {
  readonly places: readonly Place[];
  readonly length: number;
}

/**
 * Each item, the longest first, as far towards the start of the cloth as it goes, and then across.
 *
 * @param rowsTried of the rows across the strip so many are tried, for an answer at once; all where none is given
 */
export function firstLay(strip: Strip, rowsTried = Number.POSITIVE_INFINITY): FoundLay {
  const sizeOf = ({ ways: [way = 0] }: StripItem): number => {
    const { length, width } = shapeOf(strip, way);
    return length * 1e6 + width;
  };
  const order = strip.items
    .map((item, i) => ({ item, i, size: sizeOf(item) }))
    .sort(
      (a, b) => Number(a.item.row === null) - Number(b.item.row === null) || b.size - a.size || a.i - b.i,
    );
  const places: Place[] = [];
  const laid: Place[] = [];
  const leastStride = Math.ceil(strip.width / strip.rowHeight / rowsTried) || 1;
  for (const { item, i } of order) {
    let first: Place | null = null;
    // Of many ways fewer rows are tried, so that the first lay is there at once.
    const stride = leastStride * Math.ceil(item.ways.length / MOST_WAYS);
    for (const shape of item.ways) {
      const [from, to] = rowsFor(strip, item, shape);
      for (let row = from; row <= to; row += stride) {
        const x = firstFree(strip, laid, shape, row, first?.x ?? Number.POSITIVE_INFINITY);
        if (x !== null) first = { shape, row, x };
      }
    }
    if (!first) throw new RangeError('an item is wider than the strip');
    places[i] = first;
    laid.push(first);
  }
  return { places, length: usedLength(strip, places) };
}

/** With no more ways than this every row is tried. */
const MOST_WAYS = 4;

/** The least free x of a row, mm; null where there is none below `below`. */
function firstFree(
  strip: Strip,
  laid: readonly Place[],
  shape: number,
  row: number,
  below: number,
): number | null {
  const taken: [from: number, to: number][] = [];
  for (const other of laid) {
    const intervals = takenBetween(strip.couple(other.shape, shape), row - other.row);
    for (let k = 0; k < intervals.length; k += 2)
      taken.push([other.x + (intervals[k] as number), other.x + (intervals[k + 1] as number)]);
  }
  taken.sort((p, q) => p[0] - q[0]);
  let x = 0;
  for (const [from, to] of taken) {
    if (from >= x) break;
    x = Math.max(x, to);
    if (x >= below) return null;
  }
  return x < below ? x : null;
}
