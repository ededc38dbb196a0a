// Where a pulled handle comes to rest: on the bust-point line, across from a wedge of the other block, or on the grid.

import { type Draft, stationX } from '../../engine';
import type { Handle } from '../handles';

export type RestingPlace = 'grid' | 'bustLine' | 'mirrored' | 'free';

export interface Mark {
  /** The handle's number there, mm. */
  readonly value: number;
  readonly place: 'bustLine' | 'mirrored';
}

/** The marks an axis is drawn to, as its number on its own block; nothing for any other handle. */
export function marksOf(handle: Handle, draft: Draft): Mark[] {
  if (handle.kind !== 'axis' || !handle.block || !draft.blocks) return [];
  const own = draft.blocks[handle.block];
  const other = draft.blocks[handle.block === 'front' ? 'back' : 'front'];
  const width = own.width.get('waist');
  if (width === undefined) return [];
  const mirrored = other.wedges
    .filter((wedge) => !wedge.onCentre && wedge.station !== 0)
    .map((wedge): Mark => ({ value: stationX(wedge.station, own.bustLine, width), place: 'mirrored' }));
  return [{ value: own.bustLine, place: 'bustLine' }, ...mirrored];
}

/**
 * A handle's number come to rest.
 *
 * @param reachMm how near a mark draws it, in mm of its number; a mark goes before the grid
 * @param grid spacing of the grid, mm
 */
export function settle(
  value: number,
  marks: readonly Mark[],
  reachMm: number,
  grid: number,
): { value: number; place: RestingPlace } {
  let nearest: Mark | null = null;
  for (const mark of marks) {
    const off = Math.abs(mark.value - value);
    if (off <= reachMm && (nearest === null || off < Math.abs(nearest.value - value))) nearest = mark;
  }
  return nearest ?? { value: Math.round(value / grid) * grid, place: 'grid' };
}
