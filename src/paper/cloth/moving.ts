// One pass of the search: each item that overlaps others is moved to the place that costs least.

import { bestPlace } from './bestPlace';
import { type Lay, move, overlapsAny } from './lay';
import { type Place, type Strip, shapeOf } from './strip';
import type { Taken } from './taken';

/** Rows that are drawn for an item in one pass, of all and of those near its own. */
const TRIES = 4;

/** Moves the items named that still overlap others, in a drawn order, on a strip of `length` mm. */
export function movedOff(
  lay: Lay,
  items: number[],
  length: number,
  random: () => number,
  taken: Taken,
): void {
  for (const i of shuffled(items, random)) {
    if (!overlapsAny(lay, i)) continue;
    const found = bestPlace(lay, i, length, TRIES, random, taken);
    if (found) move(lay, i, found);
  }
}

/** A place moved back onto a strip of `length` mm. */
export function placeWithin(strip: Strip, place: Place, length: number): Place {
  const most = Math.max(0, length - shapeOf(strip, place.shape).length);
  return place.x > most ? { ...place, x: most } : place;
}

function shuffled(list: number[], random: () => number): number[] {
  for (let i = list.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    [list[i], list[j]] = [list[j] as number, list[i] as number];
  }
  return list;
}
