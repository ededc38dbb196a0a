// The line and the width of a piece along a level that a fitting raised more at one seam than at the next.

import type { LevelPath, RaisedLevel } from '../block/lines/levels';
import { first, last } from '../geometry/lists';
import { distance, type Point } from '../geometry/point';
import { crossingsAt } from '../geometry/polyline';
import { innerEdge, outerEdge } from '../pieces/edgeLookup';
import type { DartLines, Piece } from '../pieces/piece';
import type { PieceIdentity } from '../terms/identity';
import type { LevelName } from '../terms/names';

/** Where a level runs over a piece; undefined where it is level. */
export const raisedPath = (
  raised: readonly RaisedLevel[] | undefined,
  { block, number }: PieceIdentity,
  level: LevelName,
): LevelPath | undefined =>
  raised?.find((each) => each.level === level && each.block === block && each.number === number)?.path;

/**
 * Cloth along a level from edge to edge once the darts are sewn, mm; null where the piece does not reach it, or where it runs
 * through the mouth of an open dart.
 */
export function widthAlong(piece: Piece, path: LevelPath): number | null {
  const stops = stopsAlong(piece, path);
  if (!stops) return null;
  let width = 0;
  for (let i = 0; i + 1 < stops.length; i += 2) width += distance(stops[i] as Point, stops[i + 1] as Point);
  return width;
}

/**
 * Where a level meets the edge towards the centre, both legs of each dart that reaches it, and the edge towards the side, mm; null
 * where {@link widthAlong} is.
 */
export function stopsAlong(piece: Piece, { inner, outer, darts }: LevelPath): Point[] | null {
  const [from, to] = [placeAt(innerEdge(piece).points, inner), placeAt(outerEdge(piece).points, outer)];
  if (!from || !to) return null;
  const stops = [from];
  for (const dart of piece.darts) {
    const y = darts.get(dart.wedge);
    const [leg, other] = [dart.inner, dart.outer].map((points) =>
      y === undefined ? null : placeAt(points, y),
    );
    if (leg && other) stops.push(leg, other);
    else if (y !== undefined && isPastMouth(dart, y)) return null;
  }
  stops.push(to);
  return stops;
}

/** Whether a height lies beyond the end at which an open dart's legs stand apart. */
function isPastMouth({ inner, outer, open }: DartLines, y: number): boolean {
  if (!open) return false;
  const [top, foot] = [
    [first(inner), first(outer)],
    [last(inner), last(outer)],
  ] as const;
  return distance(...top) > distance(...foot)
    ? y < Math.max(top[0].y, top[1].y)
    : y > Math.min(foot[0].y, foot[1].y);
}

function placeAt(points: readonly Point[], y: number): Point | null {
  const [x] = crossingsAt(points, y);
  return x === undefined ? null : { x, y };
}
