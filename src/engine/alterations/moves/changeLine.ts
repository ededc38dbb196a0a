// How a change runs between the places at which its amount is given.

import { at, last, numberAt } from '../../geometry/lists';
import {
  combine,
  type SmoothLine,
  slopeInSpan,
  smoothLine,
  within,
  xInSpan,
} from '../../geometry/smoothLine';

/** Where a change runs along a seam or an edge. */
export interface ChangeRun {
  /** The places between which it runs, ascending, mm. */
  readonly places: readonly number[];
  /** For each place at which an amount is given, the index among `places`. */
  readonly given: readonly number[];
}

/**
 * Where a change runs: through the places at which its amount is given, to the nearest stop on either side. Places nearer to each
 * other than a mm are one.
 *
 * @param at places at which an amount is given, ascending, mm
 * @param stops places beyond which nothing is changed, ascending, mm
 * @param clear a stop nearer than this to the outermost place is passed over, mm
 */
export function changeRun(at: readonly number[], stops: readonly number[], clear: number): ChangeRun {
  const start = at[0] ?? 0;
  let before = 0;
  while (before < stops.length && numberAt(stops, before) <= start - clear) before += 1;
  const places = before > 0 ? [numberAt(stops, before - 1)] : [];
  const first = places.length;
  const given: number[] = [];
  for (let i = 0; i < at.length; i += 1) {
    const each = numberAt(at, i);
    const isOne = places.length > first && each - last(places) < ONE_PLACE_MM;
    if (!isOne) places.push(each);
    given.push(places.length - 1);
  }
  const end = places.length > first ? last(places) : 0;
  let below = 0;
  while (below < stops.length && numberAt(stops, below) < end + clear) below += 1;
  if (below < stops.length) places.push(numberAt(stops, below));
  return { places, given };
}

/** Nearer than this two places are one. mm */
const ONE_PLACE_MM = 1;

/**
 * The change at every place, mm over mm: a monotone cubic through the amounts, which falls to 0 at the stops of its run. On a side
 * without a stop the outermost amount holds all the way. Amounts at one place add up.
 *
 * @param by the amounts, as many as were given places, mm
 */
export function changeLine({ places, given }: ChangeRun, by: readonly number[]): SmoothLine {
  const amounts = places.map(() => 0);
  for (let i = 0; i < given.length; i += 1) {
    const place = numberAt(given, i);
    amounts[place] = numberAt(amounts, place) + numberAt(by, i);
  }
  return smoothLine(places, amounts);
}

/** The sum of changes, added in their order; null where it is 0 everywhere. */
export function sumOfChanges(lines: readonly SmoothLine[]): SmoothLine | null {
  const [first] = lines;
  if (!first) return null;
  const sum = lines.length === 1 ? first : added(lines);
  return sum.xs.every(isZero) && sum.slopes.every(isZero) ? null : sum;
}

const isZero = (value: number): boolean => value === 0;

/** The sum of lines, with the knots of all. */
function added(lines: readonly SmoothLine[]): SmoothLine {
  const [ys, xs, slopes]: [number[], number[], number[]] = [[], [], []];
  // Of each line, the knots passed so far.
  const passed = lines.map(() => 0);
  for (;;) {
    let y = Number.POSITIVE_INFINITY;
    for (let i = 0; i < lines.length; i += 1) y = Math.min(y, at(lines, i).ys[numberAt(passed, i)] ?? y);
    if (!(y < Number.POSITIVE_INFINITY)) return { ys, xs, slopes };
    let x = 0;
    let slope = 0;
    for (let i = 0; i < lines.length; i += 1) {
      const line = at(lines, i);
      let knots = numberAt(passed, i);
      if (line.ys[knots] === y) passed[i] = knots += 1;
      x += xInSpan(line, knots - 1, y);
      slope += slopeInSpan(line, knots - 1, y);
    }
    ys.push(y);
    xs.push(x);
    slopes.push(slope);
  }
}

/** A line less a change; of the knots of the change only those within the line's own ends are added. */
export function lessChange(line: SmoothLine, change: SmoothLine): SmoothLine {
  const from = line.ys[0] ?? 0;
  const to = last(line.ys);
  const whole = combine(line, 1, change, -1);
  return within(whole, from, to);
}
