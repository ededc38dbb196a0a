// Alterations of seams and darts: how far each edge is moved at every height.

import type { BaseDraft } from '../../edges/baseDraft';
import { crossingAt } from '../../edges/edgeLine';
import { at } from '../../geometry/lists';
import type { SmoothLine } from '../../geometry/smoothLine';
import type { Style } from '../../style/style';
import { type BodyLine, type ClosedHalf, distancesAt, lineNamed } from '../closed/closedHalf';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type RefusalCode,
  refused,
  type SeamAlteration,
  type SeamEnd,
  type SeamHeight,
} from '../terms/alteration';
import { keyOf } from '../terms/alterationsOfSide';
import { changeLine, changeRun, sumOfChanges } from './changeLine';

/** An alteration of a seam that the draft has, or several at one height. */
interface PlannedSeam {
  /** The indices of the alterations. */
  readonly of: readonly number[];
  /** The most that either edge moves out of its panel, mm. */
  readonly mostOut: number;
  /** How far the first mate's edge moves into its panel at each height, and the second's, mm. */
  readonly a: SmoothLine;
  readonly b: SmoothLine;
}

/** The alterations on each seam that has any, in the order in which they are added up. */
export type PlannedSeams = ReadonlyMap<BodyLine, readonly PlannedSeam[]>;

/** How far the edges of each altered seam move in all; null for one that does not. */
export type SeamChanges = ReadonlyMap<BodyLine, Readonly<Record<'a' | 'b', SmoothLine | null>>>;

/** What the alterations on each seam add up to. */
export const changesOf = (planned: PlannedSeams): SeamChanges =>
  new Map(
    [...planned].map(([line, own]) => {
      const a = sumOfChanges(own.map((each) => each.a));
      const isAlike = own.every((each) => each.a === each.b);
      return [line, { a, b: isAlike ? a : sumOfChanges(own.map((each) => each.b)) }];
    }),
  );

/** A change runs out at the next level that is no nearer than this. mm */
const CLEAR_OF_LEVEL_MM = 15;

/** Nearer to a dart's point, or to the end of a seam in neckline, shoulder or armhole, nothing can be altered. mm */
const CLEAR_OF_END_MM = 10;

/** The alterations of seams that can be made, and the outcome of each in the order of the list. */
export function planSeams(
  alterations: readonly (Alteration | null)[],
  base: BaseDraft,
  closedHalf: ClosedHalf,
  closure: Style['closure'],
): { planned: PlannedSeams; outcomes: (AlterationOutcome | null)[] } {
  const asked = new Map<BodyLine, AskedSeam[]>();
  const stretches = new Map<BodyLine, Stretch>();
  const outcomes = alterations.map((each, index): AlterationOutcome | null => {
    if (each?.kind !== 'seam') return null;
    const named = lineNamed(closedHalf, each.seam);
    if (!named) return refused('seamGone');
    const { line, isTurned } = named;
    if (line.kind === 'centre' && ['fold', 'busk'].includes(closure[line.block]))
      return refused('centreStraight');
    const stretch = stretches.get(line) ?? stretchOf(line, base, closedHalf);
    stretches.set(line, stretch);
    const amounts = amountsOn(stretch, each, base, isTurned, (end) => endOf(line, end, base, closedHalf));
    if (typeof amounts === 'string') return refused(amounts);
    const own = asked.get(line) ?? [];
    own.push({ index, amounts, key: keyOf(each) });
    asked.set(line, own);
    return APPLIED;
  });
  const planned = new Map<BodyLine, readonly PlannedSeam[]>();
  for (const [line, own] of asked) planned.set(line, plannedOn(stretches.get(line) as Stretch, own));
  return { planned, outcomes };
}

/** An alteration as it is asked for on its seam: the amounts from the top down. */
interface AskedSeam {
  readonly index: number;
  readonly key: string;
  readonly amounts: readonly SeamAmount[];
}

/** What the edges of a seam are moved by at a height, mm. */
interface SeamAmount {
  readonly y: number;
  readonly a: number;
  readonly b: number;
}

