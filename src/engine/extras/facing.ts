// The facing behind a laced edge: it has that edge, and as much of top edge and hem as it is wide.

import { firstIntersection } from '../geometry/firstIntersection';
import { at } from '../geometry/lists';
import { offsetPolyline } from '../geometry/offset/offsetPolyline';
import { between, distance, type Point } from '../geometry/point';
import type { EdgePlace } from '../pieces/piece';
import type { BesideCentre, LacedEdge, MarkOnEdge } from './lacedEdge';

/** A run of the outline, counter-clockwise as seen on paper. */
interface FacingRun extends BesideCentre {
  readonly at: EdgePlace['at'];
}

export interface FacingShape {
  /** Once round: the laced edge from the top down, hem, the edge parallel to the laced one, top edge. */
  readonly outline: readonly FacingRun[];
  /** Balance marks of the laced edge, `inner` on the facing, and square across from them on the edge parallel to it. */
  readonly marks: readonly MarkOnEdge[];
}

/** A facing `width` mm wide on its panel; null where top edge and hem leave no room for it. */
export function facingShape({ centre, top, hem, marks }: LacedEdge, width: number): FacingShape | null {
  // Moved to its right, the edge walked upwards moves into the cloth.
  const { points, selfIntersects, endRunsBack } = offsetPolyline({
    points: [...centre].reverse(),
    allowance: width,
  });
  const inner = lengthened(points);
  const [foot, head] = [firstCrossing(hem, inner), firstCrossing(top, inner)];
  if (selfIntersects || endRunsBack || !foot || !head || foot.on >= head.on) return null;
  const [from, to] = [Math.floor(foot.on) + 1, Math.ceil(head.on)];
  const line = [foot.at, ...inner.slice(from, to), head.at];
  return {
    outline: [
      { at: 'inner', role: 'centre', points: centre },
      ...foot.runs.map((run): FacingRun => ({ at: 'hem', ...run })),
      { at: 'outer', role: 'seam', points: line },
      ...[...head.runs]
        .reverse()
        .map(({ role, points }): FacingRun => ({ at: 'top', role, points: [...points].reverse() })),
    ],
    marks: marks.flatMap((mark): MarkOnEdge[] => [
      { ...mark, edge: 'inner' },
      ...squareAcross(mark, centre, line, width),
    ]),
  };
}

/** Farther than top edge or hem may fall or rise over the width of a facing. mm */
const BEYOND_MM = 1000;

function lengthened(points: readonly Point[]): Point[] {
  const beyond = (end: Point | undefined, before: Point | undefined): Point[] =>
    end && before ? [between(before, end, 1 + BEYOND_MM / (distance(before, end) || 1))] : [];
  return [...beyond(points[0], points[1]), ...points.slice(1, -1), ...beyond(points.at(-1), points.at(-2))];
}

/** Runs cut off where they first meet a line, that place, and how far on the line it lies, in chords. */
function firstCrossing(
  runs: readonly BesideCentre[],
  line: readonly Point[],
): { at: Point; on: number; runs: BesideCentre[] } | null {
  for (const [i, { role, points }] of runs.entries())
    for (let k = 1; k < points.length; k += 1) {
      const met = firstIntersection(at(points, k - 1), at(points, k), line);
      if (!met) continue;
      const cut = { role, points: [...points.slice(0, k), met.at] };
      return { at: met.at, on: met.index - 1 + met.within, runs: [...runs.slice(0, i), cut] };
    }
  return null;
}

/** The mark of the laced edge as it lies on the inner one; none where that ends before. */
function squareAcross(
  mark: LacedEdge['marks'][number],
  centre: readonly Point[],
  line: readonly Point[],
  width: number,
): MarkOnEdge[] {
  const below = centre.findIndex((point, i) => i > 0 && point.y >= mark.at.y);
  const [from, to] = [centre[below - 1], centre[below]];
  if (!from || !to) return [];
  const length = distance(from, to) || 1;
  const reach = (width + CLOSE_MM) / length;
  const across = {
    x: mark.at.x + (to.y - from.y) * reach,
    y: mark.at.y - (to.x - from.x) * reach,
  };
  const met = firstIntersection(mark.at, across, line);
  return met ? [{ ...mark, at: met.at, edge: 'outer' }] : [];
}

/** How much farther than the facing is wide its inner edge is looked for: chords of parallel curves are not exactly parallel. mm */
const CLOSE_MM = 1;
