// A panel with an open dart closed cannot lie flat: as on paper it is slashed from the dart's point to the edge across from
// it, and the parts are laid leg to leg.

import { at } from '../geometry/lists';
import type { Point } from '../geometry/point';
import { edgeIndex, longEdgeIndex } from '../pieces/edgeLookup';
import type { DartLines, Piece } from '../pieces/piece';

/** Where the seams are held together. */
export type ClosedAt = 'top' | 'waist' | 'hem';

/** A row of points of a part's outline: of an edge of the piece, by its index, or (null) along a slash. */
interface PartRow {
  readonly edge: number | null;
  readonly points: readonly Point[];
}

/** A part of a piece, in the piece's own coordinates. */
export interface PiecePart {
  /** The way round the piece's edges run; each row ends where the next begins. */
  readonly rows: readonly PartRow[];
  /** What bounds it towards the centre and towards the side: one of the piece's own edges, or a dart's leg and the slash. */
  readonly inner: PartBorder;
  readonly outer: PartBorder;
}

export interface PartBorder {
  readonly edge: number;
  /** From the top down. */
  readonly points: readonly Point[];
}

/**
 * The parts of a piece from its edge towards the centre to that towards the side: one, or one more for each open dart that
 * is closed where the seams are held. A dart that no slash takes through to the edge across stays open.
 */
export function partsOf(piece: Piece, at: ClosedAt): PiecePart[] {
  const own = (edge: number): PartBorder => ({ edge, points: downwards(piece.edges[edge]?.points ?? []) });
  let rest: readonly PartRow[] = piece.edges.map(({ points }, edge) => ({ edge, points }));
  let inner = own(longEdgeIndex(piece, 'inner'));
  const parts: PiecePart[] = [];
  for (const dart of piece.darts) {
    const legs = legsOf(piece, dart);
    if (!legs || !isClosedAt(piece, legs, at)) continue;
    const halves = slash(piece, rest, legs);
    if (!halves) continue;
    const [near, far] = halves[0].some(({ edge }) => edge === inner.edge) ? halves : [halves[1], halves[0]];
    const end = near.at(-1)?.points.find((point) => !isSame(point, legs.point));
    if (!end) continue;
    // Along a dart in the side seam its legs are joined alone: the slash beyond its point opens.
    const slashed = ({ edge, points }: PartBorder): PartBorder => ({
      edge,
      points: legs.opensAt === 'side' ? points : legs.opensAt === 'hem' ? [end, ...points] : [...points, end],
    });
    parts.push({ rows: near, inner, outer: slashed(legs.inner) });
    rest = far;
    inner = slashed(legs.outer);
  }
  const above = edgeIndex(piece.edges, { at: 'outer', sidePart: 'aboveDart' });
  const outer = longEdgeIndex(piece, 'outer');
  // A part above a dart in the side seam has no other edge there.
  const isAbove = above >= 0 && rest.every(({ edge }) => edge !== outer);
  return [...parts, { rows: rest, inner, outer: own(isAbove ? above : outer) }];
}

/** An open dart's legs among the edges, and where it ends and which edge it opens. */
interface Legs {
  readonly inner: PartBorder;
  readonly outer: PartBorder;
  readonly point: Point;
  readonly opensAt: 'top' | 'hem' | 'side';
}

function legsOf({ edges }: Piece, { wedge, inner, outer, open }: DartLines): Legs | null {
  const [top, foot] = [inner[0], inner.at(-1)];
  if (!open || !top || !foot) return null;
  const isSide = edgeIndex(edges, { at: 'outer', dart: { wedge, leg: 'inner' } }) >= 0;
  const opensAt: Legs['opensAt'] = isSide ? 'side' : isSame(top, outer[0]) ? 'hem' : 'top';
  const border = (leg: 'inner' | 'outer', points: readonly Point[]): PartBorder => ({
    edge: edgeIndex(edges, { at: opensAt === 'side' ? 'outer' : opensAt, dart: { wedge, leg } }),
    points,
  });
  const legs: Legs = {
    inner: border('inner', inner),
    outer: border('outer', outer),
    point: opensAt === 'top' ? foot : top,
    opensAt,
  };
  return legs.inner.edge < 0 || legs.outer.edge < 0 ? null : legs;
}

/** Whether a dart is closed where the seams are held. Legs that end above the waist are held at the hem, like seams. */
function isClosedAt({ marks }: Piece, { inner, opensAt, point }: Legs, at: ClosedAt): boolean {
  // What lies above a dart in the side seam is joined to the back there, and turned for it.
  if (opensAt === 'side') return at === 'top';
  if (at !== 'waist') return opensAt === at;
  const waist = marks.filter(({ level, edge }) => level === 'waist' && edge !== null);
  if (waist.some(({ edge }) => edge === inner.edge)) return true;
  return opensAt === 'hem' && waist.every((mark) => mark.at.y > point.y);
}

