// Two shapes of a strip beside each other. What is worked out of two holds for all that are the same two turned over or round.

import { type Depths, depthAt, depthsOf } from './depths';
import type { Flipped, FlippedShapes } from './flips';
import { APART_MM, countAt, intervalsAt, NONE, type NoFit, noFit, ONE, rowsHigh } from './noFit';

/** Where one shape must not lie beside another. */
export interface Table {
  readonly fit: NoFit;
  /** How far it lies in it there, by {@link depthsIn}: null until that is first asked for, which the first lay never does. */
  depths: Depths | null;
  /** mm */
  readonly rowHeight: number;
  readonly rowsPerCell: number;
  /** How the first of the two lies in it. */
  readonly first: Flipped;
}

/**
 * Where shape B must not lie beside shape A, by a table that has `sign` times the distance along from A's zero to B's, plus `shift`
 * mm, and counts its rows from the first: `rowSign` times the rows from A's zero to B's, plus `rowShift`.
 */
export interface Couple {
  readonly table: Table;
  readonly sign: number;
  readonly shift: number;
  readonly rowSign: number;
  readonly rowShift: number;
}

/**
 * A function that gives the couple of two shapes by their indices; each table is made when it is first asked for.
 *
 * @param rowHeight mm
 * @param rowsPerCell rows of the strip for each row of cells in a table of depths
 */
export function couplesOf(
  { shapes, flips }: FlippedShapes,
  rowHeight: number,
  rowsPerCell: number,
): (a: number, b: number) => Couple {
  const count = shapes.length;
  const known: (Couple | undefined)[] = new Array(count * count);
  const tables = new Map<number, Table>();
  const make = (a: number, b: number): Couple => {
    const isSwapped = (flips[a] as Flipped).base > (flips[b] as Flipped).base;
    const [i, j] = isSwapped ? [b, a] : [a, b];
    const [one, other] = [shapes[i] as (typeof shapes)[number], shapes[j] as (typeof shapes)[number]];
    const [first, second] = [flips[i] as Flipped, flips[j] as Flipped];
    const turn = 2 * Number(first.along !== second.along) + Number(first.across !== second.across);
    const key = 4 * (first.base * count + second.base) + turn;
    let table = tables.get(key);
    if (!table) {
      table = { fit: noFit(one, other, rowHeight), depths: null, rowHeight, rowsPerCell, first };
      tables.set(key, table);
    }
    const isOver = first.along !== table.first.along;
    const isOverAcross = first.across !== table.first.across;
    return {
      table,
      sign: isOver === isSwapped ? 1 : -1,
      shift: isOver ? one.length - other.length : 0,
      rowSign: isOverAcross === isSwapped ? 1 : -1,
      rowShift: (isOverAcross ? rowsHigh(one, rowHeight) - rowsHigh(other, rowHeight) : 0) - table.fit.first,
    };
  };
  return (a, b) => {
    const found = known[a * count + b];
    if (found) return found;
    const made = make(a, b);
    known[a * count + b] = made;
    return made;
  };
}

export function depthsIn(table: Table): Depths {
  table.depths ??= depthsOf(table.fit, table.rowHeight, table.rowsPerCell);
  return table.depths;
}

/** The row of the table with B's zero so many rows below A's, from the first; below 0 or past the last they do not overlap. */
export const rowIn = ({ rowSign, rowShift }: Couple, across: number): number => rowSign * across + rowShift;

/**
 * The open intervals along the cloth from A's zero within which B's must not lie: two numbers for each, mm, growing and apart.
 *
 * @param across rows from A's zero to B's
 */
export function takenBetween(couple: Couple, across: number): readonly number[] {
  const { sign, shift } = couple;
  const { fit } = couple.table;
  const taken = intervalsAt(fit, rowIn(couple, across) + fit.first);
  if (sign > 0) return shift === 0 ? taken : taken.map((x) => x - shift);
  return taken.map((x) => shift - x).reverse();
}

/**
 * How far shape B lies in shape A, mm: the shortest way out along the cloth or, where it is known to be shorter, in any
 * direction; 0 where they do not overlap.
 *
 * @param across rows from A's zero to B's
 * @param along from A's zero to B's, mm
 */
export function depthBetween(couple: Couple, across: number, along: number): number {
  const { table, sign, shift } = couple;
  const { fit } = table;
  const row = rowIn(couple, across);
  if (row < 0 || row > fit.last - fit.first) return 0;
  const held = countAt(fit, row);
  if (held === NONE) return 0;
  const x = sign * along + shift;
  const depths = depthsIn(table);
  if (held === ONE) return within(depths, row, x, fit.from[row] as number, fit.to[row] as number);
  const several = fit.several.get(row) as readonly number[];
  for (let k = 0; k < several.length; k += 2) {
    const deep = within(depths, row, x, several[k] as number, several[k + 1] as number);
    if (deep > 0) return deep;
  }
  return 0;
}

function within(depths: Depths, row: number, x: number, from: number, to: number): number {
  const out = Math.min(x - from, to - x);
  return out <= ROUNDING_MM ? 0 : Math.min(out, depthAt(depths, row, x));
}

/** Shapes that touch may seem to overlap by less. mm */
const ROUNDING_MM = APART_MM / 2;
