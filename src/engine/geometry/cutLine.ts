// The line the shears follow: the sew line moved out edge by edge, each with its own allowance, corners extended
// until they meet.

import { unionOfStrips } from './allowanceStrips';
import { type Corner, joinCorner, MITRE_LIMIT, type MovedEdge } from './cutCorner';
import { hasClearance } from './hasClearance';
import { hemShort } from './hemShort';
import { isSelfIntersecting } from './isSelfIntersecting';
import type { Point } from './point';
import { signedArea } from './polyline';
import { turnedCorner } from './turnedCorner';
import { unionPolygons } from './unionPolygons';
import { withStretch } from './withStretch';

/** An edge of a closed outline: it ends where the next one starts. */
export interface AllowedEdge {
  readonly points: readonly Point[];
  /** mm, not negative. */
  readonly allowance: number;
  /** At which ends of a hem its allowance, turned up, is to lie on that of its neighbour. */
  readonly turnedUp?: Readonly<Record<'start' | 'end', boolean>>;
}

export interface CutLine {
  /** A ring whose end is not repeated; null when no single ring holds the outline at its least allowance. */
  readonly line: Point[] | null;
  /** False where a hem that is to be turned up cannot be, and its corners are joined like any others. */
  readonly turnsUp: boolean;
}

/**
 * The cut line around a closed outline that runs counter-clockwise as seen on paper (y down), as a ring whose end
 * is not repeated. Null when no single ring holds the outline at its least allowance. Exact for straight edges; a curved
 * edge is moved chord by chord, so it keeps the flatness of its points.
 */
export function cutLineAround(edges: readonly AllowedEdge[]): Point[] | null {
  return offsetAround(edges, joinCorner);
}

/**
 * The same, where hems are turned up with the seams' cut lines mirrored about the fold. If one cannot be, because an image does
 * not reach the hem's cut line or meets another, or because the hem bends so much that a straight fold leaves it short, none is.
 */
export function cutLineTurnedUp(edges: readonly AllowedEdge[]): CutLine {
  const turned: (Corner | null)[] = [];
  const line = offsetAround(
    edges,
    (edge, next, run, following) => {
      const hemFirst = run.turnedUp?.end === true;
      if (!hemFirst && !following.turnedUp?.start) return joinCorner(edge, next);
      const corner = turnedCorner(edge, next, hemFirst, (hemFirst ? run : following).points);
      turned.push(corner);
      return corner ?? joinCorner(edge, next);
    },
    true,
  );
  const isThere = ({ x, y }: Point): boolean =>
    line?.some((point) => Math.abs(point.x - x) < ROUNDED_MM && Math.abs(point.y - y) < ROUNDED_MM) === true;
  const turnsUp = turned.every((corner) => corner?.points.every(isThere)) && !fallsShort(line ?? [], edges);
  return turnsUp ? { line, turnsUp } : { line: cutLineAround(edges), turnsUp };
}

/** A hem that bends within its allowance may fall short of it by this part. */
const SHORT_SHARE = 0.1;

const fallsShort = (line: readonly Point[], edges: readonly AllowedEdge[]): boolean =>
  edges.some(({ points, allowance, turnedUp }, i) => {
    if (!turnedUp) return false;
    // Counter-clockwise, only the edge before a hem can lie on the fold.
    const [p, q] = (edges.at(i - 1)?.points ?? []).slice(-2);
    const onFold = p && q && !turnedUp.start ? ([p, q] as const) : null;
    return hemShort(line, points, allowance, onFold) > SHORT_SHARE * allowance;
  });

/** Clipping moves a point by less than this. mm */
const ROUNDED_MM = 1e-4;

type JoinedBy = (edge: MovedEdge, next: MovedEdge, run: AllowedEdge, following: AllowedEdge) => Corner;

/** The hem as it is turned up, with the corners at its ends. */
function hemOf(
  runs: readonly AllowedEdge[],
  moved: readonly MovedEdge[],
  corners: readonly Corner[],
): Point[] {
  const hem: Point[] = [];
  for (const [i, edge] of moved.entries()) {
    if (!runs[i]?.turnedUp) continue;
    const [before, after] = [corners.at(i - 1) as Corner, corners[i] as Corner];
    if (hem.length === 0) hem.push(...before.points);
    hem.push(...edge.points.slice(before.fromStart, edge.points.length - after.fromEnd), ...after.points);
  }
  return hem;
}

