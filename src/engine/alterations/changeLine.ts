// How a change runs between the places where it was said.

import { last, numberAt } from '../geometry/lists';
import { combine, type SmoothLine, slopeAt, smoothLine, xAt } from '../geometry/smoothLine';

/** A change at a place along a seam or an edge, both mm. */
export interface Change {
  readonly at: number;
  readonly by: number;
}

/**
 * The change at every place: a monotone cubic through what was said, nothing at the next stop on either side that is no nearer
 * than `clear`, mm, and as it was last said where there is none. Changes at one place add up.
 *
 * @param stops where a change has run out, ascending
 */
export function changeLine(said: readonly Change[], stops: readonly number[], clear: number): SmoothLine {
  const [places, amounts]: [number[], number[]] = [[], []];
  const inOrder = said.length > 1 ? [...said].sort((a, b) => a.at - b.at) : said;
  for (const { at, by } of inOrder) {
    const i = places.length - 1;
    if (i >= 0 && at - numberAt(places, i) < ONE_PLACE_MM) amounts[i] = numberAt(amounts, i) + by;
    else {
      places.push(at);
      amounts.push(by);
    }
  }
  const [start, end] = [places[0] ?? 0, places.at(-1) ?? 0];
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

/** The sum of changes, added in their order; null where it is nothing everywhere. */
export function sumOfChanges(lines: readonly SmoothLine[]): SmoothLine | null {
  const [first] = lines;
  if (!first) return null;
  const sum = lines.length === 1 ? first : added(lines);
  return sum.xs.every(isNothing) && sum.slopes.every(isNothing) ? null : sum;
}

const isNothing = (value: number): boolean => value === 0;

function added(lines: readonly SmoothLine[]): SmoothLine {
  const ys: number[] = [];
  for (const line of lines) for (const y of line.ys) if (!ys.includes(y)) ys.push(y);
  ys.sort((a, b) => a - b);
  const [xs, slopes]: [number[], number[]] = [[], []];
  for (const y of ys) {
    let [x, slope] = [0, 0];
    for (const line of lines) {
      x += xAt(line, y);
      slope += slopeAt(line, y);
    }
    xs.push(x);
    slopes.push(slope);
  }
  return { ys, xs, slopes };
}

/** A line over a stretch with a change taken off it; the knots of the change count only within the stretch. */
export function lessChange(line: SmoothLine, change: SmoothLine): SmoothLine {
  const [from, to] = [line.ys[0] ?? 0, last(line.ys)];
  const whole = combine(line, 1, change, -1);
  const inside = whole.ys.flatMap((y, i) => (y >= from && y <= to ? [i] : []));
  const pick = (list: readonly number[]): number[] => inside.map((i) => numberAt(list, i));
  return { ys: pick(whole.ys), xs: pick(whole.xs), slopes: pick(whole.slopes) };
}
