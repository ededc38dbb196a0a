// Fingers or a mouse on the paper of the table, as a pure machine: one moves the table, two move and scale it.

import type { Shift } from '../layout/viewport';

interface Finger {
  readonly id: number;
  readonly x: number;
  readonly y: number;
}

export interface Pointers {
  /** The fingers that are down, first come first; a third is not listened to. */
  readonly fingers: readonly Finger[];
  /** Travelled so far that it is no click any more. */
  readonly moved: boolean;
}

export type PointersEvent = Finger & { readonly kind: 'down' | 'move' | 'up' };

interface PointersStep {
  readonly pointers: Pointers;
  /** What the view should do; null for nothing. */
  readonly shift: Shift | null;
}

export const NO_POINTERS: Pointers = { fingers: [], moved: false };

/** A press on the paper moves the table only after this much travel, so that a click stays a click. px */
const SLACK_PX = 4;

export function handle(pointers: Pointers, { kind, id, x, y }: PointersEvent): PointersStep {
  const known = pointers.fingers.some((finger) => finger.id === id);
  const finger = { id, x, y };
  if (kind === 'down') {
    if (known || pointers.fingers.length >= 2) return { pointers, shift: null };
    const fingers = [...pointers.fingers, finger];
    return { pointers: { fingers, moved: pointers.moved || fingers.length === 2 }, shift: null };
  }
  if (!known) return { pointers, shift: null };
  if (kind === 'up') {
    const fingers = pointers.fingers.filter((each) => each.id !== id);
    // The finger that stays goes on from where it is.
    return { pointers: { fingers, moved: fingers.length > 0 && pointers.moved }, shift: null };
  }
  const fingers = pointers.fingers.map((each) => (each.id === id ? finger : each));
  const [from, to] = [middle(pointers.fingers), middle(fingers)];
  if (!pointers.moved && Math.hypot(to.x - from.x, to.y - from.y) < SLACK_PX)
    return { pointers, shift: null };
  const [before, after] = [spread(pointers.fingers), spread(fingers)];
  const factor = before > 0 && after > 0 ? after / before : 1;
  return { pointers: { fingers, moved: true }, shift: { from, to, factor } };
}

function middle(fingers: readonly Finger[]): { x: number; y: number } {
  const sum = fingers.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / fingers.length, y: sum.y / fingers.length };
}

/** How far two fingers are apart, px; 0 for one. */
function spread([a, b]: readonly Finger[]): number {
  return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
}

/** Lines that a wheel without pixels turns by, in px; a page's worth is 20 lines. */
const PX_PER_LINE = 16;

/** Turn of a wheel that doubles the scale, px. */
const PX_TO_DOUBLE = 480;

/** How many times as large a turn of the wheel draws the table; away from the maker is nearer. */
export function wheelFactor(deltaY: number, deltaMode: number): number {
  const px = deltaY * (deltaMode === 0 ? 1 : deltaMode === 1 ? PX_PER_LINE : 20 * PX_PER_LINE);
  return 2 ** (-Math.max(-PX_TO_DOUBLE, Math.min(PX_TO_DOUBLE, px)) / PX_TO_DOUBLE);
}
