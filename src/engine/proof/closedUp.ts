// The panels closed up along their seams, as worn: where each lies when it is joined to its neighbour at one height.

import type { Piece } from '../draft/piece';
import type { Point } from '../geometry/point';

/** A rigid move on paper: mirrored about x = 0 first if asked, then turned, then shifted. */
export interface Placement {
  readonly piece: string;
  readonly mirrored: boolean;
  readonly turnRad: number;
  readonly shift: Point;
}

/** Where the seams are held together. */
export type ClosedAt = 'top' | 'waist' | 'hem';

/** Between two panels whose seam is missing, mm. */
const APART_MM = 25;

/**
 * Placements from centre front round to centre back, back panels mirrored. At the chosen height each panel's edge
 * meets its neighbour's point to point and tangent to tangent, so top edge or hem is seen as worn. Where a panel was
 * not made, the next one lies beside it unjoined.
 */
export function closeUp(pieces: readonly Piece[], at: ClosedAt): Placement[] {
  const front = pieces.filter((piece) => piece.block === 'front').sort((a, b) => a.number - b.number);
  const back = pieces.filter((piece) => piece.block === 'back').sort((a, b) => b.number - a.number);
  const placements: Placement[] = [];
  let previous: { piece: Piece; placement: Placement } | null = null;
  for (const piece of [...front, ...back]) {
    const placement: Placement = previous
      ? beside(previous.piece, previous.placement, piece, at)
      : { piece: piece.id, mirrored: piece.block === 'back', turnRad: 0, shift: { x: 0, y: 0 } };
    placements.push(placement);
    previous = { piece, placement };
  }
  return placements;
}

/** A point of a piece where its placement puts it. */
export function placePoint({ mirrored, turnRad, shift }: Placement, { x, y }: Point): Point {
  const own = mirrored ? -x : x;
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return { x: own * cos - y * sin + shift.x, y: own * sin + y * cos + shift.y };
}

function beside(before: Piece, placed: Placement, piece: Piece, at: ClosedAt): Placement {
  const mirrored = piece.block === 'back';
  const flat: Placement = { piece: piece.id, mirrored, turnRad: 0, shift: { x: 0, y: 0 } };
  const exit = holdOf(before, before.block === 'front' ? 'outer' : 'inner', at);
  const entry = holdOf(piece, piece.block === 'front' ? 'inner' : 'outer', at);
  if (!exit || !entry || !areMates(before, piece)) {
    const right = Math.max(
      ...before.edges.flatMap((edge) => edge.points).map((point) => placePoint(placed, point).x),
    );
    const left = Math.min(
      ...piece.edges.flatMap((edge) => edge.points).map((point) => placePoint(flat, point).x),
    );
    return { ...flat, shift: { x: right + APART_MM - left, y: 0 } };
  }
  const [from, to] = [placePoint(placed, exit.point), placePoint(placed, exit.below)];
  const [ownFrom, ownTo] = [placePoint(flat, entry.point), placePoint(flat, entry.below)];
  const turnRad =
    Math.atan2(to.y - from.y, to.x - from.x) - Math.atan2(ownTo.y - ownFrom.y, ownTo.x - ownFrom.x);
  const turned = placePoint({ ...flat, turnRad }, entry.point);
  return { ...flat, turnRad, shift: { x: from.x - turned.x, y: from.y - turned.y } };
}

function areMates(a: Piece, b: Piece): boolean {
  return a.edges.some((edge) => edge.mate?.piece === b.id);
}

/** The point where an edge is held, and a point a little further down it, for its direction. */
function holdOf(piece: Piece, which: 'inner' | 'outer', at: ClosedAt): { point: Point; below: Point } | null {
  const index = which === 'inner' ? 0 : piece.outer;
  const edge = piece.edges[index];
  if (!edge) return null;
  const down = which === 'inner' ? edge.points : [...edge.points].reverse();
  if (at === 'waist') return holdAtWaist(piece, down, index);
  const [point, below] = at === 'top' ? [down[0], down[1]] : [down.at(-2), down.at(-1)];
  if (!point || !below) return null;
  return at === 'top'
    ? { point, below }
    : { point: below, below: { x: 2 * below.x - point.x, y: 2 * below.y - point.y } };
}

function holdAtWaist(
  piece: Piece,
  down: readonly Point[],
  index: number,
): { point: Point; below: Point } | null {
  const mark = piece.marks.find((each) => each.level === 'waist' && each.edge === index);
  const next = mark && down.find((point) => point.y > mark.at.y + 0.5);
  return mark && next ? { point: mark.at, below: next } : null;
}
