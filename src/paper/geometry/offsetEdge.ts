// Offsets an edge into its panel, for a bone's channel or a row of eyelets.

import { distance, type Edge, type Piece, type Point, polylineLength } from '../../engine';

/** The offset line is lengthened by this at both ends, so that it crosses a slanting top edge or hem. mm */
const PAST_END_MM = 80;

/**
 * The line `awayMm` inside an edge, from its upper end to its lower end, cut off where it leaves the panel. Null where the edge
 * has no length or the line does not meet the panel's outline at both ends.
 */
export function offsetEdge(piece: Piece, edge: Edge, awayMm: number): Point[] | null {
  const inside = insideOf(edge.points, awayMm);
  const [first, last] = [inside[0], inside[inside.length - 1]];
  if (!first || !last || inside.length < 2) return null;
  if (first.y > last.y) inside.reverse();
  const line = lengthened(inside);
  const middle = polylineLength(line) / 2;
  const others = piece.edges.filter((other) => other !== edge);
  let [from, to] = [-Infinity, Infinity];
  for (const along of crossings(line, others)) {
    if (along < middle) from = Math.max(from, along);
    else to = Math.min(to, along);
  }
  return Number.isFinite(from) && Number.isFinite(to) ? partOf(line, from, to) : null;
}

/** The point at a length along a polyline, mm from its start. Lengths beyond an end give that end. */
export function pointAt(points: readonly Point[], along: number): Point {
  let rest = along;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = distance(a, b);
    if (length > 0 && rest <= length) {
      const t = Math.max(0, rest / length);
      return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
    }
    rest -= length;
  }
  return points[points.length - 1] as Point;
}

/** Moves each point into the panel along the bisector of its chords. Outlines run counter-clockwise as seen on paper. */
function insideOf(points: readonly Point[], awayMm: number): Point[] {
  const apart = points.filter((point, i) => i === 0 || distance(points[i - 1] as Point, point) > 1e-6);
  const directions = apart.slice(1).map((point, i) => directionFrom(apart[i] as Point, point));
  return apart.map((point, i) => {
    const before = directions[i - 1] ?? directions[i];
    const after = directions[i] ?? directions[i - 1];
    if (!before || !after) return point;
    const normal = { x: before.y + after.y, y: -before.x - after.x };
    const stretch = (2 * awayMm) / Math.max(normal.x * normal.x + normal.y * normal.y, 1);
    return { x: point.x + normal.x * stretch, y: point.y + normal.y * stretch };
  });
}

function lengthened(points: readonly Point[]): Point[] {
  const past = (end: Point, next: Point): Point => {
    const direction = directionFrom(next, end);
    return { x: end.x + direction.x * PAST_END_MM, y: end.y + direction.y * PAST_END_MM };
  };
  const [first, second] = points as [Point, Point];
  const [before, last] = points.slice(-2) as [Point, Point];
  return [past(first, second), ...points, past(last, before)];
}

/** The lengths along a polyline at which it crosses edges, mm. */
function crossings(line: readonly Point[], edges: readonly Edge[]): number[] {
  const found: number[] = [];
  let walked = 0;
  for (let i = 1; i < line.length; i += 1) {
    const [a, b] = [line[i - 1] as Point, line[i] as Point];
    const length = distance(a, b);
    for (const { points } of edges)
      for (let j = 1; j < points.length; j += 1) {
        const t = meeting(a, b, points[j - 1] as Point, points[j] as Point);
        if (t !== null) found.push(walked + t * length);
      }
    walked += length;
  }
  return found;
}

/** The fraction of the segment from `a` to `b` at which it meets the segment from `p` to `q`; null where they do not meet. */
function meeting(a: Point, b: Point, p: Point, q: Point): number | null {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, q.x - p.x, q.y - p.y];
  const turn = ux * vy - uy * vx;
  if (turn === 0) return null;
  const t = ((p.x - a.x) * vy - (p.y - a.y) * vx) / turn;
  const s = ((p.x - a.x) * uy - (p.y - a.y) * ux) / turn;
  return t >= 0 && t <= 1 && s >= 0 && s <= 1 ? t : null;
}

function partOf(line: readonly Point[], from: number, to: number): Point[] {
  const part = [pointAt(line, from)];
  let walked = 0;
  for (let i = 1; i < line.length; i += 1) {
    walked += distance(line[i - 1] as Point, line[i] as Point);
    if (walked > from && walked < to) part.push(line[i] as Point);
  }
  part.push(pointAt(line, to));
  return part;
}

function directionFrom(a: Point, b: Point): Point {
  const length = distance(a, b) || 1;
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}