/** @param keepsHem the hem stays as it was joined where the rest has to be untangled, if it can */
function offsetAround(edges: readonly AllowedEdge[], joinedBy: JoinedBy, keepsHem = false): Point[] | null {
  if (edges.every(({ allowance }) => allowance === 0))
    return edges.flatMap(({ points }) => points.slice(0, -1));
  const runs = edges.flatMap(partedAtCorners);
  const moved = runs.map(offsetOutline);
  const corners = moved.map((edge, i) => {
    const after = (i + 1) % moved.length;
    return joinedBy(edge, moved[after] as MovedEdge, runs[i] as AllowedEdge, runs[after] as AllowedEdge);
  });
  const ring: Point[] = [];
  let selfIntersects = moved.some((edge) => edge.selfIntersects);
  for (const [i, edge] of moved.entries()) {
    const before = corners[(i + moved.length - 1) % moved.length] as Corner;
    const after = corners[i] as Corner;
    const end = edge.points.length - after.fromEnd;
    ring.push(...edge.points.slice(before.fromStart, end), ...after.points);
    selfIntersects ||= after.selfIntersects || (before.fromStart >= end && runsBack(edge, before, after));
  }
  const cutShort = corners.some(({ fromEnd, fromStart }) => Math.max(fromEnd, fromStart) > FEW_POINTS);
  if (!selfIntersects && !cutShort) return ring;
  const least = Math.min(...edges.map((edge) => edge.allowance)) - CLEAR_MM;
  const holds = (line: Point[] | null): boolean =>
    line !== null &&
    edges.every((edge) => hasClearance(line, edge.points, least)) &&
    !isSelfIntersecting(line);
  if (!selfIntersects && holds(ring)) return ring;
  const untangled = removeSelfIntersections(ring);
  if (holds(untangled)) return untangled;
  const union = unionOfStrips(runs, MITRE_LIMIT);
  const withHem = union && keepsHem ? withStretch(union, hemOf(runs, moved, corners), CLEAR_MM) : null;
  if (holds(withHem)) return withHem;
  return holds(union) ? union : null;
}

/** A corner that stands in for more points than these has taken a stretch of an edge with it. */
const FEW_POINTS = 4;

/** An untangled line may stand this much nearer than the least allowance: flatness of the points and rounding. */
const CLEAR_MM = 0.02;

/** From this turn on a point within an edge is a corner, to be joined like the corner of two edges. */
const CORNER_COS = Math.cos((12 * Math.PI) / 180);

function isCorner(before: Point, { x, y }: Point, after: Point): boolean {
  const ax = x - before.x;
  const ay = y - before.y;
  const bx = after.x - x;
  const by = after.y - y;
  // A chord of no length has no way, and is a corner to both its neighbours.
  return ax * bx + ay * by <= CORNER_COS * Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
}

/** An edge as the runs between its own corners. */
function partedAtCorners({ points, allowance, turnedUp }: AllowedEdge): AllowedEdge[] {
  const runs: AllowedEdge[] = [];
  let start = 0;
  const run = (from: number, to: number): AllowedEdge => ({
    points: from === 0 && to === points.length - 1 ? points : points.slice(from, to + 1),
    allowance,
    ...(turnedUp && {
      turnedUp: { start: turnedUp.start && from === 0, end: turnedUp.end && to === points.length - 1 },
    }),
  });
  for (let i = 1; i < points.length - 1; i += 1) {
    if (!isCorner(points[i - 1] as Point, points[i] as Point, points[i + 1] as Point)) continue;
    runs.push(run(start, i));
    start = i;
  }
  return [...runs, run(start, points.length - 1)];
}

/**
 * Each chord moves out by the allowance, from where it meets the one before to where it meets the next. In a hollow
 * tighter than the allowance a chord is used up on the way out: its neighbours then meet each other.
 */
