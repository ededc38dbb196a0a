// Where the outlines of a pattern lie on its plan.

import type { Piece, Point } from '../../engine';
import { type Box, boxAround, moved } from '../geometry/box';
import { halfTurned } from '../geometry/halfTurn';
import type { Stroke } from '../panel/strokes';
import { GAP_MM } from './arrange';
import type { Spot } from './nest';
import { type Profile, profileOf } from './profile';

export interface Placement {
  /** Head down. */
  readonly turned: boolean;
  /** What is added to its points, after half a turn about 0, 0 where it is turned. mm */
  readonly offset: Point;
}

/** A panel as packing sees it: its head up or, where that may be, down. */
export interface Outline {
  /** The cut line, closed. */
  readonly ring: readonly Point[];
  /** What tells on which sheets it is: sew lines and marks are inside the cut line, by the grain line. */
  readonly spanLines: readonly (readonly Point[])[];
}

/** Head up, and head down where it may be turned. */
export type OutlineTurns = readonly [Outline, Outline?];

export function outlineTurns(
  { piece, lines }: { readonly piece: Piece; readonly lines: readonly Stroke[] },
  mayTurn: boolean,
): OutlineTurns {
  const upright: Outline = {
    ring: piece.cutLine,
    spanLines: lines
      .filter(({ kind }) => kind === 'cut' || kind === 'fold' || kind === 'grain')
      .map(({ points }) => points),
  };
  return mayTurn ? [upright, halfTurned(upright)] : [upright];
}

/** The way an outline lies at its place. */
export const outlineAt = ([upright, down]: OutlineTurns, { turned }: Placement): Outline =>
  turned && down ? down : upright;

/** The box around all outlines at their places; null around none. */
export const boxOfOutlines = (
  outlines: readonly OutlineTurns[],
  placements: readonly Placement[],
): Box | null =>
  boxAround(
    outlines.flatMap((turns, i) => {
      const placement = placements[i];
      return placement ? moved(outlineAt(turns, placement).ring, placement.offset) : [];
    }),
  );

export const movedPlacements = (placements: readonly Placement[], by: Point): Placement[] =>
  placements.map(({ turned, offset }) => ({ turned, offset: { x: offset.x + by.x, y: offset.y + by.y } }));

/** The profiles of all ways to lie, each with half of the gap around it. */
export const profilesOf = (outlines: readonly OutlineTurns[]): Profile[][] =>
  outlines.map((turns) => turns.flatMap((each) => (each ? [profileOf(each.ring, GAP_MM / 2)] : [])));

/** From where profiles were laid down in an order, to what moves their outlines there. */
export function placementsOf(
  spots: readonly Spot[],
  order: readonly number[],
  outlines: readonly OutlineTurns[],
): Placement[] {
  const placements: Placement[] = [];
  for (const [n, { profile, x, y, turned }] of spots.entries()) {
    const i = order[n] as number;
    const corner = { x: x + profile.roomMm, y: y + profile.roomMm };
    const box = boxAround(outlineAt(outlines[i] as OutlineTurns, { turned, offset: corner }).ring);
    placements[i] = { turned, offset: { x: corner.x - (box?.left ?? 0), y: corner.y - (box?.top ?? 0) } };
  }
  return placements;
}
