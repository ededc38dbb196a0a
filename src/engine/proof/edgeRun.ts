// The edge run: does top edge or hem run straight across each sewn seam? Read off the finished outlines.

import { edgeIndex, type Leg } from '../draft/leg';
import type { Edge, Piece } from '../draft/piece';
import { turnAt } from '../draft/seamEdges';
import type { TruedSeam } from '../draft/truing';
import type { Point } from '../geometry/point';

export interface EdgeRunRow {
  readonly seam: string;
  /** What runs across the seam; neckline and armhole cross the shoulder seam. */
  readonly edge: 'top' | 'hem' | 'neckline' | 'armhole';
  /** Angle across the sewn seam, rad; π is a straight run. A centre edge is taken with its mirror image. */
  readonly angle: number;
  /** The angle asked for, rad: π, or the turn of a corner that is wanted there. */
  readonly asked: number;
  /** Where the crossing lies on the first mate. */
  readonly at: { readonly piece: string; readonly point: Point };
}

/** Two rows a seam, top and hem; seams with a piece missing are left out. */
export function edgeRun(seams: readonly TruedSeam[], pieces: readonly Piece[]): EdgeRunRow[] {
  const rows: EdgeRunRow[] = [];
  for (const { seam, edges } of seams)
    for (const edge of ['top', 'hem'] as const) {
      const a = corner(pieces, seam.a, edge);
      const b = seam.b ? corner(pieces, seam.b, edge) : a;
      if (a && b)
        rows.push({
          seam: seam.id,
          edge,
          angle: a.angle + b.angle,
          asked: Math.PI + (edge === 'top' ? -1 : 1) * turnAt(seam, edges[edge]),
          at: { piece: seam.a.panel.id, point: a.point },
        });
    }
  return rows;
}

/** The angle inside a piece between its leg and its top edge or hem. */
function corner(
  pieces: readonly Piece[],
  leg: Leg,
  edge: 'top' | 'hem',
): { angle: number; point: Point } | null {
  const edges = pieces.find((each) => each.id === leg.panel.id)?.edges ?? [];
  const index = edgeIndex(leg);
  // Counter-clockwise, the hem follows a leg that has its cloth towards the side, and comes before the other.
  const next = (leg.which === 'inner') === (edge === 'hem') ? index + 1 : index - 1;
  const beside = edges.at(next === edges.length ? 0 : next);
  const [legPoints, edgePoints] = [edges[index]?.points, beside?.points];
  // A dart's point lies on no edge.
  if (!legPoints || !edgePoints || !beside || !isAt(beside.role, edge)) return null;
  const legEnd = endTowards(legPoints, edgePoints);
  const edgeEnd = endTowards(edgePoints, legPoints);
  if (!legEnd || !edgeEnd) return null;
  const legFirst = legPoints[legPoints.length - 1] === legEnd.from;
  const [before, after] = legFirst ? [legEnd.to, edgeEnd.to] : [edgeEnd.to, legEnd.to];
  return { angle: insideAngle(before, legEnd.from, after), point: legEnd.from };
}

/** Shoulder and armhole stand for the top edge of a shouldered block. */
const isAt = (role: Edge['role'], edge: 'top' | 'hem'): boolean =>
  edge === 'hem' ? role === 'hem' : role === 'top' || role === 'shoulder' || role === 'armhole';

/** The end that `points` shares with `other`, and the next point inwards. */
function endTowards(points: readonly Point[], other: readonly Point[]): { from: Point; to: Point } | null {
  const [first, last] = [points[0], points[points.length - 1]];
  const shared = [other[0], other[other.length - 1]];
  const [from, to] = shared.includes(first) ? [first, points[1]] : [last, points[points.length - 2]];
  return from && to ? { from, to } : null;
}

/**
 * The angle inside the outline where one edge, coming in from `before`, passes into the next, going on to `after`; the
 * outline runs counter-clockwise as seen on paper. More than π at an inward corner.
 */
export function insideAngle(before: Point, at: Point, after: Point): number {
  const a = { x: at.x - before.x, y: at.y - before.y };
  const b = { x: after.x - at.x, y: after.y - at.y };
  return Math.PI + Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}
