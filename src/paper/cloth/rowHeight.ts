// How far apart the rows of a strip lie: so that the shapes lie in them with little room to spare.

import type { LayShape } from './pairs/layShape';
import { APART_MM, rowsHigh } from './pairs/noFit';

/** At most so many times the least number of rows are taken. */
const MOST_TIMES = 1.5;

/**
 * The height of a row, mm: of all numbers of rows from `least` to half as many again, across the strip, that which spares least of
 * the area; the fewest rows of several that spare as little. A shape takes whole rows, so that on average half a row of each is spare.
 *
 * @param across the width of the strip, mm
 */
export function rowHeightFor(shapes: readonly LayShape[], across: number, least: number): number {
  let [found, spare] = [across / least, Number.POSITIVE_INFINITY];
  for (let rows = least; rows <= MOST_TIMES * least; rows += 1) {
    const height = across / rows;
    const spared = shapes.reduce(
      (sum, shape) => sum + shape.length * Math.max(0, rowsHigh(shape, height) * height - shape.width),
      0,
    );
    if (spared < spare - APART_MM * across) [found, spare] = [height, spared];
  }
  return found;
}
