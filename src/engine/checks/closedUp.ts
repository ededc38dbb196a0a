// The panels closed up along their seams, as worn: where each lies when it is joined to its neighbour at one height.

import type { Point } from '../geometry/point';
import type { Piece } from '../pieces/piece';
import { identityOf, type PieceIdentity } from '../terms/identity';
import { type ClosedAt, downwards, type PartBorder, type PiecePart, partsOf } from './slash';

/** A rigid move on paper: mirrored about x = 0 first if asked, then turned, then shifted. */
export interface Placement {
  readonly piece: PieceIdentity;
  /** Which of its parts, counted from the centre from 0, where an open dart that is closed parts it; see {@link partsOf}. */
  readonly part: number;
  readonly mirrored: boolean;
  readonly turnRad: number;
  readonly shift: Point;
}

/** Between two panels whose seam is missing, mm. */
const APART_MM = 25;

/**
 * Placements from centre front round to centre back, back panels mirrored. At the chosen height each panel's edge
 * meets its neighbour's point to point and tangent to tangent, so top edge or hem is seen as worn; a panel's parts on both
 * sides of an open dart meet likewise, leg to leg. A seam that ends above the waist is held at the hem instead. Where a panel
 * was not made, the next one lies beside it unjoined.
 */
export function closeUp(pieces: readonly Piece[], at: ClosedAt): Placement[] {
  const front = pieces.filter((piece) => piece.block === 'front').sort((a, b) => a.number - b.number);
  const back = pieces.filter((piece) => piece.block === 'back').sort((a, b) => b.number - a.number);
  const laid: { lay: Lay; placement: Placement }[] = [];
  for (const piece of [...front, ...back]) {
    const parts = partsOf(piece, at).map((part, i): Lay => ({ piece, part, number: i }));
    // The back is met from the side.
    for (const lay of piece.block === 'front' ? parts : parts.reverse()) {
      const before = laid.at(-1);
      laid.push({ lay, placement: before ? beside(before.lay, before.placement, lay, at) : unmoved(lay) });
    }
  }
  return laid.map(({ placement }) => placement);
}

/** A part of a piece that is to be laid. */
interface Lay {
  readonly piece: Piece;
  readonly part: PiecePart;
  readonly number: number;
}

const unmoved = ({ piece, number }: Lay): Placement => ({
  piece: identityOf(piece),
  part: number,
  mirrored: piece.block === 'back',
  turnRad: 0,
  shift: { x: 0, y: 0 },
});

/** A point of a piece where its placement puts it. */
export function placePoint({ mirrored, turnRad, shift }: Placement, { x, y }: Point): Point {
  const own = mirrored ? -x : x;
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return { x: own * cos - y * sin + shift.x, y: own * sin + y * cos + shift.y };
}

function beside(before: Lay, placed: Placement, lay: Lay, at: ClosedAt): Placement {
  const flat = unmoved(lay);
  const exit = holdOf(before.piece, before.part[before.piece.block === 'front' ? 'outer' : 'inner'], at);
  const entry = holdOf(lay.piece, entryOf(before, lay), at);
  if (!exit || !entry || !areMates(before.piece, lay.piece)) {
    const across = (part: PiecePart, placement: Placement): number[] =>
      part.rows.flatMap(({ points }) => points).map((point) => placePoint(placement, point).x);
    const [right, left] = [Math.max(...across(before.part, placed)), Math.min(...across(lay.part, flat))];
    return { ...flat, shift: { x: right + APART_MM - left, y: 0 } };
  }
  const [from, to] = [placePoint(placed, exit.point), placePoint(placed, exit.below)];
  const [ownFrom, ownTo] = [placePoint(flat, entry.point), placePoint(flat, entry.below)];
  const turnRad =
    Math.atan2(to.y - from.y, to.x - from.x) - Math.atan2(ownTo.y - ownFrom.y, ownTo.x - ownFrom.x);
  const turned = placePoint({ ...flat, turnRad }, entry.point);
  return { ...flat, turnRad, shift: { x: from.x - turned.x, y: from.y - turned.y } };
}

/** The border that is met: of a side seam in which a dart opens, the part above or below it that is mate to the one before. */
function entryOf(before: Lay, { piece, part }: Lay): PartBorder {
  if (piece.block === 'front') return part.inner;
  const edge = before.piece.edges[before.part.outer.edge]?.mate?.edge;
  const mate = edge === undefined || before.piece.block === 'back' ? undefined : piece.edges[edge];
  if (edge === undefined || !mate?.sidePart) return part.outer;
  return { edge, points: downwards(mate.points) };
}

const areMates = (a: Piece, b: Piece): boolean =>
  a === b || a.edges.some((edge) => edge.mate?.piece.id === b.id);

/** The point where an edge is held, and a point a little further down it, for its direction. */
function holdOf(
  piece: Piece,
  { edge, points }: PartBorder,
  at: ClosedAt,
): { point: Point; below: Point } | null {
  const mark = at === 'waist' && piece.marks.find((each) => each.level === 'waist' && each.edge === edge);
  const next = mark && points.find((point) => point.y > mark.at.y + 0.5);
  if (mark && next) return { point: mark.at, below: next };
  const [point, below] = at === 'top' ? [points[0], points[1]] : [points.at(-2), points.at(-1)];
  if (!point || !below) return null;
  return at === 'top'
    ? { point, below }
    : { point: below, below: { x: 2 * below.x - point.x, y: 2 * below.y - point.y } };
}
