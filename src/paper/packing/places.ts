// Where the outlines of a pattern lie on its plan.

import type { Piece, Point } from '../../engine';
import { type Box, boxAround, type InkLine, moved } from '../ink';
import { GAP_MM } from './arrange';
import { halfTurned } from './halfTurn';
import type { Spot } from './nest';
import { type Profile, profileOf } from './profile';

export interface Place {
  /** Head down. */
  readonly turned: boolean;
  /** What is added to its points, after half a turn about 0, 0 where it is turned. mm */
  readonly offset: Point;
}

/** A panel as packing sees it: its head up or, where that may be, down. */
export interface Packed {
  /** The cut line, closed. */
  readonly ring: readonly Point[];
  /** What tells on which sheets it is: sew lines and marks are inside the cut line, by the grain line. */
  readonly telling: readonly (readonly Point[])[];
}

/** Head up, and head down where it may be turned. */
export type PackedWays = readonly [Packed, Packed?];

export function packedWays(
  { piece, lines }: { readonly piece: Piece; readonly lines: readonly InkLine[] },
  mayTurn: boolean,
): PackedWays {
  const upright: Packed = {
    ring: piece.cutLine,
    telling: lines
      .filter(({ stroke }) => stroke === 'cut' || stroke === 'fold' || stroke === 'grain')
      .map(({ points }) => points),
  };
  return mayTurn ? [upright, halfTurned(upright)] : [upright];
}

/** The way an outline lies at its place. */
export const laidWay = ([upright, down]: PackedWays, { turned }: Place): Packed =>
  turned && down ? down : upright;

/** The box around all outlines at their places; null around none. */
export const boxOfPlaces = (ways: readonly PackedWays[], places: readonly Place[]): Box | null =>
  boxAround(
    ways.flatMap((way, i) => {
      const place = places[i];
      return place ? moved(laidWay(way, place).ring, place.offset) : [];
    }),
  );

export const movedPlaces = (places: readonly Place[], by: Point): Place[] =>
  places.map(({ turned, offset }) => ({ turned, offset: { x: offset.x + by.x, y: offset.y + by.y } }));

/** The profiles of all ways to lie, each with half of the gap around it. */
export const profilesOf = (ways: readonly PackedWays[]): Profile[][] =>
  ways.map((way) => way.flatMap((each) => (each ? [profileOf(each.ring, GAP_MM / 2)] : [])));

/** From where profiles were laid down in an order, to what moves their outlines there. */
export function placesOf(
  spots: readonly Spot[],
  order: readonly number[],
  ways: readonly PackedWays[],
): Place[] {
  const places: Place[] = [];
  for (const [n, { profile, x, y, turned }] of spots.entries()) {
    const i = order[n] as number;
    const corner = { x: x + profile.roomMm, y: y + profile.roomMm };
    const box = boxAround(laidWay(ways[i] as PackedWays, { turned, offset: corner }).ring);
    places[i] = { turned, offset: { x: corner.x - (box?.left ?? 0), y: corner.y - (box?.top ?? 0) } };
  }
  return places;
}
