// What a dart leaves on the cloth: its stitching lines, drill marks inside its points, and the shape of the edge across it.

import { type Level, nearestLevel } from '../block/lines/levels';
import { distance, type Point } from '../geometry/point';
import { pointsDown } from '../geometry/polyline';
import { xAt } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import { inches } from '../terms/units';
import { type DartLegs, isDartLegs, type Outline } from './edgeRow';
import type { DartLines, Mark } from './piece';

/** A hole is drilled so far inside a dart's point, so that the stitching covers it (common practice, no source). mm */
export const DRILL_INSIDE_MM = inches(0.5);

/** Drill marks on the fold of each dart, inside the points it has. */
export function drillMarks(panel: Panel, levels: readonly Level[]): Mark[] {
  return panel.darts.flatMap(({ upper, lower, innerLeg, outerLeg }) =>
    [
      ...(upper === null ? [] : [upper + DRILL_INSIDE_MM]),
      ...(lower === null ? [] : [lower - DRILL_INSIDE_MM]),
    ].map(
      (y): Mark => ({
        kind: 'drill',
        level: nearestLevel(levels, y),
        at: { x: (xAt(innerLeg, y) + xAt(outerLeg, y)) / 2, y },
        edge: null,
      }),
    ),
  );
}

/** The stitching lines of a panel's darts. */
export function dartLines(panel: Panel, outline: Outline): DartLines[] {
  const open = [...outline.top, ...outline.hem].filter(isDartLegs);
  return panel.darts.flatMap((dart): DartLines[] => {
    const legs = open.find((each) => each.dart === dart);
    if (legs) return [{ wedge: dart.wedge, inner: legs.inner, outer: legs.outer, open: true }];
    const { upper, lower } = dart;
    if (upper === null || lower === null) return [];
    const line = (which: 'innerLeg' | 'outerLeg'): Point[] => pointsDown(dart[which], upper, lower);
    return [{ wedge: dart.wedge, inner: line('innerLeg'), outer: line('outerLeg'), open: false }];
  });
}

/**
 * The peak of an edge on a dart's fold: the edge beside the dart, mirrored in its leg, reaches the fold there. Null where that
 * is farther from the legs' ends than their distance: a fold that lies so flat is cut straight across.
 *
 * @param before the edge up to the dart's inner leg
 */
export function peakOf(
  before: readonly Point[],
  { inner, outer }: Pick<DartLegs, 'inner' | 'outer'>,
  edge: 'top' | 'hem',
): Point | null {
  const end = before.at(-1);
  const beside = before.at(-2);
  const [tip, other] = edge === 'hem' ? [inner[0], outer.at(-1)] : [inner.at(-1), outer[0]];
  if (!end || !beside || !tip || !other) return null;
  const leg = unit(tip, end);
  const back = unit(end, beside);
  const along = back.x * leg.x + back.y * leg.y;
  const way = { x: 2 * along * leg.x - back.x, y: 2 * along * leg.y - back.y };
  const fold = unit(tip, { x: (end.x + other.x) / 2, y: (end.y + other.y) / 2 });
  const turn = way.x * fold.y - way.y * fold.x;
  if (Math.abs(turn) < 1e-6) return null;
  const reach = ((tip.x - end.x) * fold.y - (tip.y - end.y) * fold.x) / turn;
  return reach > 0 && reach < distance(end, other)
    ? { x: end.x + way.x * reach, y: end.y + way.y * reach }
    : null;
}

function unit(from: Point, to: Point): Point {
  const length = distance(from, to) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
