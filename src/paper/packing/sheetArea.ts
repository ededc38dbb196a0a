// Sheets as an area to nest outlines on. A place costs the number of sheets that it adds.

import { type Grid, stepAcross, stepDown } from '../sheets/grid';
import type { PackingArea } from './nest';
import { BAND_MM, type Profile } from './profile';
import type { Span } from './slide';

/** The direction in which places that add as many sheets are filled. */
export type FillDirection = 'down' | 'across';

/** Cost of a sheet: more than any place on the plan costs otherwise. */
export const SHEET_COST = 1e6;

/** All sheets of a grid, none of them used; outlines keep `rimMm` away from the edges of the plan. */
export function sheetArea(grid: Grid, rimMm: number, fill: FillDirection): PackingArea {
  const [stepX, stepY] = [stepAcross(grid), stepDown(grid)];
  const [right, foot] = [grid.columns * stepX + grid.overlapMm, grid.rows * stepY + grid.overlapMm];
  const used = new Uint8Array(grid.columns * grid.rows);
  const [least, most] = [new Float64Array(grid.rows), new Float64Array(grid.rows)];

  // Many places are weighed at one height, at which the outline has the same extent in each row of sheets.
  let weighed: { profile: Profile | null; y: number } = { profile: null, y: 0 };
  const reachAt = (profile: Profile, y: number): void => {
    if (weighed.profile === profile && weighed.y === y) return;
    weighed = { profile, y };
    least.fill(Infinity);
    most.fill(-Infinity);
    const { from, to } = profile.ownRows;
    const rowAt = (place: number): number => Math.min(grid.rows - 1, Math.max(0, Math.floor(place / stepY)));
    for (let k = 0; k < from.length; k += 1) {
      const [left, end] = [from[k] as number, to[k] as number];
      if (end < left) continue;
      const top = Math.max(k * BAND_MM, profile.roomMm);
      const bottom = Math.min((k + 1) * BAND_MM, profile.heightMm - profile.roomMm);
      for (let row = rowAt(y + top); row <= rowAt(y + bottom - ROUNDING_MM); row += 1) {
        if (left < (least[row] as number)) least[row] = left;
        if (end > (most[row] as number)) most[row] = end;
      }
    }
  };

  /** Visits the sheets that an outline has a part on. */
  const touched = (profile: Profile, x: number, y: number, visit: (sheet: number) => void): void => {
    reachAt(profile, y);
    const columnAt = (place: number): number =>
      Math.min(grid.columns - 1, Math.max(0, Math.floor(place / stepX)));
    for (let row = 0; row < grid.rows; row += 1) {
      if ((most[row] as number) < (least[row] as number)) continue;
      const last = columnAt(x + (most[row] as number) - ROUNDING_MM);
      for (let column = columnAt(x + (least[row] as number)); column <= last; column += 1)
        visit(row * grid.columns + column);
    }
  };

  /** Places of a profile's corner at the near and the far edge of each sheet, mm. */
  const edges = (size: number, room: number, step: number, count: number, end: number): number[] =>
    Array.from({ length: count }, (_, i) => i).flatMap((i) => [
      i === 0 ? rimMm - room : i * step - room,
      (i === count - 1 ? end - rimMm : (i + 1) * step) - size + room,
    ]);
  const span = (size: number, room: number, end: number): Span => [rimMm - room, end - rimMm - size + room];

  return {
    across: ({ widthMm, roomMm }: Profile) => span(widthMm, roomMm, right),
    down: ({ heightMm, roomMm }: Profile) => span(heightMm, roomMm, foot),
    xs: ({ widthMm, roomMm }) => edges(widthMm, roomMm, stepX, grid.columns, right),
    ys: ({ heightMm, roomMm }) => edges(heightMm, roomMm, stepY, grid.rows, foot),
    cost: (profile, x, y) => {
      let more = 0;
      touched(profile, x, y, (sheet) => {
        if (!used[sheet]) more += 1;
      });
      const [far, low] = [x / right, y / foot];
      const place = fill === 'across' ? far + low / 100 : low + far / 100;
      return more * SHEET_COST + place;
    },
    take: ({ profile, x, y }) => {
      touched(profile, x, y, (sheet) => {
        used[sheet] = 1;
      });
    },
  };
}

/** Tolerance for an outline that ends at the edge of a sheet. mm */
const ROUNDING_MM = 0.005;