/** The changes of one seam in the order of their keys. Those that are altered at one height alone, and at the same, are one. */
function plannedOn(stretch: Stretch, asked: AskedSeam[]): PlannedSeam[] {
  if (asked.length > 1) asked.sort((a, b) => (a.key < b.key ? -1 : 1));
  const changes: { of: number[]; amounts: readonly SeamAmount[] }[] = [];
  for (const { index, amounts } of asked) {
    const [own] = amounts;
    const same =
      own &&
      amounts.length === 1 &&
      changes.find((each) => each.amounts.length === 1 && each.amounts[0]?.y === own.y);
    if (same) {
      const before = at(same.amounts, 0);
      same.of.push(index);
      same.amounts = [{ y: own.y, a: before.a + own.a, b: before.b + own.b }];
    } else changes.push({ of: [index], amounts });
  }
  return changes.map(({ of, amounts }) => ({ of, ...changeOn(stretch, amounts) }));
}

/** From where to where a seam can be altered, and where a change of it can run out; mm. */
interface Stretch {
  readonly upper: number;
  readonly lower: number;
  readonly stops: readonly number[];
}

function stretchOf(line: BodyLine, { levels }: BaseDraft, closedHalf: ClosedHalf): Stretch {
  const { upper, lower } = endsOf(line, closedHalf);
  const between = levels.map(({ y }) => y).filter((y) => y > upper && y < lower);
  return { upper, lower, stops: [upper, ...between, lower].filter(Number.isFinite) };
}

/** What an alteration moves the edges of its seam by at each height from the top down, or why it cannot be made. */
function amountsOn(
  { upper, lower }: Stretch,
  { at }: SeamAlteration,
  { levels, span }: BaseDraft,
  isTurned: boolean,
  endAt: (end: SeamEnd) => number | null,
): readonly SeamAmount[] | RefusalCode {
  const heightAt = (height: SeamHeight): number | null => {
    if (height.kind === 'end') return endAt(height.end);
    if (height.kind === 'belowWaist') return span.waist + height.mm;
    return levels.find(({ name }) => name === height.level)?.y ?? null;
  };
  const amounts: SeamAmount[] = [];
  for (const { height, a, b } of at) {
    const y = heightAt(height);
    if (y === null) return height.kind === 'end' ? 'edgeGone' : 'levelGone';
    if (y < upper + CLEAR_OF_END_MM || y > lower - CLEAR_OF_END_MM) return 'beyondSeam';
    amounts.push(isTurned ? { y, a: b, b: a } : { y, a, b });
  }
  if (amounts.length > 1) amounts.sort((one, other) => one.y - other.y);
  return amounts;
}

/** Where the top edge or the hem crosses a line as drafted, mm; null where neckline and armhole stand for the top edge. */
function endOf(line: BodyLine, end: SeamEnd, { edges }: BaseDraft, closedHalf: ClosedHalf): number | null {
  if (end === 'top' && closedHalf.blocks.front.upper) return null;
  const { base, lines, whole } = edges[end];
  return crossingAt(lines.wholeEdge, distancesAt(closedHalf, base, whole)(line)).y;
}

/** How the edges of a seam move along it by amounts at heights. */
function changeOn({ upper, lower, stops }: Stretch, amounts: readonly SeamAmount[]): Omit<PlannedSeam, 'of'> {
  const isNearEnd = amounts.some(({ y }) => y - upper < CLEAR_OF_LEVEL_MM || lower - y < CLEAR_OF_LEVEL_MM);
  const run = changeRun(
    amounts.map(({ y }) => y),
    stops,
    isNearEnd ? CLEAR_OF_END_MM : CLEAR_OF_LEVEL_MM,
  );
  const along = (which: 'a' | 'b'): SmoothLine =>
    changeLine(
      run,
      amounts.map((each) => each[which]),
    );
  const a = along('a');
  // Those nearer to each other than a mm are one place of the change and add up, so all are counted.
  let mostOut = 0;
  for (const each of amounts) mostOut += Math.max(0, -each.a, -each.b);
  return { a, b: amounts.every((each) => each.a === each.b) ? a : along('b'), mostOut };
}

/**
 * Heights of a dart's points, and of the end of a seam in neckline, shoulder or armhole, mm; infinite where the line runs on to top
 * edge or hem.
 */
function endsOf(line: BodyLine, { blocks }: ClosedHalf): { upper: number; lower: number } {
  const [top, hem] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (line.kind === 'dart')
    return { upper: line.wedge.extent.upper ?? top, lower: line.wedge.extent.lower ?? hem };
  if (line.kind !== 'wedge') return { upper: top, lower: hem };
  const end = blocks[line.block].upper?.ends.find(({ wedge }) => wedge === line.wedge.id);
  return { upper: end?.at.point.y ?? top, lower: hem };
}
