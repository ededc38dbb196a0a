// Alterations of seams and darts: how far each edge is moved at every height.

import type { BaseDraft } from '../../edges/baseDraft';
import type { SmoothLine } from '../../geometry/smoothLine';
import type { Style } from '../../style/style';
import { type BodyLine, type ClosedHalf, lineNamed } from '../closed/closedHalf';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type RefusalCode,
  refused,
  type SeamAlteration,
} from '../terms/alteration';
import { keyOf } from '../terms/alterationsOfSide';
import { changeLine, changeRun, sumOfChanges } from './changeLine';

/** An alteration of a seam that the draft has. */
export interface PlannedSeam {
  readonly index: number;
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
    [...planned].map(([line, own]) => [
      line,
      { a: sumOfChanges(own.map(({ a }) => a)), b: sumOfChanges(own.map(({ b }) => b)) },
    ]),
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
  const planned = new Map<BodyLine, (PlannedSeam & { readonly key: string })[]>();
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
    const change = changeOn(stretch, each, base, isTurned);
    if (typeof change === 'string') return refused(change);
    const own = planned.get(line) ?? [];
    own.push({ index, a: change.a, b: change.b, key: keyOf(each) });
    planned.set(line, own);
    return APPLIED;
  });
  for (const own of planned.values()) if (own.length > 1) own.sort((a, b) => (a.key < b.key ? -1 : 1));
  return { planned, outcomes };
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

/** What an alteration moves the edges of its seam by, or why it cannot be made. */
function changeOn(
  { upper, lower, stops }: Stretch,
  { at }: SeamAlteration,
  { levels, span }: BaseDraft,
  isTurned: boolean,
): Pick<PlannedSeam, 'a' | 'b'> | RefusalCode {
  const amounts: { y: number; a: number; b: number }[] = [];
  for (const { height, a, b } of at) {
    const y =
      height.kind === 'belowWaist'
        ? span.waist + height.mm
        : levels.find(({ name }) => name === height.level)?.y;
    if (y === undefined) return 'levelGone';
    if (y < upper + CLEAR_OF_END_MM || y > lower - CLEAR_OF_END_MM) return 'beyondSeam';
    amounts.push(isTurned ? { y, a: b, b: a } : { y, a, b });
  }
  if (amounts.length > 1) amounts.sort((one, other) => one.y - other.y);
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
  return { a: along('a'), b: along('b') };
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
