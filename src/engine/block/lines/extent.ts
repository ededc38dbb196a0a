// Where a wedge runs: from edge to edge, or as a dart to a point within its panel; and its legs within that run.

import { at } from '../../geometry/lists';
import { combine, type SmoothLine, within } from '../../geometry/smoothLine';
import type { DartPoint, Wedge } from '../../style/wedgeFields';
import { isDart } from '../../style/wedgeKind';
import { type Issue, issue } from '../../terms/issue';
import type { BlockName, LevelName } from '../../terms/names';
import type { Level } from './levels';

/** Heights of a dart's points, mm; null where the wedge reaches the edge. */
export interface Extent {
  readonly upper: number | null;
  readonly lower: number | null;
}

/** The extent of a wedge that parts two panels. */
export const THROUGH: Extent = { upper: null, lower: null };

/** Whether a drafted wedge of this extent parts two panels. What a style asks for is its kind, see `isDart`. */
export const isThrough = ({ upper, lower }: Extent): boolean => upper === null && lower === null;

/** The least length of a dart: a shorter one is a pleat. It is refused, and drawn with this length. mm */
const LEAST_DART_MM = 30;

/**
 * Where a wedge of a style runs on a draft's levels.
 *
 * @param top height of the level top edge, mm
 */
export function extentOf(wedge: Wedge, levels: readonly Level[], top: number): Extent {
  if (!isDart(wedge)) return THROUGH;
  const height = (point: DartPoint | undefined): number | null => {
    const level = levels.find(({ name }) => name === point?.from);
    return point && level ? level.y + point.below : null;
  };
  const upper = height(wedge.upper);
  const lower = height(wedge.lower);
  if (upper !== null)
    return { upper, lower: lower === null ? lower : Math.max(lower, upper + LEAST_DART_MM) };
  const bust = levels.find(({ name }) => name === 'bust');
  // Balancing gives no intake at the bust, so a balanced dart from a top edge above it ends there, and other wedges take what is
  // needed below.
  const endsAtBust = bust && wedge.sizing === 'balanced' && top < bust.y;
  return { upper, lower: lower !== null && endsAtBust ? Math.min(lower, bust.y) : lower };
}

/** A dart has no intake at a level nearer to its point than this. mm */
const AT_POINT_MM = 5;

/** Whether a wedge can take cloth out at a height, mm. */
export const reaches = ({ upper, lower }: Extent, y: number): boolean =>
  (upper === null || y >= upper + AT_POINT_MM) && (lower === null || y <= lower - AT_POINT_MM);

/**
 * A dart whose intake at a level is below the first is shut there; one whose intake is nowhere as large as the second is no dart.
 * mm
 */
const [SHUT_MM, LEAST_MM] = [1, 2];

/**
 * The extent and the intakes of a dart that takes nothing at some level: it ends at the first such level above and below its widest
 * one, and takes nothing beyond. A wedge that parts two panels keeps its own.
 *
 * @param sized the intakes that the dart was given, mm
 */
export function shutWhereEmpty(
  extent: Extent,
  levels: readonly Level[],
  sized: ReadonlyMap<LevelName, number> | undefined,
): { extent: Extent; intake: Map<LevelName, number> } {
  const intake = new Map(sized);
  if (isThrough(extent)) return { extent, intake };
  const taken = levels.map(({ name, y }) => (reaches(extent, y) ? (intake.get(name) ?? 0) : 0));
  const most = Math.max(...taken);
  if (most < LEAST_MM) return { extent, intake: new Map(levels.map(({ name }) => [name, 0])) };
  const widest = taken.indexOf(most);
  let { upper, lower } = extent;
  // Outwards from the widest level, each way: from the first that is empty on, nothing is taken.
  for (const way of [-1, 1] as const) {
    let shut = false;
    for (let i = widest; levels[i]; i += way) {
      const { name, y } = at(levels, i);
      shut ||= at(taken, i) < SHUT_MM;
      if (!shut) continue;
      intake.set(name, 0);
      if (i > widest) lower = Math.min(lower ?? y, y);
      if (i < widest) upper = Math.max(upper ?? y, y);
    }
  }
  return { extent: { upper, lower }, intake };
}

/** A leg: the axis moved by `part` of the intake. It has knots within its extent only, and stays vertical beyond its points. */
export function dartLeg(axis: SmoothLine, taken: SmoothLine, part: number, extent: Extent): SmoothLine {
  const whole = combine(axis, 1, taken, part);
  if (isThrough(extent)) return whole;
  const from = extent.upper ?? Number.NEGATIVE_INFINITY;
  const to = extent.lower ?? Number.POSITIVE_INFINITY;
  return within(whole, from, to);
}

/** The issues of a dart whose points are in the wrong order or too near each other, or that has no level between them. */
export function checkExtent(wedge: Wedge, block: BlockName, levels: readonly Level[], top: number): Issue[] {
  if (!isDart(wedge)) return [];
  const place = { block, wedge: wedge.id };
  const { upper, lower } = extentOf(wedge, levels, top);
  if (upper !== null && lower !== null && lower - upper <= LEAST_DART_MM)
    return [issue('dartTooShort', { least: LEAST_DART_MM }, place)];
  return levels.some(({ y }) => reaches({ upper, lower }, y)) ? [] : [issue('dartTakesNothing', {}, place)];
}
