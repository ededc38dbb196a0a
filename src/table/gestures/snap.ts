// Snapping of a pulled handle: an axis to the bust-point line or to the position of a wedge of the other block, a bend to the
// straight axis, the point of a dart to a level line or to the height of another dart's point, everything else to the grid.

import { type Draft, stationX } from '../../engine';
import type { Handle } from '../handles/handle';

/** `start`: where the pull began. `limit`: beyond it the draft could not be cut. */
export type SnapPlace = SnapPoint['place'] | 'grid' | 'free' | 'limit';

export interface SnapPoint {
  /** The handle's value there, mm. */
  readonly value: number;
  readonly place: 'bustLine' | 'mirrored' | 'level' | 'even' | 'straight' | 'start';
}

/** The values a handle snaps to; only axes, their bends and the points of darts have any. */
export function snapPointsOf(handle: Handle, draft: Draft): SnapPoint[] {
  if (handle.kind === 'point') return heightsFor(handle, draft);
  if (handle.kind === 'bend') return straightFor(handle, draft);
  if (handle.kind !== 'axis' || !handle.block || !draft.blocks) return [];
  const own = draft.blocks[handle.block];
  const other = draft.blocks[handle.block === 'front' ? 'back' : 'front'];
  const width = own.width.get('waist');
  if (width === undefined) return [];
  const mirrored = other.wedges
    .filter((wedge) => !wedge.onCentre && wedge.station !== 0)
    .map((wedge): SnapPoint => ({ value: stationX(wedge.station, own.bustLine, width), place: 'mirrored' }));
  return [{ value: own.bustLine, place: 'bustLine' }, ...mirrored];
}

function straightFor({ block, wedge, level }: Handle, { blocks }: Draft): SnapPoint[] {
  const own = block ? blocks?.[block] : undefined;
  const unbent = own?.wedges.find(({ id }) => id === wedge)?.unbent;
  const straight = level ? unbent?.get(level) : undefined;
  if (!own || straight === undefined) return [];
  return [
    { value: straight, place: 'straight' },
    { value: own.bustLine, place: 'bustLine' },
  ];
}

function heightsFor({ level, wedge, which }: Handle, { levels, blocks }: Draft): SnapPoint[] {
  const from = levels.find(({ name }) => name === level);
  if (!from || !blocks || (which !== 'upper' && which !== 'lower')) return [];
  const others = [...blocks.front.wedges, ...blocks.back.wedges]
    .filter(({ id }) => id !== wedge)
    .map(({ extent }) => extent[which])
    .filter((y) => y !== null);
  return [
    ...levels.map(({ y }): SnapPoint => ({ value: y - from.y, place: 'level' })),
    ...others.map((y): SnapPoint => ({ value: y - from.y, place: 'even' })),
  ];
}

/**
 * A handle's value after snapping: to the nearest snap point within reach, else to the grid.
 *
 * @param value mm
 * @param reachMm reach of a snap point, in mm of the value
 * @param grid spacing of the grid, mm
 */
export function snap(
  value: number,
  snapPoints: readonly SnapPoint[],
  reachMm: number,
  grid: number,
): { value: number; place: SnapPlace } {
  let nearest: SnapPoint | null = null;
  for (const snapPoint of snapPoints) {
    const off = Math.abs(snapPoint.value - value);
    if (off <= reachMm && (nearest === null || off < Math.abs(nearest.value - value))) nearest = snapPoint;
  }
  return nearest ?? { value: Math.round(value / grid) * grid, place: 'grid' };
}
