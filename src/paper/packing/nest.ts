// Nests outlines: each is laid where it costs least among the places at which it touches others or the edges.

import type { Profile } from './profile';
import { type LaidProfile, overAcross, overDown, type Span, TOUCH_MM } from './slide';

/** The area that outlines are laid on, and the cost of places on it. */
export interface PackingArea {
  /** The span of places for a profile's corner, mm. */
  readonly across: (profile: Profile) => Span;
  readonly down: (profile: Profile) => Span;
  /** Places that are tried even where no outline lies, such as at the edges of sheets. */
  readonly xs: (profile: Profile) => readonly number[];
  readonly ys: (profile: Profile) => readonly number[];
  /** Cost of one more outline at a place, after those that were taken. */
  readonly cost: (profile: Profile, x: number, y: number) => number;
  readonly take: (laid: LaidProfile) => void;
}

export interface Spot extends LaidProfile {
  /** Which of the outline's profiles lies there. */
  readonly way: number;
}

/**
 * A spot for each outline, in their order; null where their total cost reaches `most`. Of an outline's profiles a later one is
 * taken only where it costs less.
 */
export function nest(
  outlines: readonly (readonly Profile[])[],
  area: PackingArea,
  most: number,
): Spot[] | null {
  const laid: Spot[] = [];
  let spent = 0;
  for (const ways of outlines) {
    const { spot, cost } = cheapest(ways, laid, area);
    spent += cost;
    if (!spot || spent >= most) return null;
    laid.push(spot);
    area.take(spot);
  }
  return laid;
}

function cheapest(
  ways: readonly Profile[],
  laid: readonly LaidProfile[],
  area: PackingArea,
): { readonly spot: Spot | null; readonly cost: number } {
  let spot: Spot | null = null;
  let least = Infinity;
  for (const [way, profile] of ways.entries()) {
    const weigh = (x: number, y: number): void => {
      const cost = area.cost(profile, x, y);
      if (cost < least) [spot, least] = [{ profile, x, y, way }, cost];
    };
    const { widthMm, heightMm } = profile;
    const [across, down] = [area.across(profile), area.down(profile)];
    const ys = [...area.ys(profile)];
    const xs = [...area.xs(profile)];
    const beside = [...xs];
    for (const { x, y, profile: other } of laid) {
      ys.push(y, y + other.heightMm - heightMm, y + other.heightMm, y - heightMm);
      beside.push(x, x + other.widthMm - widthMm);
    }
    for (const y of distinct(ys, down)) {
      const spans = spansOf(laid, (other) => overAcross(profile, y, other));
      for (const x of xs) if (isFree(x, across, spans)) weigh(x, y);
      for (const span of spans) for (const x of span) if (isFree(x, across, spans)) weigh(x, y);
    }
    for (const x of distinct(beside, across)) {
      const spans = spansOf(laid, (other) => overDown(profile, x, other));
      for (const span of spans) for (const y of span) if (isFree(y, down, spans)) weigh(x, y);
    }
  }
  return { spot, cost: least };
}

function spansOf(laid: readonly LaidProfile[], spanOf: (other: LaidProfile) => Span | null): Span[] {
  const spans: Span[] = [];
  for (const other of laid) {
    const span = spanOf(other);
    if (span) spans.push(span);
  }
  return spans;
}

/** Places nearer to each other than this count as one. mm */
const APART_MM = 0.5;

/** The values inside a span in order; of values that are nearly equal the first. */
function distinct(values: number[], [least, most]: Span): number[] {
  values.sort((a, b) => a - b);
  let last = -Infinity;
  return values.filter((value) => {
    if (value < least - TOUCH_MM || value > most + TOUCH_MM || value - last < APART_MM) return false;
    last = value;
    return true;
  });
}

/** Whether a place is inside the area and outside all forbidden spans. */
function isFree(value: number, [least, most]: Span, spans: readonly Span[]): boolean {
  if (value < least - TOUCH_MM || value > most + TOUCH_MM) return false;
  for (const [from, to] of spans) if (value > from + TOUCH_MM && value < to - TOUCH_MM) return false;
  return true;
}
