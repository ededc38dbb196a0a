// The grain line of a panel.

import { distanceToRing } from '../geometry/chord';
import { numberAt } from '../geometry/lists';
import type { Point } from '../geometry/point';
import { heightSpan, pointsDown } from '../geometry/polyline';
import { type SmoothLine, xAt } from '../geometry/smoothLine';
import { crossingsUp, uprightInside } from '../geometry/uprightInside';
import type { Panel, PanelDart } from '../panels/panel';
import type { TruedEdge } from '../panels/truing';

/** Least distance of the grain line from edges and darts. mm */
const GRAIN_CLEAR_MM = 4;

/** An end is moved back in so many steps until it keeps clear. */
const STEPS = 24;

/** A grain line shorter than this part of its panel's height cannot be laid true along the warp. */
const LEAST_PART = 0.25;

/** A line elsewhere on the panel replaces the usual one only where it is so many times as long. */
const WORTH_MOVING = 2;

/**
 * A vertical line through the middle of the panel at the waist (or at the end nearest to it), of its widest part where darts lie on
 * it, kept clear of edges and darts. Where that line is shorter than {@link LEAST_PART} of the panel, a longer one elsewhere is
 * taken.
 *
 * @param outline the panel's sew line, its end not repeated
 */
export function grainOf(
  panel: Panel,
  inner: TruedEdge,
  outer: TruedEdge,
  waist: number,
  outline: readonly Point[],
): readonly [Point, Point] {
  const top = Math.max(inner.top.y, outer.top.y);
  const hem = Math.min(inner.hem.y, outer.hem.y);
  const clear = (hem - top) * 0.12;
  const middle = Math.min(hem - clear, Math.max(top + clear, waist));
  const [left, right] = widestPart(panel, middle);
  const x = (xAt(left, middle) + xAt(right, middle)) / 2;
  const line = withinOutline(
    x,
    clearReach(left, right, x, middle, top + clear),
    clearReach(left, right, x, middle, hem - clear),
    outline,
  );
  const heights = heightSpan(outline);
  if (lengthOf(line) >= LEAST_PART * (heights.most - heights.least)) return line;
  const other = uprightInside(outline, panel.darts.flatMap(closedRing));
  return lengthOf(other) > WORTH_MOVING * lengthOf(line) ? other : line;
}

const lengthOf = ([from, to]: readonly [Point, Point]): number => to.y - from.y;

/** The longest part of a vertical line that lies inside an outline and keeps clear of it; of no length where there is none. */
function withinOutline(
  x: number,
  from: number,
  to: number,
  outline: readonly Point[],
): readonly [Point, Point] {
  const ys = crossingsUp([outline], x);
  let upper = from;
  let lower = from;
  for (let i = 1; i < ys.length; i += 2) {
    const [start, end] = [
      Math.max(from, numberAt(ys, i - 1) + GRAIN_CLEAR_MM),
      Math.min(to, numberAt(ys, i) - GRAIN_CLEAR_MM),
    ];
    if (end - start > lower - upper) [upper, lower] = [start, end];
  }
  // Beside a steep edge the vertical distance is not enough.
  const middle = (upper + lower) / 2;
  const clearOf = (limit: number, asked: number): Point => {
    if (limit === asked) return { x, y: limit };
    for (let step = 0; step < STEPS; step += 1) {
      const point = { x, y: limit + ((middle - limit) * step) / STEPS };
      if (distanceToRing(outline, point) >= GRAIN_CLEAR_MM) return point;
    }
    return { x, y: middle };
  };
  return [clearOf(upper, from), clearOf(lower, to)];
}

/** A dart that is closed at both ends, as a ring. */
function closedRing({ upper, lower, innerLeg, outerLeg }: PanelDart): Point[][] {
  if (upper === null || lower === null) return [];
  return [[...pointsDown(innerLeg, upper, lower), ...pointsDown(outerLeg, upper, lower).reverse()]];
}

/** How far from height `from` towards `limit` the vertical at `x` keeps clear of both lines, mm. */
function clearReach(left: SmoothLine, right: SmoothLine, x: number, from: number, limit: number): number {
  let y = from;
  for (let step = 1; step <= STEPS; step += 1) {
    const next = from + ((limit - from) * step) / STEPS;
    if (x - xAt(left, next) < GRAIN_CLEAR_MM || xAt(right, next) - x < GRAIN_CLEAR_MM) break;
    y = next;
  }
  return y;
}

/** The lines between which most cloth lies at height `y`: the panel's edges and its darts' legs. */
function widestPart(panel: Panel, y: number): readonly [SmoothLine, SmoothLine] {
  const lines = [panel.inner, ...panel.darts.flatMap((dart) => [dart.innerLeg, dart.outerLeg]), panel.outer];
  let widest: readonly [SmoothLine, SmoothLine] = [panel.inner, panel.outer];
  let most = 0;
  for (let i = 0; i < lines.length; i += 2) {
    const part = [lines[i] as SmoothLine, lines[i + 1] as SmoothLine] as const;
    const width = xAt(part[1], y) - xAt(part[0], y);
    if (width > most) [widest, most] = [part, width];
  }
  return widest;
}
