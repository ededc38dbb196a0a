// The search for a short lay: guided local search on overlaps. The strip is cut shorter and items that overlap are moved until
// none does. The method is that of J. Egeblad, B. K. Nielsen and A. Odgaard, "Fast neighborhood search for two- and
// three-dimensional nesting problems", European Journal of Operational Research 183 (2007), on rows instead of lines. Where hardly
// anything overlaps, all items are pulled back at once.

import { type FoundLay, firstLay } from './firstLay';
import { type Lay, layAt, overlapping, placesIn, totalDepth, usedLength, weigh } from './lay';
import { movedOff, placeWithin } from './moving';
import { pulledBack } from './pulledBack';
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
const [FIRST_CUT, LEAST_CUT, NEXT_CUT] = [0.012, 0.001, 0.5];

/** Items are pulled back only to a lay that is shorter by this part: to the same lay again they would always be. */
const LEAST_GAIN = 1e-4;

/** The first lay tries so many rows, so that it is there at once; the search tries all. */
const ROWS_AT_FIRST = 60;

/** Passes without a smaller overlap after which no lay is looked for on this length. */
const MOST_IDLE = 200;

/** After so many lengths without a lay the search begins elsewhere: on a strip this part longer than the best lay, with so many swaps. */
const [MOST_FAILED, LONGER, SWAPS_ELSEWHERE] = [3, 0.015, 3];

/** A search from a first lay, longest items first; the same seed and steps give the same lay. */
export function searchLay(strip: Strip, seed: number): Search {
  const random = randomFrom(seed);
  const taken = roomForTaken();
  let best = firstLay(strip, ROWS_AT_FIRST);
  /** The lay that is being made shorter, and the length on which that is tried. */
  let last = best;
  let length = 0;
  let cut = FIRST_CUT;
  let failed = 0;
  let lay: Lay;
  let least = 0;
  let idle = 0;
  const begin = (places: readonly Place[], on: number): void => {
    length = on;
    lay = layAt(
      strip,
      places.map((place) => placeWithin(strip, place, on)),
    );
    least = Number.POSITIVE_INFINITY;
    idle = 0;
  };
  begin(best.places, best.length * (1 - cut));
  const found = (xs: Float64Array): void => {
    const places = placesIn(lay, xs);
    last = { places, length: usedLength(strip, places) };
    if (last.length < best.length) best = last;
    failed = 0;
    begin(places, last.length * (1 - cut));
  };
  const giveUp = (): void => {
    failed += 1;
    if (failed < MOST_FAILED) {
      cut = Math.max(LEAST_CUT, cut * NEXT_CUT);
      begin(swapped(strip, last.places, 1, random), last.length * (1 - cut));
      return;
    }
    [failed, cut] = [0, FIRST_CUT];
    const longer = best.length * (1 + LONGER);
    last = { places: best.places, length: longer * (1 + cut) };
    begin(swapped(strip, best.places, SWAPS_ELSEWHERE, random), longer);
  };
  const step = (): void => {
    movedOff(lay, overlapping(lay), length, random, taken);
    const total = totalDepth(lay);
    const pulled = total < least ? pulledBack(lay, last.length * (1 - LEAST_GAIN)) : null;
    if (pulled || total === 0) {
      found(pulled ?? lay.xs);
      return;
    }
    idle = total < 0.98 * least ? 0 : idle + 1;
    least = Math.min(least, total);
    weigh(lay);
    if (idle > MOST_IDLE) giveUp();
  };
  return { best: () => best, step };
}

/** The places with two large items exchanged, so many times, so that the search goes on from elsewhere. */
function swapped(strip: Strip, places: readonly Place[], times: number, random: () => number): Place[] {
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
  const next = [...places];
  for (let n = 0; n < times; n += 1) {
    const [a, b] = [drawn(), drawn()];
    if (!a || !b) break;
    const at = ({ item, i }: typeof a, { row, x }: Place): Place => {
      const { shape } = next[i] as Place;
      return { shape, x, row: Math.min(row, rowsFor(strip, item, shape)[1]) };
    };
    const [placeA, placeB] = [next[a.i] as Place, next[b.i] as Place];
    next[a.i] = at(a, placeB);
    next[b.i] = at(b, placeA);
  }
  return next;
}