const [BELOW, ABOVE] = [['hem'], ['top', 'armhole', 'shoulder']] as const;
const ACROSS = { top: BELOW, hem: ABOVE, side: ABOVE } as const;

/** A slash leans by steps of so much; our own, as the two most below. rad */
const LEAN_STEP_RAD = (5 * Math.PI) / 180;
/** It leans no more than four steps, or six past a dart that opens at the edge across. */
const [MOST_STEPS, MOST_STEPS_PAST_DART] = [4, 6];

/** Straight up or down first, then leaning more and more, outwards and inwards. */
const leansTo = (steps: number): readonly number[] => [
  0,
  ...Array.from({ length: steps }, (_, i) => (i + 1) * LEAN_STEP_RAD).flatMap((lean) => [lean, -lean]),
];
const LEANS = leansTo(MOST_STEPS);
const LEANS_PAST_DART = leansTo(MOST_STEPS_PAST_DART);

/**
 * Both parts of an outline slashed from a dart's point to the edge across, straight up or down or as little aslant as meets it;
 * null where that meets none.
 */
function slash(
  piece: Piece,
  rows: readonly PartRow[],
  { point, opensAt }: Legs,
): [PartRow[], PartRow[]] | null {
  const isAcross = ({ row }: Met): boolean => {
    const { edge } = at(rows, row);
    return edge !== null && ACROSS[opensAt].some((role) => role === piece.edges[edge]?.role);
  };
  const way = opensAt === 'top' ? 1 : -1;
  const ahead = firstMet(rows, point, way, 0);
  const inWay = ahead && at(rows, ahead.row).edge;
  const isDart = inWay !== null && piece.edges[inWay]?.dart !== undefined;
  const met = firstOf(isDart ? LEANS_PAST_DART : LEANS, (lean) => {
    const found = firstMet(rows, point, way, Math.tan(lean));
    return found && isAcross(found) ? found : null;
  });
  const from = rows.findIndex(({ points }) => isSame(points[0], point));
  if (!met || from < 0) return null;
  const row = at(rows, met.row);
  const end = met.at;
  // Round the outline from the dart's point.
  const fromPoint = [...rows.slice(from), ...rows.slice(0, from)];
  const cut = (met.row - from + rows.length) % rows.length;
  // It may meet a point of the edge across, as where that has a node above the dart.
  const others = (points: readonly Point[]): Point[] => points.filter((each) => !isSame(each, end));
  const before = { ...row, points: [...others(row.points.slice(0, met.segment)), end] };
  const after = { ...row, points: [end, ...others(row.points.slice(met.segment))] };
  return [
    [...fromPoint.slice(0, cut), before, { edge: null, points: [end, point] }],
    [after, ...fromPoint.slice(cut + 1), { edge: null, points: [point, end] }],
  ];
}

/** Where a slash meets the outline: the row, the segment that ends after it, and the place. */
interface Met {
  readonly row: number;
  readonly segment: number;
  readonly at: Point;
}

function firstOf<From, To>(each: readonly From[], find: (from: From) => To | null): To | null {
  for (const from of each) {
    const found = find(from);
    if (found !== null) return found;
  }
  return null;
}

/** The first place where a line up (−1) or down (1) from a point, `slant` outwards for 1 along, meets the outline. */
function firstMet(rows: readonly PartRow[], { x, y }: Point, way: 1 | -1, slant: number): Met | null {
  let best: Met | null = null;
  const aside = (point: Point): number => point.x - x - slant * way * (point.y - y);
  for (const [row, { points }] of rows.entries())
    for (let segment = 1; segment < points.length; segment += 1) {
      const [a, b] = [at(points, segment - 1), at(points, segment)];
      const [offA, offB] = [aside(a), aside(b)];
      if (offA > 0 === offB > 0) continue;
      const height = a.y + ((b.y - a.y) * offA) / (offA - offB);
      const apart = way * (height - y);
      if (apart > 1 && (!best || apart < way * (best.at.y - y)))
        best = { row, segment, at: { x: x + slant * apart, y: height } };
    }
  return best;
}

/** A row of points from the top down. */
export const downwards = (points: readonly Point[]): readonly Point[] =>
  (points[0]?.y ?? 0) > (points.at(-1)?.y ?? 0) ? [...points].reverse() : points;

const isSame = (a: Point | undefined, b: Point | undefined): boolean =>
  a !== undefined && b !== undefined && a.x === b.x && a.y === b.y;
