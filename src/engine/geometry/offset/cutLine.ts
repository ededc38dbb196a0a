// The line a piece is cut along: its sew line, offset edge by edge by the allowances.

import type { Point } from '../point';
import { hemShortfall } from './hemShortfall';
import { type Corner, joinCorner } from './joinCorner';
import { type AllowedEdge, type Join, offsetOutline } from './offsetOutline';
import { turnedCorner } from './turnedCorner';

export type { AllowedEdge } from './offsetOutline';

export interface CutLine {
  /** A ring whose end is not repeated; null when no single ring holds the outline at its least allowance. */
  readonly line: Point[] | null;
  /** False where a hem that is to be turned up cannot be, and its corners are joined like any others. */
  readonly turnsUp: boolean;
}

/**
 * The cut line around a closed outline that runs counter-clockwise as seen on paper (y down), as a ring whose end
 * is not repeated. Null when no single ring holds the outline at its least allowance. Exact for straight edges; a curved
 * edge is offset chord by chord, so it keeps the flatness of its points.
 */
export function cutLineAround(edges: readonly AllowedEdge[]): Point[] | null {
  return offsetOutline(edges, join);
}

/**
 * The same, where hems are turned up with the seams' cut lines mirrored about the fold. If one cannot be, none is: where a mirror
 * image does not reach the hem's cut line or intersects another, or where the hem bends so much that a straight fold leaves it
 * short.
 */
export function cutLineTurnedUp(edges: readonly AllowedEdge[]): CutLine {
  const turned: (Corner | null)[] = [];
  const line = offsetOutline(
    edges,
    (edge, next, source, nextSource) => {
      const hemFirst = source.turnedUp?.end === true;
      if (!hemFirst && !nextSource.turnedUp?.start) return join(edge, next, source, nextSource);
      const corner = turnedCorner(edge, next, hemFirst, (hemFirst ? source : nextSource).points);
      turned.push(corner);
      return corner ?? join(edge, next, source, nextSource);
    },
    true,
  );
  const isOnLine = ({ x, y }: Point): boolean =>
    line?.some((point) => Math.abs(point.x - x) < ROUNDING_MM && Math.abs(point.y - y) < ROUNDING_MM) ===
    true;
  const turnsUp = turned.every((corner) => corner?.points.every(isOnLine)) && !isHemShort(line ?? [], edges);
  return turnsUp ? { line, turnsUp } : { line: cutLineAround(edges), turnsUp };
}

const join: Join = (edge, next, source, nextSource) =>
  joinCorner(edge, next, source.onFold === true || nextSource.onFold === true);

/** Tolerance: a hem that bends within its allowance may fall short of it by this fraction. */
const SHORT_FRACTION = 0.1;

const isHemShort = (line: readonly Point[], edges: readonly AllowedEdge[]): boolean =>
  edges.some(({ points, allowance, turnedUp }, i) => {
    if (!turnedUp) return false;
    // Counter-clockwise, only the edge before a hem can lie on the fold.
    const [p, q] = (edges.at(i - 1)?.points ?? []).slice(-2);
    const onFold = p && q && !turnedUp.start ? ([p, q] as const) : null;
    return hemShortfall(line, points, allowance, onFold) > SHORT_FRACTION * allowance;
  });

/** Tolerance: the union of polygons moves a point by less than this. mm */
const ROUNDING_MM = 1e-4;
