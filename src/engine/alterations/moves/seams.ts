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
import { changeLine } from './changeLine';

/** An alteration of a seam that the draft has. */
export interface PlannedSeam {
  readonly index: number;
  readonly key: string;
  readonly line: BodyLine;
  /** How far the first mate's edge moves into its panel at each height, and the second's, mm. */
  readonly a: SmoothLine;
  readonly b: SmoothLine;
}

/** A change runs out at the next level that is no nearer than this. mm */
const CLEAR_OF_LEVEL_MM = 15;

/** Nearer to a dart's point, or to the end of a seam in neckline, shoulder or armhole, nothing can be altered. mm */
const CLEAR_OF_END_MM = 10;

/** The alterations of seams that can be made, in the order of their keys, and the outcome of each in the order of the list. */
export function planSeams(
  alterations: readonly (Alteration | null)[],
  base: BaseDraft,
  closedHalf: ClosedHalf,
  closure: Style['closure'],
): { planned: PlannedSeam[]; outcomes: (AlterationOutcome | null)[] } {
  const planned: PlannedSeam[] = [];
  const outcomes = alterations.map((each, index): AlterationOutcome | null => {
    if (each?.kind !== 'seam') return null;
    const plan = planOne(each, base, closedHalf, closure);
    if (typeof plan === 'string') return refused(plan);
    planned.push({ ...plan, index, key: keyOf(each) });
    return APPLIED;
  });
  planned.sort((a, b) => (a.key < b.key ? -1 : 1));
  return { planned, outcomes };
}

function planOne(
  { seam, at }: SeamAlteration,
  { levels, span }: BaseDraft,
  closedHalf: ClosedHalf,
  closure: Style['closure'],
): Omit<PlannedSeam, 'index' | 'key'> | RefusalCode {
  const named = lineNamed(closedHalf, seam);
  if (!named) return 'seamGone';
  const { line, isTurned } = named;
  if (line.kind === 'centre' && ['fold', 'busk'].includes(closure[line.block])) return 'centreStraight';
  const { upper, lower } = endsOf(line, closedHalf);
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
  const between = levels.map(({ y }) => y).filter((y) => y > upper && y < lower);
  const stops = [upper, ...between, lower].filter(Number.isFinite);
  const clear = amounts.some(({ y }) => y - upper < CLEAR_OF_LEVEL_MM || lower - y < CLEAR_OF_LEVEL_MM)
    ? CLEAR_OF_END_MM
    : CLEAR_OF_LEVEL_MM;
  const along = (which: 'a' | 'b'): SmoothLine =>
    changeLine(
      amounts.map((each) => ({ at: each.y, by: each[which] })),
      stops,
      clear,
    );
  return { line, a: along('a'), b: along('b') };
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
