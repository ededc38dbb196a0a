// The effect of an arrow key on a handle: along its own axis it moves in the direction of the arrow; across it, up and right
// increase the value.

import type { Point } from '../../engine';
import type { Handle } from '../handles/handle';

/**
 * Change of a handle's value for a key, mm; null for any other key.
 *
 * @param gain the handle's {@link Handle.gain}; a handle with a `gain.y` moves up and down only
 * @param step size of the change, mm
 */
export function keyStep(key: string, gain: Point, step: number): number | null {
  const isVertical = gain.y !== 0;
  switch (key) {
    case 'ArrowRight':
      return isVertical ? step : Math.sign(gain.x) * step;
    case 'ArrowLeft':
      return isVertical ? -step : -Math.sign(gain.x) * step;
    case 'ArrowUp':
      return isVertical ? -Math.sign(gain.y) * step : step;
    case 'ArrowDown':
      return isVertical ? Math.sign(gain.y) * step : -step;
    default:
      return null;
  }
}

/** The value of a handle after such a change, mm: within its range, and beyond the values that are not possible. */
export function valueByKey(
  handle: Pick<Handle, 'value' | 'least' | 'most' | 'firstAfterLeast'>,
  change: number,
): number {
  const { value, least, most, firstAfterLeast = least } = handle;
  const next = Math.min(most, Math.max(least, value + change));
  if (next <= least || next >= firstAfterLeast) return next;
  return change > 0 ? firstAfterLeast : least;
}
