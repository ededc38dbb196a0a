// Lays items on a strip of a given length: the same search as for a short lay, ended as soon as no two overlap.

import { firstLay } from './firstLay';
import { layAt, overlapping, totalDepth, weigh } from './lay';
import { movedOff, placeWithin } from './moving';
import { randomFrom } from './random';
import { type Place, rowsFor, type Strip, shapeOf } from './strip';
import { roomForTaken } from './taken';

/**
 * A place for each item, no two overlapping, on `length` mm of the strip; null where none is found in so many passes. The same
 * strip, length and number of passes come to the same places.
 */
export function layWithin(strip: Strip, length: number, passes: number): readonly Place[] | null {
  const fits = strip.items.every((item) =>
    item.ways.some((shape) => {
      const [first, last] = rowsFor(strip, item, shape);
      return last >= first && shapeOf(strip, shape).length <= length;
    }),
  );
  if (!fits) return null;
  const first = firstLay(strip);
  if (first.length <= length) return first.places;
  const [random, taken] = [randomFrom(SEED), roomForTaken()];
  const lay = layAt(
    strip,
    first.places.map((place) => placeWithin(strip, place, length)),
  );
  for (let pass = 0; pass < passes; pass += 1) {
    movedOff(lay, overlapping(lay), length, random, taken);
    if (totalDepth(lay) === 0)
      return lay.places.every(({ shape, x }) => x + shapeOf(strip, shape).length <= length)
        ? lay.places
        : null;
    weigh(lay);
  }
  return null;
}

const SEED = 1;
