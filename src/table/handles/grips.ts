// Where a handle is caught. Grips are as large as a finger, so some lie over each other: the nearest is meant.

import type { Point } from '../../engine';
import type { Handle } from './handle';

/** Grips of two legs that touch lean apart, so that each can be caught. px */
export function leanOf(handle: Pick<Handle, 'kind' | 'which' | 'gain'>): number {
  if (handle.kind !== 'leg') return 0;
  return Math.sign(handle.gain.x) * (handle.which === 'inner' || handle.which === 'outer' ? 9 : 0);
}

/**
 * The handle whose grip's middle is nearest to a place on the table; null where there is none.
 *
 * @param px one px of the screen in table mm
 */
export function nearestHandle(handles: readonly Handle[], place: Point, px: number): Handle | null {
  const away = (handle: Handle): number =>
    Math.hypot(handle.at.x + leanOf(handle) * px - place.x, handle.at.y - place.y);
  return handles.reduce<Handle | null>(
    (nearest, handle) => (nearest === null || away(handle) < away(nearest) ? handle : nearest),
    null,
  );
}
