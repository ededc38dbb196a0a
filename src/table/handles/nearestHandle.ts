// The handle that a press belongs to. Hit areas are as large as a fingertip, so some overlap: the nearest handle is taken.

import type { Point } from '../../engine';
import type { Handle } from './handle';

/** How far to the right of a handle the centre of its hit area lies, px: those of two legs that touch are moved apart. */
export function hitAreaOffset(handle: Pick<Handle, 'kind' | 'which' | 'gain'>): number {
  if (handle.kind !== 'leg') return 0;
  return Math.sign(handle.gain.x) * (handle.which === 'inner' || handle.which === 'outer' ? 9 : 0);
}

/**
 * The handle the centre of whose hit area is nearest to a point; null where there are no handles.
 *
 * @param place canvas mm
 * @param px one px of the screen in canvas mm
 */
export function nearestHandle(handles: readonly Handle[], place: Point, px: number): Handle | null {
  const away = (handle: Handle): number =>
    Math.hypot(handle.at.x + hitAreaOffset(handle) * px - place.x, handle.at.y - place.y);
  return handles.reduce<Handle | null>(
    (nearest, handle) => (nearest === null || away(handle) < away(nearest) ? handle : nearest),
    null,
  );
}
