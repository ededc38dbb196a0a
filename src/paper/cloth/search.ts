// The search for a short lay: guided local search on overlaps. The strip is cut shorter and items that overlap are moved until
// none does. The method is that of J. Egeblad, B. K. Nielsen and A. Odgaard, "Fast neighborhood search for two- and
// three-dimensional nesting problems", European Journal of Operational Research 183 (2007), on rows instead of lines.

import { type FoundLay, firstLay } from './firstLay';
import { type Lay, layAt, overlapping, placesIn, totalDepth, usedLength, weigh } from './lay';
import { movedOff, placeWithin } from './moving';
import { randomFrom } from './random';
import { type Place, rowsFor, type Strip, type StripItem, shapeOf } from './strip';
import { roomForTaken } from './taken';

export interface Search {
  /** The shortest lay found so far; no two items overlap. */
  readonly best: () => FoundLay;
  /** Goes one step on: a pass over all items that overlap. */
  readonly step: () => void;
}

/** The strip is cut shorter by this part after each lay that was found, and by less and less where none is. */
const [FIRST_CUT, LEAST_CUT, NEXT_CUT] = [0.012, 0.001, 0.7];

/** The first lay tries so many rows, so that it is there at once; the search tries all. */
const ROWS_AT_FIRST = 60;

/** Passes without a smaller overlap after which another start is made. */
const MOST_IDLE = 200;

/** A search from a first lay, longest items first; the same seed and steps give the same lay. */
export function searchLay(strip: Strip, seed: number): Search {
  const random = randomFrom(seed);
  const taken = roomForTaken();
  let best = firstLay(strip, ROWS_AT_FIRST);
  let cut = FIRST_CUT;
  let length = 0;
  let lay: Lay;
  let least = 0;
  let idle = 0;
  const shorten = (places: readonly Place[]): void => {
    length = best.length * (1 - cut);
    lay = layAt(
      strip,
      places.map((place) => placeWithin(strip, place, length)),
    );
    least = Number.POSITIVE_INFINITY;
    idle = 0;
  };
  shorten(best.places);
  const step = (): void => {
    movedOff(lay, overlapping(lay), length, random, taken);
    const total = totalDepth(lay);
    if (total === 0) {
      const places = placesIn(lay);
      best = { places, length: usedLength(strip, places) };
      shorten(best.places);
      return;
    }
    idle = total < 0.98 * least ? 0 : idle + 1;
    least = Math.min(least, total);
    weigh(lay);
    if (idle <= MOST_IDLE) return;
    cut = Math.max(LEAST_CUT, cut * NEXT_CUT);
    shorten(swapped(strip, best.places, random));
  };
  return { best: () => best, step };
}

/** The places with two large items exchanged, so that the search goes on from elsewhere. */
function swapped(strip: Strip, places: readonly Place[], random: () => number): Place[] {
  const area = ({ ways: [way = 0] }: StripItem): number => {
    const { length, width } = shapeOf(strip, way);
    return length * width;
  };
  const large = strip.items
    .map((item, i) => ({ item, i, size: area(item) }))
    .filter(({ item }) => item.row === null)
    .sort((a, b) => b.size - a.size || a.i - b.i)
    .slice(0, Math.max(2, Math.ceil(strip.items.length / 2)));
  const drawn = () => large[Math.floor(random() * large.length)];
  const [a, b] = [drawn(), drawn()];
  const next = [...places];
  if (!a || !b) return next;
  const at = ({ item, i }: typeof a, { row, x }: Place): Place => {
    const { shape } = places[i] as Place;
    return { shape, x, row: Math.min(row, rowsFor(strip, item, shape)[1]) };
  };
  next[a.i] = at(a, places[b.i] as Place);
  next[b.i] = at(b, places[a.i] as Place);
  return next;
}
