// Alterations of length: by how much each seam is shortened between two heights.

import type { BaseDraft } from '../edges/baseDraft';
import type { Raise } from '../panels/raise';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type LengthAlteration,
  refused,
} from './alteration';
import { keyOf } from './ofSide';
import { distanceAt, lineAt, type RoundBody, type RoundLine, wholeAt } from './roundBody';

export interface PlannedLengths {
  /** What the heights of a line are raised by. */
  readonly raiseAt: (line: RoundLine) => Raise;
  /** How far the top edge is lowered at a line, because cloth above the first level was taken out. mm */
  readonly topLoweredAt: (line: RoundLine) => number;
  readonly isAny: boolean;
  readonly outcomes: readonly (AlterationOutcome | null)[];
}

interface PlannedLength {
  readonly index: number;
  /** Null above the top level, where only the edge moves. */
  readonly stretch: { readonly from: number; readonly to: number } | null;
  /** mm at a line. */
  readonly byAt: (line: RoundLine) => number;
  /** The most it shortens anywhere. */
  readonly most: number;
}

/** What is left between two heights is at least this part of what was drafted there; our own bound. */
const LEAST_LEFT = 0.4;

export function planLengths(
  alterations: readonly (Alteration | null)[],
  base: BaseDraft,
  round: RoundBody,
): PlannedLengths {
  const outcomes: (AlterationOutcome | null)[] = alterations.map(() => null);
  const planned: (PlannedLength & { key: string })[] = [];
  const distanceOf = distancesAt(round, base.span.waist);
  for (const [index, each] of alterations.entries()) {
    if (each?.kind !== 'length') continue;
    const plan = planOne(each, index, base, round, distanceOf);
    if (typeof plan === 'string') outcomes[index] = refused(plan);
    else {
      outcomes[index] = APPLIED;
      planned.push({ ...plan, key: keyOf(each) });
    }
  }
  planned.sort((a, b) => (a.key < b.key ? -1 : 1));
  const kept = withRoom(planned, round);
  for (const { index } of planned.filter((each) => !kept.includes(each)))
    outcomes[index] = refused('lengthUsedUp');
  const known = new Map<RoundLine, Raise>();
  const raiseAt = (line: RoundLine): Raise => {
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
  { between: [upper, lower], at }: LengthAlteration,
  index: number,
  { levels, span }: BaseDraft,
  round: RoundBody,
  distanceOf: (line: RoundLine) => number,
): PlannedLength | 'levelGone' | 'placeGone' | 'edgeGone' {
  const heightOf = (bound: LengthAlteration['between'][number]): number | undefined =>
    bound === 'hem' ? span.hem : levels.find(({ name }) => name === bound)?.y;
  const isFromTop = upper === 'top';
  if (isFromTop && round.blocks.front.upper) return 'edgeGone';
  const [from, to] = [isFromTop ? span.top : heightOf(upper), heightOf(lower)];
  if (from === undefined || to === undefined || to - from < LEAST_STRETCH_MM) return 'levelGone';
  const said: { at: number; by: number }[] = [];
  for (const { place, by } of at) {
    const line = lineAt(round, place);
    if (!line) return 'placeGone';
    said.push({ at: distanceOf(line), by });
  }
  said.sort((a, b) => a.at - b.at);
  const byAt = (line: RoundLine): number => straightBetween(said, distanceOf(line));
  const most = Math.max(0, ...at.map(({ by }) => by));
  return { index, stretch: isFromTop ? null : { from, to }, byAt, most };
}

/** Distances of lines from centre front at a height, each reckoned once. */
function distancesAt(round: RoundBody, y: number): (line: RoundLine) => number {
  const whole = wholeAt(round, y);
  const known = new Map<RoundLine, number>();
  return (line) => {
    const distance = known.get(line) ?? distanceAt(round, line, y, whole);
    known.set(line, distance);
    return distance;
  };
}

/** A shorter stretch takes no cloth. mm */
const LEAST_STRETCH_MM = 5;

/** The amount at a distance round the body: straight between two places, beyond the outermost as there. */
function straightBetween(said: readonly { at: number; by: number }[], distance: number): number {
  const after = said.findIndex(({ at }) => at >= distance);
  const [before, behind] = [said[after - 1], said[after]];
  if (!behind) return said.at(-1)?.by ?? 0;
  if (!before || behind.at === before.at) return behind.by;
  return before.by + ((behind.by - before.by) * (distance - before.at)) / (behind.at - before.at);
}

/** The raise of a line, amounts of one stretch together. */
function raiseOf(planned: readonly PlannedLength[], line: RoundLine): Raise {
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

/** Those that leave enough between any two heights everywhere; where they do not, all that shorten there are let go. */
function withRoom<Planned extends PlannedLength>(planned: readonly Planned[], round: RoundBody): Planned[] {
  let kept = [...planned];
  const atMost = kept.reduce(
    (sum, { stretch, most }) => sum + (stretch ? most / (stretch.to - stretch.from) : 0),
    0,
  );
  if (atMost <= 1 - LEAST_LEFT) return kept;
  for (const line of [...round.lines, ...dartLines(round)]) {
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

const dartLines = ({ blocks }: RoundBody): RoundLine[] =>
  (['front', 'back'] as const).flatMap((block) =>
    blocks[block].wedges.map((wedge): RoundLine => ({ kind: 'dart', block, wedge })),
  );
