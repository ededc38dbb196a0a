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
  readonly outcomes: readonly (AlterationOutcome | null)[];
}

interface PlannedLength {
  readonly index: number;
  readonly key: string;
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
  const planned: PlannedLength[] = [];
  const distanceOf = distancesAt(closedHalf, base.span.waist, wholeAt(closedHalf, base.span.waist));
  for (const [index, each] of alterations.entries()) {
    if (each?.kind !== 'length') continue;
    const plan = planOne(each, index, base, closedHalf, distanceOf);
    if (typeof plan === 'string') outcomes[index] = refused(plan);
    else {
      outcomes[index] = APPLIED;
      planned.push(plan);
    }
  }
  planned.sort((a, b) => (a.key < b.key ? -1 : 1));
  const kept = withRoom(planned, closedHalf);
  for (const { index } of planned.filter((each) => !kept.includes(each)))
    outcomes[index] = refused('lengthUsedUp');
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
    outcomes,
  };
}

function planOne(
  alteration: LengthAlteration,
  index: number,
  { levels, span }: BaseDraft,
  closedHalf: ClosedHalf,
  distanceOf: (line: BodyLine) => number,
): PlannedLength | 'levelGone' | 'placeGone' | 'edgeGone' {
  const {
    between: [upper, lower],
    at,
  } = alteration;
  const heightOf = (bound: LengthAlteration['between'][number]): number | undefined =>
    bound === 'hem' ? span.hem : levels.find(({ name }) => name === bound)?.y;
  const isFromTop = upper === 'top';
  if (isFromTop && closedHalf.blocks.front.upper) return 'edgeGone';
  const [from, to] = [isFromTop ? span.top : heightOf(upper), heightOf(lower)];
  if (from === undefined || to === undefined || to - from < LEAST_STRETCH_MM) return 'levelGone';
  const amounts: { at: number; by: number }[] = [];
  for (const { place, by } of at) {
    const line = lineAt(closedHalf, place);
    if (!line) return 'placeGone';
    amounts.push({ at: distanceOf(line), by });
  }
  amounts.sort((a, b) => a.at - b.at);
  const byAt = (line: BodyLine): number => straightBetween(amounts, distanceOf(line));
  const most = Math.max(0, ...at.map(({ by }) => by));
  const stretch = isFromTop ? null : { from, to };
  return { index, key: keyOf(alteration), stretch, byAt, most };
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
