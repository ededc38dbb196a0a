// Lays items on a strip of a given length: the same search as for a short lay, ended as soon as no two overlap.

import { firstLay } from './firstLay';
import { layAt, overlapping, placesIn, totalDepth, weigh } from './lay';
import { movedOff, placeWithin } from './moving';
import { pulledBack } from './pulledBack';
import { randomFrom } from './random';
import { type Place, rowsFor, type Strip, shapeOf } from './strip';
import { roomForTaken } from './taken';

/**
 * A place for each item, no two overlapping, on `length` mm of the strip; null where none is found in so many passes. The same
 * strip, length and number of passes come to the same places.
 */
export function layWithin(given: Strip, length: number, passes: number): readonly Place[] | null {
  const items = given.items.map((item) => ({
    ...item,
    ways: item.ways.filter((shape) => {
      const [first, last] = rowsFor(given, item, shape);
      return last >= first && shapeOf(given, shape).length <= length;
    }),
  }));
  if (items.some(({ ways }) => ways.length === 0)) return null;
  const strip: Strip = { ...given, items };
  const first = firstLay(strip);
  if (first.length <= length) return first.places;
  const [random, taken] = [randomFrom(SEED), roomForTaken()];
  const lay = layAt(
    strip,
    first.places.map((place) => placeWithin(strip, place, length)),
  );
  let [least, idle] = [Number.POSITIVE_INFINITY, 0];
  for (let pass = 0; pass < passes && idle <= MOST_IDLE; pass += 1) {
    movedOff(lay, overlapping(lay), length, random, taken);
    const total = totalDepth(lay);
    if (total === 0) return placesIn(lay);
    const pulled = total < least ? pulledBack(lay, length) : null;
    if (pulled) return placesIn(lay, pulled);
    idle = total < 0.98 * least ? 0 : idle + 1;
    least = Math.min(least, total);
    weigh(lay);
  }
  return null;
}

const SEED = 1;

/** Passes without a smaller overlap after which none is looked for. */
const MOST_IDLE = 80;
