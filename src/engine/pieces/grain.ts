// The grain line of a panel.

import type { Point } from '../geometry/point';
import { type SmoothLine, xAt } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import type { TruedEdge } from '../panels/truing';

const GRAIN_CLEAR_MM = 4;

/**
 * A vertical line through the middle of the panel at the waist (or at the end nearest to it), of its widest part where darts
 * lie on it, kept clear of edges and darts.
 */
export function grainOf(
  panel: Panel,
  inner: TruedEdge,
  outer: TruedEdge,
  waist: number,
): readonly [Point, Point] {
  const top = Math.max(inner.top.y, outer.top.y);
  const hem = Math.min(inner.hem.y, outer.hem.y);
  const clear = (hem - top) * 0.12;
  const middle = Math.min(hem - clear, Math.max(top + clear, waist));
  const [left, right] = widestPart(panel, middle);
  const x = (xAt(left, middle) + xAt(right, middle)) / 2;
  return [
    { x, y: clearReach(left, right, x, middle, top + clear) },
    { x, y: clearReach(left, right, x, middle, hem - clear) },
  ];
}

/** How far from height `from` towards `limit` the vertical at `x` keeps clear of both lines, mm. */
function clearReach(left: SmoothLine, right: SmoothLine, x: number, from: number, limit: number): number {
  let y = from;
  for (let step = 1; step <= 24; step += 1) {
    const next = from + ((limit - from) * step) / 24;
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
