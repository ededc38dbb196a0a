// Cuts lines off at the edges of an upright box.

import { distance, type Point } from '../../engine';
import type { Box } from './box';

/** A part of a line that lies inside a box. */
export interface LinePart {
  readonly points: readonly Point[];
  /** Length of the line before this part, mm; the line's dashes continue from there. */
  readonly from: number;
}

/** The parts of a polyline inside a box, its edges included, in order. Parts shorter than 1e-9 mm are left out. */
export function clipLine(points: readonly Point[], box: Box): LinePart[] {
  const parts: LinePart[] = [];
  let part: { points: Point[]; from: number } | null = null;
  let walked = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = distance(a, b);
    const inside = holds(box, a) && holds(box, b) ? WHOLE : clipSegment(a, b, box);
    if (!inside || (inside.end - inside.start) * length < 1e-9) part = null;
    else {
      if (!part || inside.start > 0) {
        part = { points: [at(a, b, inside.start)], from: walked + inside.start * length };
        parts.push(part);
      }
      part.points.push(at(a, b, inside.end));
      if (inside.end < 1) part = null;
    }
    walked += length;
  }
  return parts;
}

const WHOLE = { start: 0, end: 1 };

const holds = ({ left, top, right, bottom }: Box, { x, y }: Point): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

/**
 * Where a segment enters and leaves a box, as fractions of it; null when it misses.
 * Y.-D. Liang and B. A. Barsky, "A new concept and method for line clipping", ACM Trans. Graphics 3 (1984).
 */
export function clipSegment(a: Point, b: Point, box: Box): { start: number; end: number } | null {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let start = 0;
  let end = 1;
  // Plain numbers are faster than pairs here: this runs over every segment of a pattern, many times.
  for (let side = 0; side < 4; side += 1) {
    const out = side === 0 ? -dx : side === 1 ? dx : side === 2 ? -dy : dy;
    const room =
      side === 0
        ? a.x - box.left
        : side === 1
          ? box.right - a.x
          : side === 2
            ? a.y - box.top
            : box.bottom - a.y;
    if (out === 0) {
      if (room < 0) return null;
    } else if (out < 0) start = Math.max(start, room / out);
    else end = Math.min(end, room / out);
    if (start > end) return null;
  }
  return { start, end };
}

const at = (a: Point, b: Point, t: number): Point =>
  t <= 0 ? a : t >= 1 ? b : { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
