// What a cutter would redraw, measured on finished pieces: darts that lean or end blunt, lines that are not drawn in one stroke, corners
// that cannot be turned out. Own code, on points alone.

import type { DartLines, Draft, Piece, Point } from '../../../src/engine';

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, b, i) => sum + away(points[i] as Point, b), 0);

const away = (a: Point, b: Point): number => Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);

/** The point so far along a row of points, mm. */
function along(points: readonly Point[], distance: number): Point {
  let left = distance;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = away(a, b);
    if (left <= length && length > 0) {
      const part = left / length;
      return { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
    }
    left -= length;
  }
  return points.at(-1) as Point;
}

const bands = ({ extras }: Draft): Piece[] => extras.filter(({ kind }) => kind === 'band');

/** A dart's legs from a point of it, and that point; one entry for each of its points. */
function pointsOf({
  inner,
  outer,
}: DartLines): { point: Point; legs: readonly [readonly Point[], readonly Point[]] }[] {
  const [down, up] = [
    [inner, outer],
    [[...inner].reverse(), [...outer].reverse()],
  ] as const;
  return [down, up].flatMap(([a, b]) => {
    const [p, q] = [a?.[0] as Point, b?.[0] as Point];
    return away(p, q) < 0.5
      ? [{ point: p, legs: [a as readonly Point[], b as readonly Point[]] as const }]
      : [];
  });
}

/** Legs that run up and down, as those of darts from waist or hem; others run to armhole, neckline or side seam. */
const isUpright = ({ wedge }: DartLines): boolean => wedge !== 'front-armhole';

/** The farthest that a dart's point stands to the side of the middle of its widest place. mm */
export function lean({ pieces }: Draft): number {
  let most = 0;
  for (const dart of pieces.flatMap(({ darts }) => darts).filter(isUpright)) {
    let [widest, middle] = [0, Number.NaN];
    for (const { y } of dart.inner) {
      const [from, to] = [xOn(dart.inner, y), xOn(dart.outer, y)];
      if (to - from > widest) [widest, middle] = [to - from, (from + to) / 2];
    }
    for (const { point } of pointsOf(dart)) most = Math.max(most, Math.abs(point.x - middle));
  }
  return most;
}

/** Where a row of points that runs downwards is at a height; not a number beyond its ends. */
function xOn(row: readonly Point[], y: number): number {
  for (let i = 1; i < row.length; i += 1) {
    const [a, b] = [row[i - 1] as Point, row[i] as Point];
    if ((a.y - y) * (b.y - y) <= 0 && a.y !== b.y) return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
  }
  return Number.NaN;
}

/** Over so much of its legs a dart's angle is read, from its point. mm */
const NEAR_POINT_MM = 20;

/** The widest angle by which a dart opens at a point of it, degrees. */
export function bluntness({ pieces }: Draft): number {
  let most = 0;
  for (const dart of pieces.flatMap(({ darts }) => darts))
    for (const { legs } of pointsOf(dart)) {
      const reach = Math.min(NEAR_POINT_MM, lengthOf(legs[0]) / 2, lengthOf(legs[1]) / 2);
      const width = away(along(legs[0], reach), along(legs[1], reach));
      most = Math.max(most, (2 * Math.asin(width / (2 * reach)) * 180) / Math.PI);
    }
  return most;
}

/** A cutter draws so much of a line in one stroke along a curve. mm */
const STROKE_MM = 80;
/** Points of a stroke lie so far apart. mm */
const STEP_MM = 2;

/** The farthest that an edge leaves the cubic that fits a stroke of it best. mm */
export function offEvenStroke(draft: Draft): number {
  let most = 0;
  const each = STROKE_MM / STEP_MM;
  for (const { role, dart, points } of [...draft.pieces, ...bands(draft)].flatMap(({ edges }) => edges)) {
    if (role === 'shoulder' || dart) continue;
    const even = evenly(points);
    for (let i = 0; i + each < even.length; i += 5)
      most = Math.max(most, offCubic(even.slice(i, i + each + 1)));
  }
  return most;
}

/** Points {@link STEP_MM} apart along a row, from its first. */
function evenly(points: readonly Point[]): Point[] {
  const even: Point[] = [];
  let next = 0;
  let done = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = away(a, b);
    for (; next <= done + length && length > 0; next += STEP_MM) {
      const part = (next - done) / length;
      even.push({ x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part });
    }
    done += length;
  }
  return even;
}

/** The farthest that points lie from the cubic of least squares over the line from the first to the last. */
function offCubic(points: readonly Point[]): number {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  const length = away(first, last);
  const [ux, uy] = [(last.x - first.x) / length, (last.y - first.y) / length];
  const at = points.map(({ x, y }) => (2 * ((x - first.x) * ux + (y - first.y) * uy)) / length - 1);
  const off = points.map(({ x, y }) => (y - first.y) * ux - (x - first.x) * uy);
  // Orthogonal polynomials on these places, by Gram and Schmidt: what is left after four of them is what no cubic has.
  let left = off;
  const used: number[][] = [];
  for (let power = 0; power < 4; power += 1) {
    let row = at.map((value) => value ** power);
    for (const other of used) row = without(row, other);
    used.push(row);
    left = without(left, row);
  }
  return Math.max(...left.map(Math.abs));
}

