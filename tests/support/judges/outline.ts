// Measuring a finished piece as a stranger would who has only its outline: written without the engine's geometry,
// so that the two can disagree.

import type { Edge, Piece, Point } from '../../../src/engine';

/** The sew line of a piece as a ring whose end is not repeated. */
export const ringOf = (piece: Piece): Point[] => piece.edges.flatMap((edge) => edge.points.slice(0, -1));

const rings = new WeakMap<Piece, readonly Point[]>();

/** The same, made once for a piece that is measured at many heights. */
function knownRing(piece: Piece): readonly Point[] {
  const ring = rings.get(piece) ?? ringOf(piece);
  rings.set(piece, ring);
  return ring;
}

export const lengthOf = (points: readonly Point[]): number =>
  points.reduce(
    (sum, p, i) => (i === 0 ? 0 : sum + Math.hypot(p.x - at(points, i - 1).x, p.y - at(points, i - 1).y)),
    0,
  );

/** The xs, growing, at which a ring crosses height `y`. */
function crossings(ring: readonly Point[], y: number): number[] {
  const xs: number[] = [];
  for (let i = 0; i < ring.length; i += 1) {
    const [p, q] = [ring[i] as Point, at(ring, i + 1)];
    if (p.y < y === q.y < y) continue;
    xs.push(p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x));
  }
  return xs.sort((a, b) => a - b);
}

/** Width of a ring at height `y`, mm; null where it is not crossed exactly twice. */
export function widthAcross(ring: readonly Point[], y: number): number | null {
  const [first, second, third] = crossings(ring, y);
  return first === undefined || second === undefined || third !== undefined ? null : second - first;
}

/**
 * Cloth of a piece at height `y` with its darts sewn up, mm: every stretch inside its outline, less what lies between the
 * stitching lines of darts that are closed at both ends. Null where the outline is not crossed.
 */
export function sewnAcross(piece: Piece, y: number): number | null {
  const xs = crossings(knownRing(piece), y);
  if (xs.length < 2 || xs.length % 2 === 1) return null;
  const cloth = xs.reduce((sum, x, i) => sum + (i % 2 === 0 ? -x : x), 0);
  const darts = piece.darts.filter(({ open }) => !open);
  const stitched = darts.map(
    ({ inner, outer }) => widthAcross([...inner, ...[...outer].reverse().slice(1, -1)], y) ?? 0,
  );
  return cloth - stitched.reduce((sum, width) => sum + width, 0);
}

/** The heights between which a piece has a leg on either side: under all of its top edge, above all of its hem. */
export function legSpan(piece: Piece): { from: number; to: number } {
  const heights = (...roles: Edge['role'][]): number[] =>
    piece.edges.filter((edge) => roles.includes(edge.role)).flatMap((edge) => edge.points.map((p) => p.y));
  return { from: Math.max(...heights('top', 'shoulder', 'armhole')), to: Math.min(...heights('hem')) };
}

/** Interior angle in degrees, 0 to 360, where edge `i` of a piece ends and the next starts. */
export function cornerAngle(piece: Piece, i: number): number {
  const edge = (piece.edges[i] as Edge).points;
  const next = (piece.edges[(i + 1) % piece.edges.length] as Edge).points;
  const [before, corner, after] = [edge.at(-2) as Point, edge.at(-1) as Point, next[1] as Point];
  const ahead = Math.atan2(after.y - corner.y, after.x - corner.x);
  const behind = Math.atan2(before.y - corner.y, before.x - corner.x);
  // Counter-clockwise as seen on paper with y down: the inside lies from `ahead` through smaller angles to `behind`.
  const turn = ((ahead - behind) * 180) / Math.PI;
  return ((turn % 360) + 360) % 360;
}

/** Twice the shoelace area with y turned up: positive when the ring runs counter-clockwise as seen on paper. */
export function areaSeen(ring: readonly Point[]): number {
  return ring.reduce((sum, p, i) => sum + (at(ring, i + 1).x * p.y - p.x * at(ring, i + 1).y), 0) / 2;
}

