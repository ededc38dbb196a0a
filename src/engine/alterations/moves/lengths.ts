// Alterations of length: by how much each seam is shortened between two heights.

import type { BaseDraft } from '../../edges/baseDraft';
import type { Raise } from '../../panels/raise';
import { type BodyLine, type ClosedHalf, distancesAt, lineAt, wholeAt } from '../closed/closedHalf';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type LengthAlteration,
  refused,
} from '../terms/alteration';
import { keyOf } from '../terms/alterationsOfSide';

export interface PlannedLengths {
  /** What the heights of a line are raised by. */
  readonly raiseAt: (line: BodyLine) => Raise;
  /** How far the top edge is lowered at a line, because cloth above the first level was taken out. mm */
  readonly topLoweredAt: (line: BodyLine) => number;
  readonly isAny: boolean;
  /** The height above which nothing is shortened and no edge is lowered, mm; infinite where nothing is at all. */
  readonly from: number;
  readonly outcomes: readonly (AlterationOutcome | null)[];
}

interface PlannedLength {
  /** The indices of the alterations: those with the same bounds and places are one. */
  readonly of: readonly number[];
  /** Null above the top level, where only the edge moves. */
  readonly stretch: { readonly from: number; readonly to: number } | null;
  /** How much it shortens at a line, mm; longer below 0. */
  readonly byAt: (line: BodyLine) => number;
  /** The most that it shortens anywhere, mm. */
  readonly most: number;
}

/** What is left between two heights is at least this part of what was drafted there; our own bound. */
const LEAST_LEFT = 0.4;

/**
 * Plans the alterations of length. One whose level or place the draft does not have is refused, and so are all that would leave less
 * than {@link LEAST_LEFT} of a stretch.
 */
export function planLengths(
  alterations: readonly (Alteration | null)[],
  base: BaseDraft,
  closedHalf: ClosedHalf,
): PlannedLengths {
  const outcomes: (AlterationOutcome | null)[] = alterations.map(() => null);
  const asked: AskedLength[] = [];
  for (const [index, each] of alterations.entries()) {
    if (each?.kind !== 'length') continue;
    const length = askedLength(each, index, base, closedHalf);
    if (typeof length === 'string') outcomes[index] = refused(length);
    else {
      outcomes[index] = APPLIED;
      asked.push(length);
    }
  }
  const planned = plansOf(asked, base, closedHalf);
  const kept = withRoom(planned, closedHalf);
  for (const { of } of planned.filter((each) => !kept.includes(each)))
    for (const index of of) outcomes[index] = refused('lengthUsedUp');
  const known = new Map<BodyLine, Raise>();
  const raiseAt = (line: BodyLine): Raise => {
    const raise = known.get(line) ?? raiseOf(kept, line);
    known.set(line, raise);
    return raise;
  };
  return {
    raiseAt,
    topLoweredAt: (line) => kept.reduce((sum, { stretch, byAt }) => (stretch ? sum : sum + byAt(line)), 0),
    isAny: kept.length > 0,
    from: Math.min(...kept.map(({ stretch }) => stretch?.from ?? Number.NEGATIVE_INFINITY)),
    outcomes,
  };
}

/** An alteration of length on the draft's own heights and lines. */
interface AskedLength {
  readonly index: number;
  readonly key: string;
  readonly stretch: PlannedLength['stretch'];
  readonly at: readonly { readonly line: BodyLine; readonly by: number }[];
}

function askedLength(
  alteration: LengthAlteration,
  index: number,
  { levels, span }: BaseDraft,
  closedHalf: ClosedHalf,
): AskedLength | 'levelGone' | 'placeGone' | 'edgeGone' {
  const [upper, lower] = alteration.between;
  const heightOf = (bound: LengthAlteration['between'][number]): number | undefined =>
    bound === 'hem' ? span.hem : levels.find(({ name }) => name === bound)?.y;
  const isFromTop = upper === 'top';
  if (isFromTop && closedHalf.blocks.front.upper) return 'edgeGone';
  const [from, to] = [isFromTop ? span.top : heightOf(upper), heightOf(lower)];
  if (from === undefined || to === undefined || to - from < LEAST_STRETCH_MM) return 'levelGone';
  const at: { line: BodyLine; by: number }[] = [];
  for (const { place, by } of alteration.at) {
    const line = lineAt(closedHalf, place);
    if (!line) return 'placeGone';
    at.push({ line, by });
  }
  return { index, key: keyOf(alteration), stretch: isFromTop ? null : { from, to }, at };
}