/** An edge's bend at a point is that of the circle through it and the points so far before and behind. mm */
const BEND_MM = 12;

/** How an edge of a finished piece bends. */
interface Bend {
  readonly edge: string;
  readonly role: Piece['edges'][number]['role'];
  /** The least radius along it, mm: infinite on a straight edge. */
  readonly radius: number;
  /** How far it bows to the side to which it bows less: 0 where it is hollow or full throughout. mm */
  readonly against: number;
}

/** How each edge longer than two and a half {@link BEND_MM} bends, of panels and bands; straight shoulders and legs among them. */
export function bendsOf(draft: Draft): Bend[] {
  const reach = BEND_MM / STEP_MM;
  return [...draft.pieces, ...bands(draft)].flatMap((piece) =>
    piece.edges.flatMap(({ role, points }, i) => {
      const even = evenly(points);
      if (even.length < 2.5 * reach) return [];
      const bends = even
        .slice(reach, -reach)
        .map((b, j) => bendThrough(even[j] as Point, b, even[j + 2 * reach] as Point));
      const most = Math.max(...bends.map(Math.abs));
      return [
        { edge: `${piece.id}/${i}`, role, radius: 1 / most, against: bowedAgainst(even, bends, reach) },
      ];
    }),
  );
}

/** One over the radius of the circle through three points, 1/mm; its sign tells to which side they turn. */
function bendThrough(a: Point, b: Point, c: Point): number {
  const twice = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  return (2 * twice) / (away(a, b) * away(b, c) * away(a, c));
}

/** The lesser of what an edge bows to its two sides: each stretch that turns one way, from the line between its ends. mm */
function bowedAgainst(even: readonly Point[], bends: readonly number[], reach: number): number {
  const most = { left: 0, right: 0 };
  let from = 0;
  bends.forEach((bend, i) => {
    const next = bends[i + 1];
    if (next !== undefined && next > 0 === bend > 0) return;
    // The ends of an edge bend as what lies beside them.
    const [start, end] = [from === 0 ? 0 : from + reach, next === undefined ? even.length - 1 : i + reach];
    const side = bend > 0 ? 'left' : 'right';
    most[side] = Math.max(most[side], bow(even.slice(start, end + 1)));
    from = i + 1;
  });
  return Math.min(most.left, most.right);
}

/** The farthest that points lie from the line between the first and the last. */
function bow(points: readonly Point[]): number {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  const length = away(first, last);
  const off = ({ x, y }: Point): number =>
    Math.abs((x - first.x) * (last.y - first.y) - (y - first.y) * (last.x - first.x)) / length;
  return length === 0 ? 0 : Math.max(...points.map(off));
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);

/** `row` less its part along `other`. */
function without(row: readonly number[], other: readonly number[]): number[] {
  const part = dot(row, other) / dot(other, other);
  return row.map((value, i) => value - part * (other[i] as number));
}

/** Over so much of two edges their corner is read. mm */
const CORNER_MM = 8;

/** The angle between two edges, the end of the first being the start of the second, degrees. */
function angleAt(before: readonly Point[], after: readonly Point[], reach: number): number {
  const corner = after[0] as Point;
  const [a, b] = [along([...before].reverse(), reach), along(after, reach)];
  const cos =
    ((a.x - corner.x) * (b.x - corner.x) + (a.y - corner.y) * (b.y - corner.y)) /
    (away(a, corner) * away(b, corner));
  return (Math.acos(cos) * 180) / Math.PI;
}

/** The angle between lower edge and armhole of each off-shoulder band, degrees. */
export function cornerAtTop(draft: Draft): number[] {
  return bands(draft).flatMap(({ edges }) => {
    const i = edges.findIndex(({ role }) => role === 'armhole');
    const [lower, armhole] = [edges[i - 1], edges[i]];
    return armhole && lower ? [angleAt(lower.points, armhole.points, CORNER_MM)] : [];
  });
}

/** Over so much of a seam and of the armhole the tip between them is read. mm */
const TIP_MM = 12;

/** The angle of each panel's tip where a seam that parts two panels ends in the armhole, degrees. */
export function tipsAtArmhole({ pieces }: Draft): { piece: string; angle: number }[] {
  return pieces.flatMap(({ id, edges }) =>
    edges.flatMap((edge, i) => {
      const next = edges[(i + 1) % edges.length] as (typeof edges)[number];
      const [seam, other] = edge.role === 'seam' ? [edge, next] : [next, edge];
      if (seam.role !== 'seam' || other.role !== 'armhole' || seam.isSideSeam) return [];
      return [{ piece: id, angle: angleAt(edge.points, next.points, TIP_MM) }];
    }),
  );
}
