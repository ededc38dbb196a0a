// Placements of outlines on the plan.

import type { Piece, Point } from '../../engine';
import { type Box, boxAround, moved } from '../geometry/box';
import { type Turns, turnedBy } from '../geometry/turned';
import type { Stroke } from '../panel/strokes';
import { GAP_MM } from './arrange';
import type { Spot } from './nest';
import { type Profile, profileOf } from './profile';

export interface Placement {
  readonly turns: Turns;
  /** Added to its points after it was turned about 0, 0. mm */
  readonly offset: Point;
}

/** A panel as it is packed, in one of the ways it may lie. */
export interface Outline {
  readonly turns: Turns;
  /** The cut line, closed. */
  readonly ring: readonly Point[];
  /** Cut, fold and grain lines: they decide which sheets the panel is on, because all other lines lie among them. */
  readonly spanLines: readonly (readonly Point[])[];
}

/** The ways an outline may lie, upright first. */
export type OutlineWays = readonly [Outline, ...Outline[]];

/** The outline of a piece upright and turned. */
export function outlineWays(
  { piece, lines }: { readonly piece: Piece; readonly lines: readonly Stroke[] },
  others: readonly Turns[],
): OutlineWays {
  const ring = piece.cutLine;
  const spanLines = lines
    .filter(({ kind }) => kind === 'cut' || kind === 'fold' || kind === 'grain')
    .map(({ points }) => points);
  const turned = others.map((turns): Outline => ({ turns, ...turnedBy({ ring, spanLines }, turns) }));
  return [{ turns: 0, ring, spanLines }, ...turned];
}

/** The outline as it lies at its placement. */
export const outlineAt = (ways: OutlineWays, { turns }: Placement): Outline =>
  ways.find((way) => way.turns === turns) ?? ways[0];

/** The box around all outlines at their placements; null around none. */
export const boxOfOutlines = (
  outlines: readonly OutlineWays[],
  placements: readonly Placement[],
): Box | null =>
  boxAround(
    outlines.flatMap((ways, i) => {
      const placement = placements[i];
      return placement ? moved(outlineAt(ways, placement).ring, placement.offset) : [];
    }),
  );

/** Placements moved on the plan by `by`, mm. */
export const movedPlacements = (placements: readonly Placement[], by: Point): Placement[] =>
  placements.map(({ turns, offset }) => ({ turns, offset: { x: offset.x + by.x, y: offset.y + by.y } }));

/** The profiles of outlines, each with half of the gap around it. */
export const profilesOf = (outlines: readonly OutlineWays[]): Profile[][] =>
  outlines.map((ways) => ways.map(({ ring }) => profileOf(ring, GAP_MM / 2)));

/** The placements of outlines whose profiles were laid on spots in a given order. */
export function placementsOf(
  spots: readonly Spot[],
  order: readonly number[],
  outlines: readonly OutlineWays[],
): Placement[] {
  const placements: Placement[] = [];
  for (const [n, { profile, x, y, way }] of spots.entries()) {
    const i = order[n] as number;
    const outline = (outlines[i] as OutlineWays)[way] as Outline;
    placements[i] = placedAt(outline, { x: x + profile.roomMm, y: y + profile.roomMm });
  }
  return placements;
}

/** The placement of an outline whose box has its top left corner at `corner`. */
export function placedAt({ turns, ring }: Outline, corner: Point): Placement {
  const box = boxAround(ring);
  return { turns, offset: { x: corner.x - (box?.left ?? 0), y: corner.y - (box?.top ?? 0) } };
}
