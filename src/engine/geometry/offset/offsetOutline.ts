// Polygon offsetting with an allowance of its own for each edge: edges are offset one by one and joined with mitres, and loops
// that come of this are removed by a union of polygons.

import { at, first, last } from '../lists';
import type { Point } from '../point';
import { ringThrough, ringWithoutRepeats, signedArea } from '../polyline';
import { type BandedRing, bandedRing } from './bandedRing';
import { hasClearance } from './hasClearance';
import { isSelfIntersecting } from './isSelfIntersecting';
import { type Corner, MITRE_LIMIT } from './joinCorner';
import { offsetByUnion } from './offsetByUnion';
import { type OffsetEdge, offsetPolyline } from './offsetPolyline';
import { replaceSection } from './replaceSection';
import { unionPolygons } from './unionPolygons';

/** An edge of a closed outline and the allowance beside it. The edge ends where the next one starts. */
export interface AllowedEdge {
  /** At least two. */
  readonly points: readonly Point[];
  /** mm, not negative. */
  readonly allowance: number;
  /** True for a straight edge on the fold of the cloth: its allowance is 0, and no allowance beside it reaches past its line. */
  readonly onFold?: boolean;
  /** At which ends of a hem its allowance, turned up, is to lie on that of its neighbour. */
  readonly turnedUp?: Readonly<Record<'start' | 'end', boolean>>;
}

/** Joins an offset edge to the next one; `source` and `nextSource` are what they were offset from. */
export type Join = (
  edge: OffsetEdge,
  next: OffsetEdge,
  source: AllowedEdge,
  nextSource: AllowedEdge,
) => Corner;

/**
 * The offset of a closed outline that runs counter-clockwise as seen on paper (y down), as a ring whose end is not repeated.
 * Null where no single ring holds the outline at its least allowance.
 *
 * @param keepsHem true where, if loops have to be removed, the turned-up hem keeps the corners it was joined with, if it can
 */
export function offsetOutline(edges: readonly AllowedEdge[], join: Join, keepsHem = false): Point[] | null {
  const ring = offsetRing(edges, join, keepsHem);
  return ring && ringWithoutRepeats(ring);
}

function offsetRing(edges: readonly AllowedEdge[], join: Join, keepsHem: boolean): Point[] | null {
  if (edges.every(({ allowance }) => allowance === 0)) return ringThrough(edges);
  const smooth = edges.flatMap(splitAtCorners);
  const offset = smooth.map(offsetPolyline);
  const corners = offset.map((edge, i) => {
    const after = (i + 1) % offset.length;
    return join(edge, at(offset, after), at(smooth, i), at(smooth, after));
  });
  const ring: Point[] = [];
  let selfIntersects = offset.some((edge) => edge.selfIntersects);
  for (const [i, edge] of offset.entries()) {
    const before = at(corners, (i + offset.length - 1) % offset.length);
    const after = at(corners, i);
    const end = edge.points.length - after.fromEnd;
    ring.push(...edge.points.slice(before.fromStart, end), ...after.points);
    selfIntersects ||=
      after.selfIntersects ||
      (before.fromStart >= end && isReversed(edge, before, after)) ||
      (edge.endRunsBack && runsBack(edge, before, after));
  }
  const isDoubtful =
    offset.some(({ endRunsBack }) => endRunsBack) ||
    corners.some(({ fromEnd, fromStart }) => Math.max(fromEnd, fromStart) > FEW_POINTS);
  if (!selfIntersects && !isDoubtful) return ring;
  const least = Math.min(...edges.map((edge) => edge.allowance)) - CLEARANCE_TOLERANCE_MM;
  const folds = edges.filter(({ onFold }) => onFold);
  const isSound = (line: Point[] | null): boolean =>
    line !== null &&
    folds.every((fold) => !crossesFold(line, fold)) &&
    isClearAndSimple(bandedRing(line), edges, least);
  if (!selfIntersects && isSound(ring)) return ring;
  const withoutLoops = removeSelfIntersections(ring);
  if (isSound(withoutLoops)) return withoutLoops;
  const union = offsetByUnion(smooth, MITRE_LIMIT, folds);
  const withHem =
    union && keepsHem ? replaceSection(union, hemOf(smooth, offset, corners), CLEARANCE_TOLERANCE_MM) : null;
  if (isSound(withHem)) return withHem;
  return isSound(union) ? union : null;
}

