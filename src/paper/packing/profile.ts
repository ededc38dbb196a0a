// Profiles of outlines: their extents band by band, so that outlines are nested by their shapes and not by their boxes.

import type { Point } from '../../engine';
import { boxAround } from '../geometry/box';

/** The extent of an outline in each band; band k is from k to k + 1 times {@link BAND_MM}. */
interface Bands {
  readonly from: Float64Array;
  readonly to: Float64Array;
}

/** The profile of an outline with room around it; 0, 0 is the top left corner of the box around both. */
export interface Profile {
  /** Room around the outline, mm. */
  readonly roomMm: number;
  /** Size of the outline with its room, mm. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Extents from left to right in each band from the top down, and from top to foot in each band from the left; with the room. */
  readonly rows: Bands;
  readonly columns: Bands;
  /** The same for each band together with the one before it, for outlines whose bands do not align; one longer. */
  readonly rowPairs: Bands;
  readonly columnPairs: Bands;
  /** Rows of the outline without its room. */
  readonly ownRows: Bands;
}

/** Height of a band. Finer bands saved no sheet for any style that was tried, and took longer. mm */
export const BAND_MM = 6;

/** The profile of a closed ring, whose first point is not repeated, with `roomMm` around it. */
export function profileOf(ring: readonly Point[], roomMm: number): Profile {
  const box = boxAround(ring) ?? { left: 0, top: 0, right: 0, bottom: 0 };
  const widthMm = box.right - box.left + 2 * roomMm;
  const heightMm = box.bottom - box.top + 2 * roomMm;
  const [rows, columns, ownRows] = [bands(heightMm), bands(widthMm), bands(heightMm)];
  for (const [a, b] of steps(ring)) {
    const [left, right] = [Math.min(a.x, b.x) - box.left + roomMm, Math.max(a.x, b.x) - box.left + roomMm];
    const [top, foot] = [Math.min(a.y, b.y) - box.top + roomMm, Math.max(a.y, b.y) - box.top + roomMm];
    cover(rows, top, foot, left, right, roomMm);
    cover(columns, left, right, top, foot, roomMm);
    cover(ownRows, top, foot, left, right, 0);
  }
  return {
    roomMm,
    widthMm,
    heightMm,
    rows,
    columns,
    rowPairs: paired(rows),
    columnPairs: paired(columns),
    ownRows,
  };
}

const bands = (length: number): Bands => {
  const count = Math.floor(length / BAND_MM) + 1;
  return { from: new Float64Array(count).fill(Infinity), to: new Float64Array(count).fill(-Infinity) };
};

function paired({ from, to }: Bands): Bands {
  const pairs = bands(from.length * BAND_MM);
  for (let k = 0; k < pairs.from.length; k += 1) {
    pairs.from[k] = Math.min(from[k - 1] ?? Infinity, from[k] ?? Infinity);
    pairs.to[k] = Math.max(to[k - 1] ?? -Infinity, to[k] ?? -Infinity);
  }
  return pairs;
}

/** The segments of a ring, divided into parts no longer than a band. */
function* steps(ring: readonly Point[]): Generator<readonly [Point, Point]> {
  for (const [i, b] of ring.entries()) {
    const a = ring[(i + ring.length - 1) % ring.length] as Point;
    const parts = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / BAND_MM));
    const at = (part: number): Point => ({
      x: a.x + ((b.x - a.x) * part) / parts,
      y: a.y + ((b.y - a.y) * part) / parts,
    });
    for (let part = 0; part < parts; part += 1) yield [at(part), at(part + 1)];
  }
}

/**
 * Widens the bands to hold a box from `top` to `foot` and from `left` to `right` with `room` around it, rounded at the corners.
 */
function cover(
  { from, to }: Bands,
  top: number,
  foot: number,
  left: number,
  right: number,
  room: number,
): void {
  const first = Math.max(0, Math.floor((top - room) / BAND_MM));
  const last = Math.min(from.length - 1, Math.floor((foot + room) / BAND_MM));
  for (let k = first; k <= last; k += 1) {
    const away = Math.max(0, k * BAND_MM - foot, top - (k + 1) * BAND_MM);
    const sideways = Math.sqrt(Math.max(0, room * room - away * away));
    from[k] = Math.min(from[k] as number, left - sideways);
    to[k] = Math.max(to[k] as number, right + sideways);
  }
}
