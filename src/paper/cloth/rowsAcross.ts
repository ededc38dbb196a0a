// How many rows a strip has: so that the shapes lie in them with little room to spare.

import type { LayShape } from './pairs/layShape';
import { APART_MM, rowsHigh } from './pairs/noFit';
import type { Rows } from './strip';

/** At most so many times the least number of rows are taken. */
const MOST_TIMES = 1.5;

/** Depths are told apart by about so many cells across the strip. */
const CELLS = 100;

/**
 * The rows of a strip: of all numbers of rows from `least` to half as many again that which spares least of the area; the fewest rows
 * of several that spare as little. A shape takes whole rows, so that on average half a row of each is spare.
 *
 * @param across the width of the strip, mm
 */
export function rowsAcross(shapes: readonly LayShape[], across: number, least: number): Rows {
  let [found, spare] = [least, Number.POSITIVE_INFINITY];
  for (let rows = least; rows <= MOST_TIMES * least; rows += 1) {
    const height = across / rows;
    const spared = shapes.reduce(
      (sum, shape) => sum + shape.length * Math.max(0, rowsHigh(shape, height) * height - shape.width),
      0,
    );
    if (spared < spare - APART_MM * across) [found, spare] = [rows, spared];
  }
  return { height: across / found, perCell: Math.max(1, Math.floor(found / CELLS)) };
}
