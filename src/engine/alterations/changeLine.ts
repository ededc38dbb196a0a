// How a change runs between the places where it was said.

import { last } from '../geometry/lists';
import { combine, type SmoothLine, smoothLine } from '../geometry/smoothLine';

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
  const knots: { at: number; by: number }[] = [];
  for (const { at, by } of [...said].sort((a, b) => a.at - b.at)) {
    const before = knots.at(-1);
    if (before && at - before.at < ONE_PLACE_MM) before.by += by;
    else knots.push({ at, by });
  }
  const [start, end] = [knots[0]?.at ?? 0, knots.at(-1)?.at ?? 0];
  const above = stops.filter((stop) => stop <= start - clear).at(-1);
  const below = stops.find((stop) => stop >= end + clear);
  const whole = [
    ...(above === undefined ? [] : [{ at: above, by: 0 }]),
    ...knots,
    ...(below === undefined ? [] : [{ at: below, by: 0 }]),
  ];
  return smoothLine(
    whole.map(({ at }) => at),
    whole.map(({ by }) => by),
  );
}

/** Nearer than this two places are one. mm */
const ONE_PLACE_MM = 1;

/** The sum of changes; null where it is nothing everywhere. */
export function sumOfChanges(lines: readonly SmoothLine[]): SmoothLine | null {
  const [first, ...others] = lines;
  if (!first) return null;
  const sum = others.reduce((all, line) => combine(all, 1, line, 1), first);
  return [...sum.xs, ...sum.slopes].every((value) => value === 0) ? null : sum;
}

/** A line over a stretch with a change taken off it; the knots of the change count only within the stretch. */
export function lessChange(line: SmoothLine, change: SmoothLine): SmoothLine {
  const [from, to] = [line.ys[0] ?? 0, last(line.ys)];
  const whole = combine(line, 1, change, -1);
  const inside = whole.ys.flatMap((y, i) => (y >= from && y <= to ? [i] : []));
  const pick = (list: readonly number[]): number[] => inside.map((i) => list[i] as number);
  return { ys: pick(whole.ys), xs: pick(whole.xs), slopes: pick(whole.slopes) };
}
