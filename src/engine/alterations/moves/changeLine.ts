// How a change runs between the places at which its amount is given.

import { last, numberAt } from '../../geometry/lists';
import { combine, type SmoothLine, slopeAt, smoothLine, within, xAt } from '../../geometry/smoothLine';

/** A change at a place along a seam or an edge, both mm. */
export interface Change {
  readonly at: number;
  readonly by: number;
}

/**
 * The change at every place, mm over mm: a monotone cubic through the given changes, which falls to 0 at the nearest stop on either
 * side. On a side without a stop the outermost change holds all the way. Changes at one place add up.
 *
 * @param stops places beyond which nothing is changed, ascending, mm
 * @param clear a stop nearer than this to the outermost change is passed over, mm
 */
export function changeLine(changes: readonly Change[], stops: readonly number[], clear: number): SmoothLine {
  const [places, amounts]: [number[], number[]] = [[], []];
  const inOrder = changes.length > 1 ? [...changes].sort((a, b) => a.at - b.at) : changes;
  for (const { at, by } of inOrder) {
    const i = places.length - 1;
    if (i >= 0 && at - numberAt(places, i) < ONE_PLACE_MM) amounts[i] = numberAt(amounts, i) + by;
    else {
      places.push(at);
      amounts.push(by);
    }
  }
  const start = places[0] ?? 0;
  const end = places.at(-1) ?? 0;
  const above = stops.filter((stop) => stop <= start - clear).at(-1);
  const below = stops.find((stop) => stop >= end + clear);
  if (above !== undefined) {
    places.unshift(above);
    amounts.unshift(0);
  }
  if (below !== undefined) {
    places.push(below);
    amounts.push(0);
  }
  return smoothLine(places, amounts);
}

/** Nearer than this two places are one. mm */
const ONE_PLACE_MM = 1;

/** The sum of changes, added in their order; null where it is 0 everywhere. */
export function sumOfChanges(lines: readonly SmoothLine[]): SmoothLine | null {
  const [first] = lines;
  if (!first) return null;
  const sum = lines.length === 1 ? first : added(lines);
  return sum.xs.every(isZero) && sum.slopes.every(isZero) ? null : sum;
}

const isZero = (value: number): boolean => value === 0;

function added(lines: readonly SmoothLine[]): SmoothLine {
  const ys: number[] = [];
  for (const line of lines) for (const y of line.ys) if (!ys.includes(y)) ys.push(y);
  ys.sort((a, b) => a - b);
  const [xs, slopes]: [number[], number[]] = [[], []];
  for (const y of ys) {
    let x = 0;
    let slope = 0;
    for (const line of lines) {
      x += xAt(line, y);
      slope += slopeAt(line, y);
    }
    xs.push(x);
    slopes.push(slope);
  }
  return { ys, xs, slopes };
}

/** A line less a change; of the knots of the change only those within the line's own ends are added. */
export function lessChange(line: SmoothLine, change: SmoothLine): SmoothLine {
  const from = line.ys[0] ?? 0;
  const to = last(line.ys);
  const whole = combine(line, 1, change, -1);
  return within(whole, from, to);
}
