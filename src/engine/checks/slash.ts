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
 * is closed where the seams are held. A dart that could not be slashed straight through to top edge or hem stays open.
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
    const slashed = ({ edge, points }: PartBorder): PartBorder => ({
      edge,
      points: legs.opensAt === 'hem' ? [end, ...points] : [...points, end],
    });
    parts.push({ rows: near, inner, outer: slashed(legs.inner) });
    rest = far;
    inner = slashed(legs.outer);
  }
  return [...parts, { rows: rest, inner, outer: own(longEdgeIndex(piece, 'outer')) }];
}

/** An open dart's legs among the edges, and where it ends and which edge it opens. */
interface Legs {
  readonly inner: PartBorder;
  readonly outer: PartBorder;
  readonly point: Point;
  readonly opensAt: 'top' | 'hem';
}

function legsOf({ edges }: Piece, { wedge, inner, outer, open }: DartLines): Legs | null {
  const [top, foot] = [inner[0], inner.at(-1)];
  if (!open || !top || !foot) return null;
  const opensAt = isSame(top, outer[0]) ? 'hem' : 'top';
  const border = (leg: 'inner' | 'outer', points: readonly Point[]): PartBorder => ({
    edge: edgeIndex(edges, { at: opensAt, dart: { wedge, leg } }),
    points,
  });
  const legs: Legs = {
    inner: border('inner', inner),
    outer: border('outer', outer),
    point: opensAt === 'hem' ? top : foot,
    opensAt,
  };
  return legs.inner.edge < 0 || legs.outer.edge < 0 ? null : legs;
}

/** Whether a dart is closed where the seams are held. Legs that end above the waist are held at the hem, like seams. */
function isClosedAt({ marks }: Piece, { inner, opensAt, point }: Legs, at: ClosedAt): boolean {
  if (at !== 'waist') return opensAt === at;
  const waist = marks.filter(({ level, edge }) => level === 'waist' && edge !== null);
  if (waist.some(({ edge }) => edge === inner.edge)) return true;
  return opensAt === 'hem' && waist.every((mark) => mark.at.y > point.y);
}

const ACROSS = { top: ['hem'], hem: ['top', 'armhole', 'shoulder'] } as const;

/** Both parts of an outline slashed straight up or down from a dart's point; null where that meets no edge across. */
function slash(
  piece: Piece,
  rows: readonly PartRow[],
  { point, opensAt }: Legs,
): [PartRow[], PartRow[]] | null {
  const met = firstMet(rows, point, opensAt === 'hem' ? -1 : 1);
  const row = met && rows[met.row];
  const edge = row && row.edge !== null ? piece.edges[row.edge] : undefined;
  const from = rows.findIndex(({ points }) => isSame(points[0], point));
  if (!met || !row || !edge || from < 0 || !ACROSS[opensAt].some((role) => role === edge.role)) return null;
  const { at } = met;
  // Round the outline from the dart's point.
  const fromPoint = [...rows.slice(from), ...rows.slice(0, from)];
  const cut = (met.row - from + rows.length) % rows.length;
  // It may meet a point of the edge across, as where that has a node above the dart.
  const others = (points: readonly Point[]): Point[] => points.filter((each) => !isSame(each, at));
  const before = { ...row, points: [...others(row.points.slice(0, met.segment)), at] };
  const after = { ...row, points: [at, ...others(row.points.slice(met.segment))] };
  return [
    [...fromPoint.slice(0, cut), before, { edge: null, points: [at, point] }],
    [after, ...fromPoint.slice(cut + 1), { edge: null, points: [point, at] }],
  ];
}

/** The first place where a straight line up (−1) or down (1) from a point meets the outline; `segment` ends after it. */
function firstMet(
  rows: readonly PartRow[],
  { x, y }: Point,
  way: 1 | -1,
): { row: number; segment: number; at: Point } | null {
  let best: { row: number; segment: number; at: Point } | null = null;
  for (const [row, { points }] of rows.entries())
    for (let segment = 1; segment < points.length; segment += 1) {
      const [a, b] = [at(points, segment - 1), at(points, segment)];
      if (a.x > x === b.x > x) continue;
      const place = { x, y: a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) };
      const apart = way * (place.y - y);
      if (apart > 1 && (!best || apart < way * (best.at.y - y))) best = { row, segment, at: place };
    }
  return best;
}

const downwards = (points: readonly Point[]): readonly Point[] =>
  (points[0]?.y ?? 0) > (points.at(-1)?.y ?? 0) ? [...points].reverse() : points;

const isSame = (a: Point | undefined, b: Point | undefined): boolean =>
  a !== undefined && b !== undefined && a.x === b.x && a.y === b.y;
