// What an arrow key does to a handle: sideways it goes the way it looks, up and down it grows and shrinks.

import type { Point } from '../../engine';
import type { Handle } from '../handles/handle';

/**
 * Change of a handle's value for a key, mm; null for a key that means nothing to it.
 *
 * @param gain the handle's value per mm of travel to the right and down
 * @param step mm
 */
export function keyStep(key: string, gain: Point, step: number): number | null {
  const upright = gain.y !== 0;
  switch (key) {
    case 'ArrowRight':
      return upright ? step : Math.sign(gain.x) * step;
    case 'ArrowLeft':
      return upright ? -step : -Math.sign(gain.x) * step;
    case 'ArrowUp':
      return upright ? -Math.sign(gain.y) * step : step;
    case 'ArrowDown':
      return upright ? Math.sign(gain.y) * step : -step;
    default:
      return null;
  }
}

/** The number a handle comes to by such a change, mm: within its span, and past what it cannot stand at. */
export function numberByKey(
  handle: Pick<Handle, 'value' | 'least' | 'most' | 'firstAfterLeast'>,
  change: number,
): number {
  const { value, least, most, firstAfterLeast = least } = handle;
  const next = Math.min(most, Math.max(least, value + change));
  if (next <= least || next >= firstAfterLeast) return next;
  return change > 0 ? firstAfterLeast : least;
}
