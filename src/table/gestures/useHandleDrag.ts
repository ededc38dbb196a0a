// Joins the drag machine to pointer and keyboard events of one handle after another.

import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Handle } from '../handles';
import { type DragState, type DragStep, drag, type DragEvent as Gesture, IDLE } from './drag';
import { keyStep } from './keyStep';

export interface HandleActions {
  /** Show the handle's number at `value` mm, for now. */
  readonly preview: (handle: Handle, value: number) => void;
  /** Keep what was shown last. */
  readonly commit: (handle: Handle) => void;
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
  readonly onPointerDown: (event: PointerEvent<SVGElement>) => void;
  readonly onPointerMove: (event: PointerEvent<SVGElement>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onKeyDown: (event: KeyboardEvent<SVGElement>) => void;
  readonly onKeyUp: () => void;
  readonly onBlur: () => void;
}

/**
 * Event handlers for a handle, and which handle is being pulled now.
 *
 * @param pxPerMm scale of the table on the screen
 */
export function useHandleDrag(actions: HandleActions, steps: Steps, pxPerMm: number) {
  const state = useRef<DragState>(IDLE);
  // The handle as it was pressed: its gain and its way to the style must not change under the pull.
  const pressed = useRef<Handle | null>(null);
  const keyed = useRef<Handle | null>(null);
  const frame = useRef<number | null>(null);
  const [pulling, setPulling] = useState<string | null>(null);
  useEffect(() => () => cancelFrame(frame), []);

  const show = (handle: Handle, step: DragStep, from: number, free: boolean): void => {
    if (!step.travel) return;
    const moved = (step.travel.x * handle.gain.x + step.travel.y * handle.gain.y) / pxPerMm;
    const value = free ? from + moved : Math.round((from + moved) / steps.grid) * steps.grid;
    const kept = Math.min(handle.most, Math.max(handle.least, value));
    cancelFrame(frame);
    frame.current = requestAnimationFrame(() => {
      frame.current = null;
      actions.preview(handle, kept);
    });
    latest.current = () => actions.preview(handle, kept);
  };
  const latest = useRef<(() => void) | null>(null);

  const send = (gesture: Gesture, free = false): void => {
    const handle = pressed.current;
    const before = state.current;
    const step = drag(before, gesture);
    state.current = step.state;
    if (!handle || before.kind === 'idle') return;
    if (step.effect === 'preview') {
      setPulling(handle.id);
      show(handle, step, before.value, free);
      return;
    }
    if (step.state.kind !== 'idle') return;
    cancelFrame(frame);
    if (step.effect === 'commit') {
      latest.current?.();
      actions.commit(handle);
    }
    if (step.effect === 'restore') actions.restore();
    latest.current = null;
    pressed.current = null;
    setPulling(null);
  };

  const settleKeys = (): void => {
    if (keyed.current) actions.commit(keyed.current);
    keyed.current = null;
  };

  const eventsFor = (handle: Handle): HandleEvents => ({
    onPointerDown: (event) => {
      if (event.button !== 0 || state.current.kind !== 'idle') return;
      event.currentTarget.setPointerCapture(event.pointerId);
      event.currentTarget.focus({ preventScroll: true });
      pressed.current = handle;
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
      keyed.current ??= handle;
      actions.preview(handle, Math.min(handle.most, Math.max(handle.least, handle.value + change)));
    },
    onKeyUp: settleKeys,
    onBlur: settleKeys,
  });

  return { eventsFor, pulling };
}

function cancelFrame(frame: { current: number | null }): void {
  if (frame.current !== null) cancelAnimationFrame(frame.current);
  frame.current = null;
}
