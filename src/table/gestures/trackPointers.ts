// Pointers on the canvas as a pure state machine: one pans it, two pan and zoom it.

import type { PanZoom, ScreenPoint } from '../layout/viewport';

/** A pointer that is down, by its pointer id; px from the top-left corner of the canvas. */
interface Pointer extends ScreenPoint {
  readonly id: number;
}

export interface Pointers {
  /** The pointers that are down, first come first; a third is ignored. */
  readonly active: readonly Pointer[];
  /** True from the first movement beyond {@link SLACK_PX} on: the press is no click any more. */
  readonly moved: boolean;
}

export type PointersEvent = Pointer & { readonly kind: 'down' | 'move' | 'up' };

interface PointersStep {
  readonly pointers: Pointers;
  /** How the view changes; null for not at all. */
  readonly panZoom: PanZoom | null;
}

export const NO_POINTERS: Pointers = { active: [], moved: false };

/** A press pans the canvas only after this much travel, so that a click stays a click. px */
const SLACK_PX = 4;

/** The pointers after an event, and the change of the view that follows from it. */
export function trackPointers(pointers: Pointers, { kind, id, x, y }: PointersEvent): PointersStep {
  const isKnown = pointers.active.some((each) => each.id === id);
  const pointer = { id, x, y };
  if (kind === 'down') {
    if (isKnown || pointers.active.length >= 2) return { pointers, panZoom: null };
    const active = [...pointers.active, pointer];
    return { pointers: { active, moved: pointers.moved || active.length === 2 }, panZoom: null };
  }
  if (!isKnown) return { pointers, panZoom: null };
  if (kind === 'up') {
    const active = pointers.active.filter((each) => each.id !== id);
    // The pointer that remains continues from where it is.
    return { pointers: { active, moved: active.length > 0 && pointers.moved }, panZoom: null };
  }
  const active = pointers.active.map((each) => (each.id === id ? pointer : each));
  const [from, to] = [centroid(pointers.active), centroid(active)];
  if (!pointers.moved && Math.hypot(to.x - from.x, to.y - from.y) < SLACK_PX)
    return { pointers, panZoom: null };
  const [before, after] = [spread(pointers.active), spread(active)];
  const factor = before > 0 && after > 0 ? after / before : 1;
  return { pointers: { active, moved: true }, panZoom: { from, to, factor } };
}

function centroid(pointers: readonly Pointer[]): ScreenPoint {
  const sum = pointers.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / pointers.length, y: sum.y / pointers.length };
}

/** Distance between two pointers, px; 0 for one. */
function spread([a, b]: readonly Pointer[]): number {
  return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
}

/** px for one line, where a wheel reports lines (`deltaMode` 1); a page (`deltaMode` 2) is 20 lines. */
const PX_PER_LINE = 16;

/** The turn of a wheel that doubles the scale, px. */
const PX_TO_DOUBLE = 480;

/** The factor by which a turn of the wheel zooms, 0.5 to 2; above 1 for a turn away from the user. */
export function wheelFactor(deltaY: number, deltaMode: number): number {
  const px = deltaY * (deltaMode === 0 ? 1 : deltaMode === 1 ? PX_PER_LINE : 20 * PX_PER_LINE);
  return 2 ** (-Math.max(-PX_TO_DOUBLE, Math.min(PX_TO_DOUBLE, px)) / PX_TO_DOUBLE);
}
