// Finds room for a grain line in an outline.

import { at, last } from './lists';
import type { Point } from './point';

/** Places across the outline's width that are tried. */
const TRIED = 24;

/** This part of the room is left free at either end of the line. */
const CLEAR = 0.12;

/** Lines at least this part of the longest are compared by their distance from the edges beside them. */
const LONG_ENOUGH = 0.6;

/**
 * An upright line inside a closed ring: of those long enough, the one farthest from the edges on both sides; a little shorter than
 * its room.
 *
 * @param holes closed rings inside the first one, such as darts, that the line keeps out of
 */
export function uprightInside(
  ring: readonly Point[],
  holes: readonly (readonly Point[])[] = [],
): readonly [Point, Point] {
  const rings = [ring, ...holes];
  const xs = ring.map(({ x }) => x);
  const left = Math.min(...xs);
  const right = Math.max(...xs);
  const lines = Array.from({ length: TRIED - 1 }, (_, i) => left + ((right - left) * (i + 1)) / TRIED).map(
    (x) => longestAt(rings, x),
  );
  const longest = Math.max(...lines.map(({ from, to }) => to - from));
  const best = lines
    .filter(({ from, to }) => to - from >= LONG_ENOUGH * longest)
    .map((line) => ({ ...line, room: roomBeside(rings, line) }))
    .reduce((kept, line) => (line.room > kept.room + 1e-6 ? line : kept));
  return [
    { x: best.x, y: best.from },
    { x: best.x, y: best.to },
  ];
}

interface Upright {
  readonly x: number;
  readonly from: number;
  readonly to: number;
}

function longestAt(rings: Rings, x: number): Upright {
  const ys = crossingsUp(rings, x);
  let from = 0;
  let to = 0;
  for (let i = 1; i < ys.length; i += 2) {
    const upper = at(ys, i - 1);
    const lower = at(ys, i);
    if (lower - upper > to - from) [from, to] = [upper, lower];
  }
  const clear = CLEAR * (to - from);
  return { x, from: from + clear, to: to - clear };
}

/** Where an upright line is measured from the edges beside it, as parts of its length. */
const MEASURED = [0, 0.25, 0.5, 0.75, 1];

/** How far an upright line is from the edges beside it, at its ends and between. */
function roomBeside(rings: Rings, { x, from, to }: Upright): number {
  let room = Number.POSITIVE_INFINITY;
  for (const part of MEASURED) {
    const y = from + (to - from) * part;
    for (const ring of rings) {
      let a = last(ring);
      for (const b of ring) {
        if (a.y > y !== b.y > y)
          room = Math.min(room, Math.abs(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) - x));
        a = b;
      }
    }
  }
  return room;
}

type Rings = readonly (readonly Point[])[];

/** The ys, growing, at which rings cross the upright line at `x`. */
export function crossingsUp(rings: Rings, x: number): number[] {
  const ys: number[] = [];
  for (const ring of rings) {
    let a = last(ring);
    for (const b of ring) {
      if (a.x > x !== b.x > x) ys.push(a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x));
      a = b;
    }
  }
  return ys.sort((m, n) => m - n);
}
