// Joins the drag machine to pointer and keyboard events of one handle after another.

import { type FocusEvent, type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Draft, Style } from '../../engine';
import type { Handle } from '../handles/handle';
import { numberIn } from '../handles/numberIn';
import { goesOn, type LastKeyPress } from './coalesceKeyPresses';
import { type DragState, type DragStep, drag, type DragEvent as Gesture, IDLE } from './drag';
import { keyStep, numberByKey } from './keyStep';
import { type RestingPlace, type SnapPoint, snap } from './snap';
import { throttleToFrame } from './throttleToFrame';

/** A garment that is reckoned. */
interface Prepared {
  readonly draft: Draft;
  readonly style: Style;
  /** Shows it, for now. */
  readonly show: () => void;
}

export interface HandleActions {
  /** Reckons the garment with the handle's number at `value` mm. */
  readonly prepare: (handle: Handle, value: number) => Prepared;
  /**
   * Keep what was shown last, with the handle's number as the draft took it, mm; null where it has no such handle.
   * `sameKey`: a key was pressed on it again a moment after the last press was kept.
   */
  readonly commit: (handle: Handle, value: number | null, by: 'pull' | 'key' | 'sameKey') => void;
  /** Go back to what was there before. */
  readonly restore: () => void;
}

export interface Steps {
  /** Grid that a pull settles on, mm; Alt frees it. */
  readonly grid: number;
  /** Change per arrow key, and with Shift, mm. */
  readonly small: number;
  readonly large: number;
}

interface HandleEvents {
  /** `element` is the handle's own, where another's grip was over it. */
  readonly onPointerDown: (event: PointerEvent<SVGElement>, element?: SVGElement) => void;
  readonly onPointerMove: (event: PointerEvent<SVGElement>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onKeyDown: (event: KeyboardEvent<SVGElement>) => void;
  readonly onKeyUp: (event: KeyboardEvent<SVGElement>) => void;
  readonly onBlur: (event: FocusEvent<SVGElement>) => void;
}

/** The handle being pulled, and what it has come to rest on. */
export interface Pulling {
  readonly id: string;
  readonly place: RestingPlace;
}

/** So near a mark a pull is drawn to it. px */
const REACH_PX = 6;

/**
 * Event handlers for a handle, and which handle is being pulled now.
 *
 * @param pxPerMm scale of the table on the screen
 * @param marksOf the marks a handle is drawn to, asked when it is pressed
 */
export function useHandleDrag(
  actions: HandleActions,
  steps: Steps,
  pxPerMm: number,
  marksOf: (handle: Handle) => readonly SnapPoint[],
) {
  const state = useRef<DragState>(IDLE);
  // The handle as it was pressed: its gain and its way to the style must not change under the pull.
  const pressed = useRef<Handle | null>(null);
  /** The handle as it was before a key went down on it. */
  const keyed = useRef<{ handle: Handle; by: 'key' | 'sameKey' } | null>(null);
  const lastPress = useRef<LastKeyPress | null>(null);
  /** The number that was last asked to be shown in this pull, mm. */
  const asked = useRef<number | null>(null);
  const shown = useRef<Prepared | null>(null);
  const [pace] = useState(throttleToFrame);
  const snapPoints = useRef<readonly SnapPoint[]>([]);
  const [pulling, setPulling] = useState<Pulling | null>(null);
  useEffect(() => pace.forget, [pace]);

  const prepare = (handle: Handle, value: number) => (): (() => void) => {
    const prepared = actions.prepare(handle, value);
    return () => {
      shown.current = prepared;
      prepared.show();
    };
  };

  const commit = (handle: Handle, by: 'pull' | 'key' | 'sameKey'): void => {
    const garment = shown.current;
    shown.current = null;
    actions.commit(handle, garment && numberIn(garment.draft, garment.style, handle), by);
  };

  const show = (handle: Handle, step: DragStep, from: number, free: boolean): void => {
    if (!step.travel) return;
    const moved = (step.travel.x * handle.gain.x + step.travel.y * handle.gain.y) / pxPerMm;
    const reach = (REACH_PX * Math.hypot(handle.gain.x, handle.gain.y)) / pxPerMm;
    const { value, place } = free
      ? { value: from + moved, place: 'free' as const }
      : snap(from + moved, snapPoints.current, reach, steps.grid);
    const kept = Math.min(handle.most, Math.max(handle.least, value));
    setPulling((last) => (last?.id === handle.id && last.place === place ? last : { id: handle.id, place }));
    // Between two lines of the grid nothing changes, and nothing is drawn anew.
    if (kept === asked.current) return;
    asked.current = kept;
    pace.ask(prepare(handle, kept));
  };

  const send = (gesture: Gesture, free = false): void => {
    const handle = pressed.current;
    const before = state.current;
    const step = drag(before, gesture);
    state.current = step.state;
    if (!handle || before.kind === 'idle') return;
    if (step.effect === 'preview') {
      show(handle, step, before.value, free);
      return;
    }
    if (step.state.kind !== 'idle') return;
    if (step.effect === 'commit') {
      pace.finish();
      commit(handle, 'pull');
    }
    pace.forget();
    if (step.effect === 'restore') actions.restore();
    pressed.current = null;
    setPulling(null);
  };

  const endKeyPresses = (at: number): void => {
    if (!keyed.current) return;
    const { handle, by } = keyed.current;
    keyed.current = null;
    lastPress.current = { handle: handle.id, at };
    commit(handle, by);
  };

  const eventsFor = (handle: Handle): HandleEvents => ({
    onPointerDown: (event, element = event.currentTarget) => {
      if (event.button !== 0 || state.current.kind !== 'idle') return;
      element.setPointerCapture(event.pointerId);
      element.focus({ preventScroll: true });
      pressed.current = handle;
      lastPress.current = null;
      snapPoints.current = marksOf(handle);
      asked.current = null;
      send({
        kind: 'press',
        handle: handle.id,
        at: { x: event.clientX, y: event.clientY },
        value: handle.value,
      });
    },
    onPointerMove: (event) =>
      send({ kind: 'move', at: { x: event.clientX, y: event.clientY } }, event.altKey),
    onPointerUp: () => send({ kind: 'release' }),
    onPointerCancel: () => send({ kind: 'cancel' }),
    onKeyDown: (event) => {
      if (event.key === 'Escape' && state.current.kind !== 'idle') return send({ kind: 'cancel' });
      const change = keyStep(event.key, handle.gain, event.shiftKey ? steps.large : steps.small);
      if (change === null) return;
      event.preventDefault();
      const value = numberByKey(handle, change);
      // As far as it goes: there is nothing to be kept.
      if (value === handle.value) return;
      keyed.current ??= {
        handle,
        by: goesOn(lastPress.current, handle.id, event.timeStamp) ? 'sameKey' : 'key',
      };
      prepare(handle, value)()();
    },
    onKeyUp: ({ timeStamp }) => endKeyPresses(timeStamp),
    onBlur: ({ timeStamp }) => {
      endKeyPresses(timeStamp);
      lastPress.current = null;
    },
  });

  return { eventsFor, pulling };
}
