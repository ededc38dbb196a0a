// The sizes of each piece laid on one another.

import { type Piece, type Point, signedArea } from '../../engine';
import { moved } from '../geometry/box';
import { foldOf } from '../panel/panelLines';
import type { NestedInput } from './nestedInput';
import { outerRing } from './outerRing';

/** One size of a piece in its nest. */
export interface NestPart {
  /** Index of the size in the input. */
  readonly size: number;
  readonly piece: Piece;
  /** Added to the coordinates of `piece` to lay it on the base of its nest. mm */
  readonly by: Point;
}

/** All sizes of one piece, in the coordinates of the base's block. */
export interface Nest {
  readonly id: string;
  /** From the first size up. */
  readonly parts: readonly NestPart[];
  /** The smallest part, whose `by` is nothing: texts stand inside it. */
  readonly base: NestPart;
  /** An outline around the cut lines of all parts, closed. */
  readonly ring: readonly Point[];
}

/**
 * A nest for each piece that any size has, in the order of the sizes' pieces. Parts lie on one another at the level asked for, or
 * where a piece has no such level at the middle of its grain line; and on the grain line, or the fold where the piece has one.
 */
export function nestsOf({ sizes, alignedAt = 'waist' }: NestedInput): Nest[] {
  const found = new Map<string, { size: number; piece: Piece; place: Point }[]>();
  for (const [size, { draft }] of sizes.entries())
    for (const piece of [...draft.pieces, ...draft.extras]) {
      const level = draft.levels.find(({ name }) => name === alignedAt)?.y;
      const parts = found.get(piece.id) ?? [];
      parts.push({ size, piece, place: placeOf(piece, level) });
      found.set(piece.id, parts);
    }
  return [...found].map(([id, placed]) => {
    const smallest = placed.reduce((least, each) =>
      Math.abs(signedArea(each.piece.cutLine)) < Math.abs(signedArea(least.piece.cutLine)) ? each : least,
    );
    const parts = placed.map(
      ({ size, piece, place }): NestPart => ({
        size,
        piece,
        by: { x: smallest.place.x - place.x, y: smallest.place.y - place.y },
      }),
    );
    const base = parts.find(({ piece }) => piece === smallest.piece) ?? (parts[0] as NestPart);
    return { id, parts, base, ring: outerRing(parts.map(({ piece, by }) => moved(piece.cutLine, by))) };
  });
}

/** Whether a level runs through a piece as it lies on its block; pieces beside the panels have none. */
const hasLevel = ({ kind, cutLine }: Piece, y: number): boolean =>
  (kind === 'panel' || kind === 'sidePanel') &&
  cutLine.some((point) => point.y < y) &&
  cutLine.some((point) => point.y > y);

/** The point of a piece that lies on the same point of all its sizes. */
function placeOf(piece: Piece, level: number | undefined): Point {
  const [top, foot] = piece.grain;
  return {
    x: foldOf(piece)?.points[0]?.x ?? (top.x + foot.x) / 2,
    y: level !== undefined && hasLevel(piece, level) ? level : (top.y + foot.y) / 2,
  };
}
