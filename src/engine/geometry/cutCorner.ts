// The corner of a cut line: two edges moved out are lengthened until they meet, or cut off where one reaches past the other.

import type { Point } from './point';

/** An edge of the outline as it lies moved out by its allowance. */
export interface MovedEdge {
  readonly points: readonly Point[];
  /** Unit directions of the first and last chord. */
  readonly startWay: Point;
  readonly endWay: Point;
  readonly allowance: number;
  /** The corner of the sew line where the edge ends. */
  readonly end: Point;
  /** A hollow tighter than the allowance turned part of the line back on itself. */
  readonly selfIntersects: boolean;
}

export interface Corner {
  readonly points: readonly Point[];
  /** How many points at the end of the edge before it, and at the start of the one after it, the corner stands in for. */
  readonly fromEnd: number;
  readonly fromStart: number;
  readonly selfIntersects: boolean;
}

/** A corner's tip may stand this many allowances away; a sharper one is squared off. */
export const MITRE_LIMIT = 4;

/** Less than this is rounding. mm */
const ROUNDING_MM = 1e-9;

/** The corner where an edge ends and the next one starts. */
export function joinCorner(edge: MovedEdge, next: MovedEdge): Corner {
  const from = edge.points[edge.points.length - 1] as Point;
  const to = next.points[0] as Point;
  const [a, b] = [edge.endWay, next.startWay];
  const corner = (points: readonly Point[], selfIntersects: boolean): Corner => ({
    points,
    fromEnd: 1,
    fromStart: 1,
    selfIntersects,
  });
  // Walking counter-clockwise on paper, an outward corner turns left: a × b < 0 with y down.
  const turn = a.x * b.y - a.y * b.x;
  const straight = a.x * b.x + a.y * b.y > 0 && Math.abs(turn) < 1e-9;
  if (straight && edge.allowance === next.allowance) return corner([from], false);
  if (turn >= -1e-9) return corner([from, edge.end, to], true);
  const along = ((to.x - from.x) * b.y - (to.y - from.y) * b.x) / turn;
  const tip = { x: from.x + a.x * along, y: from.y + a.y * along };
  const reach = Math.max(edge.allowance, next.allowance);
  if (Math.hypot(tip.x - edge.end.x, tip.y - edge.end.y) <= MITRE_LIMIT * reach || reach === 0) {
    // At a blunt corner the wider allowance reaches past the narrower one's line, and is cut off along it.
    if (along < -ROUNDING_MM) {
      const met = firstMeeting([...edge.points].reverse(), to, { x: -b.x, y: -b.y });
      return met
        ? { points: [met.at], fromEnd: met.index, fromStart: 1, selfIntersects: false }
        : corner([from, edge.end, to], true);
    }
    if ((tip.x - to.x) * b.x + (tip.y - to.y) * b.y > ROUNDING_MM) {
      const met = firstMeeting(next.points, from, a);
      return met
        ? { points: [met.at], fromEnd: 1, fromStart: met.index, selfIntersects: false }
        : corner([from, edge.end, to], true);
    }
    return corner([tip], false);
  }
  // Two allowances that change on a nearly straight run meet in a step, not in a spike.
  if (a.x * b.x + a.y * b.y > 0) return corner([from, to], true);
  return corner(
    [
      { x: from.x + a.x * reach, y: from.y + a.y * reach },
      { x: to.x - b.x * reach, y: to.y - b.y * reach },
    ],
    false,
  );
}

/** Where a ray first meets a row of points, and the index of the point behind the meeting; null when it never does. */
function firstMeeting(
  points: readonly Point[],
  from: Point,
  way: Point,
): { at: Point; index: number } | null {
  const across = (point: Point): number => way.x * (point.y - from.y) - way.y * (point.x - from.x);
  for (let index = 1; index < points.length; index += 1) {
    const [p, q] = [points[index - 1] as Point, points[index] as Point];
    const [before, after] = [across(p), across(q)];
    if (before > 0 === after > 0 && after !== 0) continue;
    const t = before === after ? 1 : before / (before - after);
    const at = { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
    if ((at.x - from.x) * way.x + (at.y - from.y) * way.y >= 0) return { at, index };
  }
  return null;
}