/** Where a ring meets itself: two of its chords that touch without being neighbours, or that fold back. Null when simple. */
export function selfMeeting(ring: readonly Point[]): Point | null {
  const n = ring.length;
  const tops = ring.map((p, i) => Math.min(p.y, at(ring, i + 1).y));
  const topOf = (i: number): number => tops[i] as number;
  const order = ring.map((_, i) => i).sort((i, j) => topOf(i) - topOf(j));
  for (const [place, i] of order.entries()) {
    const [p, q] = [at(ring, i), at(ring, i + 1)];
    if (Math.hypot(q.x - p.x, q.y - p.y) === 0) return p;
    const foot = Math.max(p.y, q.y);
    for (let k = place + 1; k < n; k += 1) {
      const j = order[k] as number;
      if (topOf(j) > foot) break;
      const [r, s] = [at(ring, j), at(ring, j + 1)];
      if (j === (i + 1) % n ? foldsBack(p, q, s) : i === (j + 1) % n ? foldsBack(r, s, q) : meet(p, q, r, s))
        return r;
    }
  }
  return null;
}

const foldsBack = (p: Point, q: Point, r: Point): boolean =>
  cross(p, q, r) === 0 && (q.x - p.x) * (r.x - q.x) + (q.y - p.y) * (r.y - q.y) < 0;

function meet(p: Point, q: Point, r: Point, s: Point): boolean {
  const [a, b, c, d] = [cross(p, q, r), cross(p, q, s), cross(r, s, p), cross(r, s, q)];
  if (a * b < 0 && c * d < 0) return true;
  return (
    (a === 0 && within(p, q, r)) ||
    (b === 0 && within(p, q, s)) ||
    (c === 0 && within(r, s, p)) ||
    (d === 0 && within(r, s, q))
  );
}

const cross = (p: Point, q: Point, r: Point): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);

const within = (p: Point, q: Point, r: Point): boolean =>
  Math.min(p.x, q.x) <= r.x &&
  r.x <= Math.max(p.x, q.x) &&
  Math.min(p.y, q.y) <= r.y &&
  r.y <= Math.max(p.y, q.y);

/** Whether a point lies inside a ring or no farther than `slackMm` outside it. */
export function holds(ring: readonly Point[], point: Point, slackMm: number): boolean {
  let inside = false;
  let p = at(ring, ring.length - 1);
  for (const q of ring) {
    if (p.y > point.y !== q.y > point.y && point.x < p.x + ((point.y - p.y) / (q.y - p.y)) * (q.x - p.x))
      inside = !inside;
    p = q;
  }
  return inside || isNear(ring, point, slackMm);
}

/** Whether some chord of a ring comes as near to a point as `reachMm`. */
export function isNear(ring: readonly Point[], point: Point, reachMm: number): boolean {
  const [left, right] = [point.x - reachMm, point.x + reachMm];
  const [above, below] = [point.y - reachMm, point.y + reachMm];
  let p = at(ring, ring.length - 1);
  for (const q of ring) {
    const apart =
      Math.max(p.x, q.x) < left ||
      Math.min(p.x, q.x) > right ||
      Math.max(p.y, q.y) < above ||
      Math.min(p.y, q.y) > below;
    if (!apart && distanceToChord(p, q, point) <= reachMm) return true;
    p = q;
  }
  return false;
}

/** Distance of a point from the nearest chord of a ring, mm. */
export function distanceTo(ring: readonly Point[], point: Point): number {
  return Math.min(...ring.map((p, i) => distanceToChord(p, at(ring, i + 1), point)));
}

/** Distance of a point from a row of points, mm; going there and back closes it without adding a chord. */
export const chainDistance = (points: readonly Point[], p: Point): number =>
  distanceTo([...points, ...[...points].reverse()], p);

/** How far along a row of points the place nearest to `point` lies, and how far off it is; mm. */
export function alongTo(points: readonly Point[], point: Point): { along: number; off: number } {
  let best = { along: 0, off: Number.POSITIVE_INFINITY };
  let run = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [p, q] = [points[i - 1] as Point, points[i] as Point];
    const off = distanceToChord(p, q, point);
    if (off < best.off) best = { along: run + fraction(p, q, point) * Math.hypot(q.x - p.x, q.y - p.y), off };
    run += Math.hypot(q.x - p.x, q.y - p.y);
  }
  return best;
}

function fraction(p: Point, q: Point, point: Point): number {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const square = dx * dx + dy * dy;
  return square === 0 ? 0 : Math.min(1, Math.max(0, ((point.x - p.x) * dx + (point.y - p.y) * dy) / square));
}

function distanceToChord(p: Point, q: Point, point: Point): number {
  const t = fraction(p, q, point);
  return Math.hypot(p.x + t * (q.x - p.x) - point.x, p.y + t * (q.y - p.y) - point.y);
}

function at(ring: readonly Point[], i: number): Point {
  return ring[i < ring.length ? i : i % ring.length] as Point;
}
