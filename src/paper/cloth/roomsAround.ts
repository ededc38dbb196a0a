// The rooms that outlines need on the cloth, each worked out once for all ways in which an outline lies turned over or round.

import type { Point } from '../../engine';
import { boxAround, ringAround } from '../geometry/box';
import { roomAround } from './roomAround';

interface Known {
  readonly ring: readonly Point[];
  readonly room: readonly Point[];
}

/** Corners that differ by less are one. mm */
const SAME_MM = 1e-7;

/**
 * A function that gives the room around a ring with its least x and y at 0, everything within `clear` mm of it; the box of the
 * ring, so much larger, where the room would come to more than one outline.
 */
export function roomsAround(clear: number): (ring: readonly Point[]) => readonly Point[] {
  const known: Known[] = [];
  return (ring) => {
    const box = boxAround(ring);
    const [length, width] = [box?.right ?? 0, box?.bottom ?? 0];
    for (const flip of FLIPS) {
      const flipped = (point: Point): Point => flip(point, length, width);
      const found = known.find((each) => isSame(each.ring, ring, flipped));
      if (found) return found.room.map(flipped);
    }
    const room = roomAround(ring, clear) ?? ringAround(ring, clear);
    known.push({ ring, room });
    return room;
  };
}

type Flip = (point: Point, length: number, width: number) => Point;

/** As it is, turned round, and turned over along and across. */
const FLIPS: readonly Flip[] = [
  (point) => point,
  ({ x, y }, length, width) => ({ x: length - x, y: width - y }),
  ({ x, y }, _length, width) => ({ x, y: width - y }),
  ({ x, y }, length) => ({ x: length - x, y }),
];

const isSame = (ring: readonly Point[], other: readonly Point[], flipped: (point: Point) => Point): boolean =>
  ring.length === other.length &&
  ring.every((point, i) => {
    const { x, y } = flipped(point);
    const mate = other[i] as Point;
    return Math.abs(x - mate.x) < SAME_MM && Math.abs(y - mate.y) < SAME_MM;
  });