export function offsetOutline({ points: all, allowance }: AllowedEdge): MovedEdge {
  const points = allowance > 0 ? withoutShortChords(all) : all;
  // Where each chord takes over from the one before it, and the way it runs: two rows, so that little is made and thrown away.
  const starts: Point[] = [];
  const ways: Point[] = [];
  let selfIntersects = false;
  for (let i = 1; i < points.length; i += 1) {
    const from = points[i - 1] as Point;
    const way = direction(from, points[i] as Point);
    const x = from.x - way.y * allowance;
    const y = from.y + way.x * allowance;
    let start: Point | null = null;
    for (let before = starts.length - 1; before >= 0; before -= 1) {
      const last = starts[before] as Point;
      const lastWay = ways[before] as Point;
      const met = meeting(last, lastWay, x, y, way);
      if (met && isAhead(last, lastWay, met)) {
        start = met;
        break;
      }
      selfIntersects ||= before === 0;
      starts.pop();
      ways.pop();
    }
    starts.push(start ?? { x, y });
    ways.push(way);
  }
  const [last, lastWay] = [starts.at(-1) as Point, ways.at(-1) as Point];
  const foot = points.at(-1) as Point;
  const end = { x: foot.x - lastWay.y * allowance, y: foot.y + lastWay.x * allowance };
  return {
    points: [...starts, end],
    startWay: ways[0] as Point,
    endWay: lastWay,
    allowance,
    end: foot,
    selfIntersects: selfIntersects || !isAhead(last, lastWay, end),
  };
}

const isAhead = (start: Point, way: Point, point: Point): boolean =>
  (point.x - start.x) * way.x + (point.y - start.y) * way.y > 0;

/** Turning less than this, two chords lie on one line: where they cross could not be computed any more. rad */
const STRAIGHT_RAD = 1e-6;

/** Where the line of a chord from `from` on its way `a` crosses that through (x, y) on its way `b`; null when they run side by side. */
function meeting(from: Point, a: Point, x: number, y: number, b: Point): Point | null {
  const turn = a.x * b.y - a.y * b.x;
  const dx = x - from.x;
  const dy = y - from.y;
  if (Math.abs(turn) < STRAIGHT_RAD) return Math.abs(a.x * dy - a.y * dx) < SAME_LINE_MM ? { x, y } : null;
  const along = (dx * b.y - dy * b.x) / turn;
  return { x: from.x + a.x * along, y: from.y + a.y * along };
}

const SAME_LINE_MM = 1e-4;

/** Chords shorter than this say nothing of the shape, but moved out they would turn back on themselves. mm */
const SHORT_MM = 0.5;

const isNear = (a: Point, b: Point): boolean =>
  (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y) < SHORT_MM * SHORT_MM;

/** The points without those that follow another, or precede the end, too closely; both ends stay. */
function withoutShortChords(points: readonly Point[]): readonly Point[] {
  const last = points[points.length - 1] as Point;
  let kept = points[0] as Point;
  const spread = points.slice(1, -1).filter((point) => {
    if (isNear(kept, point) || isNear(point, last)) return false;
    kept = point;
    return true;
  });
  return [points[0] as Point, ...spread, last];
}

/** Whether the corners at both ends of an edge have passed each other, so that nothing of it is left. */
function runsBack(edge: MovedEdge, before: Corner, after: Corner): boolean {
  const [a, b] = [before.points[before.points.length - 1] as Point, after.points[0] as Point];
  return (b.x - a.x) * edge.startWay.x + (b.y - a.y) * edge.startWay.y < 0;
}

/** Drops the loops that inward corners and tight hollows leave, by a union that counts only what is wound the right way. */
function removeSelfIntersections(ring: readonly Point[]): Point[] | null {
  const wound = signedArea(ring) < 0 ? [...ring].reverse() : [...ring];
  const [outer, ...others] = unionPolygons([wound], 'wound-forwards').filter((path) => signedArea(path) > 0);
  return outer && others.length === 0 ? outer.reverse() : null;
}

function direction(a: Point, b: Point): Point {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  // Many times quicker than Math.hypot, and no outline comes near its limits.
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  return { x: dx / length, y: dy / length };
}
