// What is cut of each piece on a cloth, and how it may lie there.

import type { Piece, Point } from '../../engine';
import { type Affine, laidAt, movedOnto } from './affine';
import type { Cloth } from './cloth';

/** A piece that is asked for on a cloth. */
export interface PieceToLay {
  readonly piece: Piece;
  /** What its draft is called; null where all pieces are of one draft. */
  readonly of: string | null;
  /** How many layers of the garment it is cut for. */
  readonly layers: number;
  /** It lies at 45° to the length of the cloth. */
  readonly bias: boolean;
}

/** A piece as it is cut for one layer of one draft, its grain along the cloth. */
export const cutOnce = (piece: Piece): PieceToLay => ({ piece, of: null, layers: 1, bias: false });

/** One outline to be laid. */
export interface Copy {
  readonly piece: Piece;
  readonly of: string | null;
  /** Counted from 1. */
  readonly copy: number;
  /** The piece as drawn; whole, where it is cut on the fold and the cloth lies open. Its end not repeated. mm */
  readonly ring: readonly Point[];
  /** It lies with its fold on the fold of the cloth. */
  readonly onFold: boolean;
  /** It lies at 45° to the length of the cloth. */
  readonly bias: boolean;
  /** Which sides up it may lie: as drawn, or as its mirror image. On folded cloth one outline cuts both. */
  readonly sides: readonly boolean[];
}

/** One way to lay a copy. */
export interface Way {
  readonly mirrored: boolean;
  /** Turned so far from its grain lying along the cloth with its head first, clockwise on the cloth as drawn. degrees */
  readonly turn: number;
  /** As it lies, x along the cloth and y across it, the least of both 0. mm */
  readonly ring: readonly Point[];
  /** From the coordinates of the piece to the ring. */
  readonly onto: Affine;
}

/** All outlines to be laid on a cloth. On folded cloth one outline cuts two, so that a pair is laid once. */
export function copiesOn(asked: readonly PieceToLay[], { folded }: Pick<Cloth, 'folded'>): Copy[] {
  return asked.flatMap(({ piece, of, layers, bias }) => {
    const { count, onFold } = piece.cut;
    const perLayer = onFold ? 1 : folded ? Math.ceil(count / 2) : count;
    const ring = onFold && !folded ? unfolded(piece) : piece.cutLine;
    return Array.from({ length: perLayer * layers }, (_, i) => ({
      piece,
      of,
      copy: i + 1,
      ring,
      onFold: onFold && folded,
      bias,
      // Of a pair each second one is the mirror image of the first.
      sides: folded ? [false, true] : [(i % perLayer) % 2 === 1],
    }));
  });
}

/** Whether it lies on the fold: not farther from it than this, mm. */
const ON_FOLD_MM = 0.01;

/** A piece cut on the fold, whole: joined with its mirror image at the fold. */
function unfolded({ cutLine, edges }: Piece): Point[] {
  const x = edges.find(({ role }) => role === 'centre')?.points[0]?.x ?? 0;
  const isOnFold = (point: Point | undefined): boolean =>
    point !== undefined && Math.abs(point.x - x) <= ON_FOLD_MM;
  const count = cutLine.length;
  // Begins with the last point on the fold, so that the fold is the ring's closing side.
  const start = cutLine.findIndex((point, i) => isOnFold(point) && !isOnFold(cutLine[(i + 1) % count]));
  if (start < 0) return [...cutLine];
  const half = [...cutLine.slice(start), ...cutLine.slice(0, start)].filter(
    (point, i, all) =>
      !isOnFold(point) || i === 0 || !isOnFold(all[i - 1]) || !isOnFold(all[(i + 1) % count]),
  );
  const other = half
    .filter((point) => !isOnFold(point))
    .map((point) => ({ x: 2 * x - point.x, y: point.y }))
    .reverse();
  return [...half, ...other];
}

/** The ways in which a copy may lie on a cloth; those that are told apart by their turn alone come in its order. */
export function waysOf(copy: Copy, cloth: Cloth): Way[] {
  const turns = turnsFor(copy, cloth);
  const ways = copy.sides.flatMap((mirrored) => turns.map((turn) => wayOf(copy, cloth, mirrored, turn)));
  return ways.filter(({ foldFirst }) => !copy.onFold || foldFirst).map(({ way }) => way);
}

/** Degrees between two turns that are tried within the tolerance of the grain. */
const GRAIN_STEP_DEGREES = 1.5;

function turnsFor({ bias, onFold }: Copy, { nap, grainDegrees }: Cloth): number[] {
  const heads = nap ? [0] : [0, 180];
  const ahead = bias ? heads.flatMap((turn) => [turn + 45, (turn + 315) % 360]) : heads;
  const steps = onFold || grainDegrees === 0 ? 0 : Math.max(1, Math.round(grainDegrees / GRAIN_STEP_DEGREES));
  return ahead.flatMap((turn) =>
    Array.from({ length: 2 * steps + 1 }, (_, i) =>
      steps === 0 ? turn : turn + (grainDegrees * (i - steps)) / steps,
    ),
  );
}

function wayOf(
  { piece, ring }: Copy,
  { shrinkAlong, shrinkAcross }: Cloth,
  mirrored: boolean,
  turn: number,
): { way: Way; foldFirst: boolean } {
  const [head, foot] = piece.grain;
  const side = mirrored ? -1 : 1;
  const grain = Math.atan2(foot.y - head.y, side * (foot.x - head.x));
  const angle = (turn * Math.PI) / 180 - grain;
  const [cos, sin] = [rounded(Math.cos(angle)), rounded(Math.sin(angle))];
  const [along, across] = [1 / (1 - shrinkAlong), 1 / (1 - shrinkAcross)];
  const turned: Affine = {
    a: side * cos * along,
    b: -sin * along,
    c: side * sin * across,
    d: cos * across,
    left: 0,
    top: 0,
  };
  const laid = ring.map((point) => laidAt(turned, point));
  const [left, top] = [Math.min(...laid.map(({ x }) => x)), Math.min(...laid.map(({ y }) => y))];
  const fold =
    piece.edges.find(({ role }) => role === 'centre')?.points.map((point) => laidAt(turned, point)) ?? [];
  return {
    way: {
      mirrored,
      turn,
      ring: laid.map(({ x, y }) => ({ x: x - left, y: y - top })),
      onto: movedOnto(turned, { x: -left, y: -top }),
    },
    foldFirst: fold.length > 0 && fold.every(({ y }) => Math.abs(y - top) <= ON_FOLD_MM),
  };
}

/** The way that has this turn and side; null where it may not lie so on the cloth. */
export const wayFor = (
  copy: Copy,
  cloth: Cloth,
  { turn, mirrored }: Pick<Way, 'turn' | 'mirrored'>,
): Way | null =>
  waysOf(copy, cloth).find((way) => way.mirrored === mirrored && Math.abs(way.turn - turn) < EVEN_DEGREES) ??
  null;

const EVEN_DEGREES = 1e-6;

/** Right angles are exact. */
const rounded = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);
