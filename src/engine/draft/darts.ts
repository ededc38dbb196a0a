// Darts: wedges that end within a panel. An open one parts top edge or hem; a closed one lies wholly inside.

import { combine, type SmoothLine, xAt } from '../geometry/smoothLine';
import { type Issue, issue } from '../issue';
import type { DraftedLine, Leg, Seam } from './leg';
import type { Level } from './levels';
import type { Panel } from './panels';
import type { DartPoint, LevelName, Side, Wedge } from './types';

/** Heights of a dart's points, mm; null where the wedge reaches the edge. */
export interface Run {
  readonly upper: number | null;
  readonly lower: number | null;
}

/** A dart as it lies on its panel. */
export interface PanelDart extends Run {
  readonly wedge: string;
  /** The leg nearer the panel's inner edge. */
  readonly innerLeg: SmoothLine;
  readonly outerLeg: SmoothLine;
  /** The same legs on the block, in the same order. */
  readonly drafted: { readonly inner: DraftedLine; readonly outer: DraftedLine };
}

/** Whether a wedge ends within a panel. One on the centre line shapes that line and runs through. */
export const isDart = (wedge: Wedge): boolean =>
  wedge.station > -1 && (wedge.upper !== undefined || wedge.lower !== undefined);

/** The run of a wedge that parts two panels. */
export const THROUGH: Run = { upper: null, lower: null };

/** A dart shorter than this is a pleat; it is refused, and drawn as long as this. mm */
const LEAST_DART_MM = 30;

/** Where a wedge runs on a draft's levels. */
export function runOf(wedge: Wedge, levels: readonly Level[]): Run {
  if (!isDart(wedge)) return THROUGH;
  const height = (point: DartPoint | undefined): number | null => {
    const level = levels.find(({ name }) => name === point?.from);
    return point && level ? level.y + point.below : null;
  };
  const [upper, lower] = [height(wedge.upper), height(wedge.lower)];
  return { upper, lower: upper === null || lower === null ? lower : Math.max(lower, upper + LEAST_DART_MM) };
}

/** Nearer to its point than this a dart takes nothing of a level. mm */
const AT_POINT_MM = 5;

/** Whether a wedge can take cloth out at a height, mm. */
export const reaches = ({ upper, lower }: Run, y: number): boolean =>
  (upper === null || y >= upper + AT_POINT_MM) && (lower === null || y <= lower - AT_POINT_MM);

/** A dart that takes less than this at a level has shut there. mm */
const SHUT_MM = 1;

/**
 * A dart ends at the first level above and below its widest one where it takes nothing; what it would take beyond is let go,
 * so that width and dart agree. Other wedges are left as they are.
 */
export function shutWhereEmpty(
  run: Run,
  levels: readonly Level[],
  sized: ReadonlyMap<LevelName, number> | undefined,
): { run: Run; intake: Map<LevelName, number> } {
  const intake = new Map(sized);
  if (run.upper === null && run.lower === null) return { run, intake };
  const taken = levels.map(({ name, y }) => (reaches(run, y) ? (intake.get(name) ?? 0) : 0));
  const widest = taken.indexOf(Math.max(...taken));
  let { upper, lower } = run;
  for (const [i, { name, y }] of levels.entries()) {
    const between = levels.slice(Math.min(i, widest), Math.max(i, widest) + 1);
    const open = between.every((level) => (taken[levels.indexOf(level)] as number) >= SHUT_MM);
    if (open) continue;
    intake.set(name, 0);
    if (i > widest) lower = Math.min(lower ?? y, y);
    if (i < widest) upper = Math.max(upper ?? y, y);
  }
  return { run: { upper, lower }, intake };
}

/** A closed dart is sewn along a straight fold, else its legs would not be equal: its axis runs from point to point. */
export function straightened(axis: SmoothLine, { upper, lower }: Run): SmoothLine {
  if (upper === null || lower === null) return axis;
  const [from, to] = [xAt(axis, upper), xAt(axis, lower)];
  const slope = (to - from) / (lower - upper);
  return { ys: [upper, lower], xs: [from, to], slopes: [slope, slope] };
}