/** Alterations of length in the order of their keys, those with the same bounds and places added up. */
function plansOf(asked: AskedLength[], base: BaseDraft, closedHalf: ClosedHalf): PlannedLength[] {
  if (asked.length === 0) return [];
  asked.sort((a, b) => (a.key < b.key ? -1 : 1));
  const sums: { of: number[]; stretch: PlannedLength['stretch']; at: AskedLength['at'] }[] = [];
  for (const { index, stretch, at } of asked) {
    const same = sums.find(
      (each) =>
        each.stretch?.from === stretch?.from &&
        each.stretch?.to === stretch?.to &&
        each.at.length === at.length &&
        each.at.every(({ line }, i) => line === at[i]?.line),
    );
    if (!same) sums.push({ of: [index], stretch, at });
    else {
      same.of.push(index);
      same.at = same.at.map(({ line, by }, i) => ({ line, by: by + (at[i]?.by ?? 0) }));
    }
  }
  const distanceOf = distancesAt(closedHalf, base.span.waist, wholeAt(closedHalf, base.span.waist));
  return sums.map(({ of, stretch, at }): PlannedLength => {
    const amounts = at.map(({ line, by }) => ({ at: distanceOf(line), by }));
    amounts.sort((a, b) => a.at - b.at);
    const byAt = (line: BodyLine): number => straightBetween(amounts, distanceOf(line));
    return { of, stretch, byAt, most: Math.max(0, ...amounts.map(({ by }) => by)) };
  });
}

/** A stretch shorter than this cannot be shortened or lengthened. mm */
const LEAST_STRETCH_MM = 5;

/** The amount at a distance from centre front, mm: interpolated between two places, and constant beyond the outermost. */
function straightBetween(amounts: readonly { at: number; by: number }[], distance: number): number {
  const after = amounts.findIndex(({ at }) => at >= distance);
  const [before, behind] = [amounts[after - 1], amounts[after]];
  if (!behind) return amounts.at(-1)?.by ?? 0;
  if (!before || behind.at === before.at) return behind.by;
  return before.by + ((behind.by - before.by) * (distance - before.at)) / (behind.at - before.at);
}

/** The raise of a line, with the amounts of one stretch added up. */
function raiseOf(planned: readonly PlannedLength[], line: BodyLine): Raise {
  const raise: { from: number; to: number; by: number }[] = [];
  for (const { stretch, byAt } of planned) {
    const by = stretch ? byAt(line) : 0;
    if (!stretch || by === 0) continue;
    const own = raise.find(({ from, to }) => from === stretch.from && to === stretch.to);
    if (own) own.by += by;
    else raise.push({ from: stretch.from, to: stretch.to, by });
  }
  return raise.filter(({ by }) => by !== 0);
}

/** Those that leave at least {@link LEAST_LEFT} of every stretch. Where they leave less, all that shorten there are left out. */
function withRoom<Planned extends PlannedLength>(
  planned: readonly Planned[],
  closedHalf: ClosedHalf,
): Planned[] {
  let kept = [...planned];
  const atMost = kept.reduce(
    (sum, { stretch, most }) => sum + (stretch ? most / (stretch.to - stretch.from) : 0),
    0,
  );
  if (atMost <= 1 - LEAST_LEFT) return kept;
  for (const line of [...closedHalf.lines, ...dartLines(closedHalf)]) {
    const bounds = [...new Set(kept.flatMap(({ stretch }) => (stretch ? [stretch.from, stretch.to] : [])))];
    bounds.sort((a, b) => a - b);
    for (const [i, to] of bounds.entries()) {
      const from = bounds[i - 1];
      if (from === undefined) continue;
      const rateOf = ({ stretch, byAt }: PlannedLength): number =>
        stretch && stretch.from <= from && stretch.to >= to ? byAt(line) / (stretch.to - stretch.from) : 0;
      if (kept.reduce((sum, each) => sum + rateOf(each), 0) <= 1 - LEAST_LEFT) continue;
      kept = kept.filter((each) => rateOf(each) <= 0);
    }
  }
  return kept;
}

const dartLines = ({ blocks }: ClosedHalf): BodyLine[] =>
  (['front', 'back'] as const).flatMap((block) =>
    blocks[block].wedges.map((wedge): BodyLine => ({ kind: 'dart', block, wedge })),
  );