const isClearAndSimple = (banded: BandedRing, edges: readonly AllowedEdge[], least: number): boolean =>
  edges.every((edge) => hasClearance(banded, edge.points, least)) && !isSelfIntersecting(banded);

/** A corner that replaces more points of an edge than this has removed a section of it. */
const FEW_POINTS = 4;

/** A line without loops may lie this much nearer than the least allowance: flatness of the points, and rounding. mm */
const CLEARANCE_TOLERANCE_MM = 0.02;

/** The offset of the hem that is turned up, with the corners at its ends. */
function hemOf(
  sources: readonly AllowedEdge[],
  offset: readonly OffsetEdge[],
  corners: readonly Corner[],
): Point[] {
  const hem: Point[] = [];
  for (const [i, edge] of offset.entries()) {
    if (!sources[i]?.turnedUp) continue;
    const before = at(corners, (i + corners.length - 1) % corners.length);
    const after = at(corners, i);
    if (hem.length === 0) hem.push(...before.points);
    hem.push(...edge.points.slice(before.fromStart, edge.points.length - after.fromEnd), ...after.points);
  }
  return hem;
}

/** Cosine of the turn from which on a point within an edge is a corner, to be joined like the corner of two edges: 12°. */
const CORNER_COS = Math.cos((12 * Math.PI) / 180);

function isCorner(before: Point, { x, y }: Point, after: Point): boolean {
  const ax = x - before.x;
  const ay = y - before.y;
  const bx = after.x - x;
  const by = after.y - y;
  // A chord of no length has no direction, and is a corner to both its neighbours.
  return ax * bx + ay * by <= CORNER_COS * Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
}

/** An edge split into the parts between its own corners, in order. */
function splitAtCorners({ points, allowance, onFold = false, turnedUp }: AllowedEdge): AllowedEdge[] {
  const parts: AllowedEdge[] = [];
  let start = 0;
  const part = (from: number, to: number): AllowedEdge => ({
    points: from === 0 && to === points.length - 1 ? points : points.slice(from, to + 1),
    allowance,
    onFold,
    ...(turnedUp && {
      turnedUp: { start: turnedUp.start && from === 0, end: turnedUp.end && to === points.length - 1 },
    }),
  });
  for (let i = 1; i < points.length - 1; i += 1) {
    if (!isCorner(at(points, i - 1), at(points, i), at(points, i + 1))) continue;
    parts.push(part(start, i));
    start = i;
  }
  parts.push(part(start, points.length - 1));
  return parts;
}

/** Whether a ring has points past the fold, on the far side from the cloth. */
function crossesFold(ring: readonly Point[], { points }: AllowedEdge): boolean {
  const from = first(points);
  const to = last(points);
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const least = -CLEARANCE_TOLERANCE_MM * Math.sqrt(dx * dx + dy * dy);
  // Counter-clockwise as seen on paper, the cloth lies on the left of its edges.
  return ring.some(({ x, y }) => dy * (x - from.x) - dx * (y - from.y) < least);
}

/** Whether the corners at both ends of an edge have passed each other, so that nothing of it is left. */
function isReversed(edge: OffsetEdge, before: Corner, after: Corner): boolean {
  return lengthAlong(last(before.points), first(after.points), edge.startDirection) < 0;
}

/** Whether the first or the last chord of an edge still runs back between the corners that it is joined to. */
function runsBack(
  { points, startDirection, endDirection }: OffsetEdge,
  before: Corner,
  after: Corner,
): boolean {
  const [start, end] = [last(before.points), first(after.points)];
  const next = points[before.fromStart] ?? end;
  const previous = points[points.length - after.fromEnd - 1] ?? start;
  return lengthAlong(start, next, startDirection) < 0 || lengthAlong(previous, end, endDirection) < 0;
}

/** How far `to` lies from `from` in a direction given by a unit vector; mm. */
const lengthAlong = (from: Point, to: Point, { x, y }: Point): number =>
  (to.x - from.x) * x + (to.y - from.y) * y;

/** The ring without the loops that inward corners and tight bends leave: they have no positive winding number. */
function removeSelfIntersections(ring: readonly Point[]): Point[] | null {
  const positive = signedArea(ring) < 0 ? [...ring].reverse() : [...ring];
  const [outer, ...others] = unionPolygons([positive], 'positive').filter((path) => signedArea(path) > 0);
  return outer && others.length === 0 ? outer.reverse() : null;
}
