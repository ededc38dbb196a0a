// Placements of outlines on the plan.

import type { Piece, Point } from '../../engine';
import { type Box, boxAround, moved } from '../geometry/box';
import { halfTurned } from '../geometry/halfTurn';
import type { Stroke } from '../panel/strokes';
import { GAP_MM } from './arrange';
import type { Spot } from './nest';
import { type Profile, profileOf } from './profile';

export interface Placement {
  /** It lies upside down. */
  readonly turned: boolean;
  /** Added to its points, after half a turn about 0, 0 where it is turned. mm */
  readonly offset: Point;
}

/** A panel as it is packed, upright or upside down. */
export interface Outline {
  /** The cut line, closed. */
  readonly ring: readonly Point[];
  /** Cut, fold and grain lines: they decide which sheets the panel is on, because all other lines lie among them. */
  readonly spanLines: readonly (readonly Point[])[];
}

/** An outline upright and, where it may be turned, upside down. */
export type OutlineTurns = readonly [Outline, Outline?];

/** The outline of a piece; upside down as well where it may be turned. */
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

/** The outline as it lies at its placement. */
export const outlineAt = ([upright, down]: OutlineTurns, { turned }: Placement): Outline =>
  turned && down ? down : upright;

/** The box around all outlines at their placements; null around none. */
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

/** Placements moved on the plan by `by`, mm. */
export const movedPlacements = (placements: readonly Placement[], by: Point): Placement[] =>
  placements.map(({ turned, offset }) => ({ turned, offset: { x: offset.x + by.x, y: offset.y + by.y } }));

/** The profiles of outlines, each with half of the gap around it. */
export const profilesOf = (outlines: readonly OutlineTurns[]): Profile[][] =>
  outlines.map((turns) => turns.flatMap((each) => (each ? [profileOf(each.ring, GAP_MM / 2)] : [])));

/** The placements of outlines whose profiles were laid on spots in a given order. */
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