/** A leg: `axis` moved by `part` of what the dart takes. It exists within the run; beyond its points it stays there. */
export function dartLeg(
  axis: SmoothLine,
  taken: SmoothLine,
  part: number,
  { upper, lower }: Run,
): SmoothLine {
  const whole = combine(axis, 1, taken, part);
  const from = upper ?? Number.NEGATIVE_INFINITY;
  const to = lower ?? Number.POSITIVE_INFINITY;
  const inside = whole.ys.flatMap((y, i) => (y >= from && y <= to ? [i] : []));
  const pick = (list: readonly number[]): number[] => inside.map((i) => list[i] as number);
  return { ys: pick(whole.ys), xs: pick(whole.xs), slopes: pick(whole.slopes) };
}

/** Both legs of a dart as a seam. */
export function dartSeam(panel: Panel, dart: PanelDart): Seam {
  // The dart's inner leg is the outer edge of the cloth beside it.
  const a: Leg = { panel, which: 'outer', line: dart.innerLeg, drafted: dart.drafted.inner, dart };
  const b: Leg = { panel, which: 'inner', line: dart.outerLeg, drafted: dart.drafted.outer, dart };
  return { id: `${panel.id}/dart:${dart.wedge}`, kind: 'dart', a, b };
}

/** The seam of each open dart, from its point to the edge. A closed one is sewn from point to point and ends nowhere. */
export const dartSeams = (panel: Panel): Seam[] =>
  panel.darts
    .filter(({ upper, lower }) => (upper === null) !== (lower === null))
    .map((dart) => dartSeam(panel, dart));

/** What is wrong with a dart's points: in the wrong order or too near each other, or no level between them. */
export function checkRun(wedge: Wedge, side: Side, levels: readonly Level[]): Issue[] {
  if (!isDart(wedge)) return [];
  const place = { block: side, wedge: wedge.id };
  const { upper, lower } = runOf(wedge, levels);
  if (upper !== null && lower !== null && lower - upper <= LEAST_DART_MM)
    return [issue('dartTooShort', 'block', place, { least: LEAST_DART_MM })];
  return levels.some(({ y }) => reaches({ upper, lower }, y))
    ? []
    : [issue('dartTakesNothing', 'warn', place)];
}

/** A point nearer to an edge than this, or a dart that opens less there, cannot be sewn. mm */
const CLEAR_OF_EDGE_MM = 10;
const LEAST_OPENING_MM = 2;

/**
 * A panel's darts against its top edge and hem: a point that lies beyond an edge opens the dart there. One that neither
 * ends inside nor opens at the edge, or would run through, is taken off the panel and refused.
 *
 * @param edgeAt height of top edge and hem where a dart's legs stand
 */
export function settleDarts(
  panel: Panel,
  edgeAt: (dart: PanelDart, edge: 'top' | 'hem') => number,
): { panel: Panel; issues: Issue[] } {
  const issues: Issue[] = [];
  const darts = panel.darts.flatMap((dart) => {
    const [top, hem] = [edgeAt(dart, 'top'), edgeAt(dart, 'hem')];
    const width = (y: number): number => xAt(dart.outerLeg, y) - xAt(dart.innerLeg, y);
    const settled = {
      ...dart,
      upper: dart.upper === null || dart.upper < top ? null : dart.upper,
      lower: dart.lower === null || dart.lower > hem ? null : dart.lower,
    };
    const sewable =
      (settled.upper !== null || settled.lower !== null) &&
      (settled.upper === null ? width(top) >= LEAST_OPENING_MM : settled.upper - top >= CLEAR_OF_EDGE_MM) &&
      (settled.lower === null ? width(hem) >= LEAST_OPENING_MM : hem - settled.lower >= CLEAR_OF_EDGE_MM) &&
      (settled.upper === null || hem - settled.upper >= CLEAR_OF_EDGE_MM) &&
      (settled.lower === null || settled.lower - top >= CLEAR_OF_EDGE_MM);
    if (sewable) return [settled];
    issues.push(
      issue('dartEndsAtEdge', 'block', {
        block: dart.drafted.inner.side,
        piece: panel.id,
        wedge: dart.wedge,
      }),
    );
    return [];
  });
  return { panel: { ...panel, darts }, issues };
}

/** Where a dart lies on a panel, from the middle of its run; null when it lies elsewhere. */
export function liesOn(
  dart: PanelDart,
  panel: Pick<Panel, 'inner' | 'outer'>,
  top: number,
  hem: number,
): boolean {
  const y = ((dart.upper ?? top) + (dart.lower ?? hem)) / 2;
  const x = (xAt(dart.innerLeg, y) + xAt(dart.outerLeg, y)) / 2;
  return x > xAt(panel.inner, y) && x <= xAt(panel.outer, y);
}
