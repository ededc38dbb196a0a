// The pointer and keyboard events of handles, passed to the reducers of pull, keys and snapping.

import { type FocusEvent, type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Draft, Style } from '../../engine';
import type { Handle } from '../handles/handle';
import { valueIn } from '../handles/valueIn';
import { continuesPress, type LastKeyPress } from './coalesceKeyPresses';
import { keyStep, valueByKey } from './keyStep';
import { type Gesture, IDLE, type PullState, type PullStep, pull } from './pull';
import { type PullLimit, pullLimit } from './pullLimit';
import { type SnapPlace, type SnapPoint, snap } from './snap';
import { throttleToFrame } from './throttleToFrame';

/** A draft computed for one value of a handle. */
interface Prepared {
  readonly draft: Draft;
  readonly style: Style;
  /** Shows it as a preview. */
  readonly show: () => void;
}

export interface HandleActions {
  /** Computes the draft with the handle's value at `value` mm. */
  readonly prepare: (handle: Handle, value: number) => Prepared;
  /**
   * Keeps what was shown last. `value` is the handle's value in that draft, mm; null where it has no such handle.
   * `sameKey`: a key was pressed on the handle again soon after the last press was committed.
   */
  readonly commit: (handle: Handle, value: number | null, by: 'pull' | 'key' | 'sameKey') => void;
  /** Restores what was there before the pull. */
  readonly restore: () => void;
}

export interface StepSizes {
  /** Spacing of the grid that a pull snaps to, mm; nothing snaps while Alt is held. */
  readonly grid: number;
  /** Change for a press of an arrow key, and for one with Shift, mm. */
  readonly small: number;
  readonly large: number;
}

export interface HandleEvents {
  /** `element` is the handle's own, where the press was on the hit area of another. */
  readonly onPointerDown: (event: PointerEvent<SVGElement>, element?: SVGElement) => void;
  readonly onPointerMove: (event: PointerEvent<SVGElement>) => void;
  readonly onPointerUp: (event: PointerEvent<SVGElement>) => void;
  readonly onPointerCancel: (event: PointerEvent<SVGElement>) => void;
  readonly onKeyDown: (event: KeyboardEvent<SVGElement>) => void;
  readonly onKeyUp: (event: KeyboardEvent<SVGElement>) => void;
  readonly onBlur: (event: FocusEvent<SVGElement>) => void;
}

/** The handle that is pulled, and what it has snapped to. */
export interface Pulling {
  readonly id: string;
  readonly place: SnapPlace;
}

/** A value no farther than this from where a pull began is where it began. mm */
const SAME_MM = 1e-6;

/** Reach of a snap point, px. */
const REACH_PX = 6;

/**
 * Event handlers for each handle, and the handle that is being pulled now.
 *
 * @param pxPerMm scale of the canvas on the screen
 * @param snapPointsFor gives the snap points of a handle when it is pressed
 */
export function useHandlePull(
  actions: HandleActions,
  steps: StepSizes,
  pxPerMm: number,
  snapPointsFor: (handle: Handle) => readonly SnapPoint[],
) {
  const state = useRef<PullState>(IDLE);
  // The handle as it was when pressed: its gain and its `set` must not change during the pull.
  const pressed = useRef<Handle | null>(null);
  /** The handle as it was before a key was pressed on it. */
  const keyed = useRef<{ handle: Handle; by: 'key' | 'sameKey' } | null>(null);
  const lastPress = useRef<LastKeyPress | null>(null);
  /** The value last requested in this pull, mm. */
  const requested = useRef<number | null>(null);
  /** The value last shown in it, mm. */
  const pulledTo = useRef<number | null>(null);
  const shown = useRef<Prepared | null>(null);
  /** The pointer that pulls. */
  const pointer = useRef<number | null>(null);
  const limit = useRef<PullLimit | null>(null);
  const [throttle] = useState(throttleToFrame);
  const snapPoints = useRef<readonly SnapPoint[]>([]);
  const [pulling, setPulling] = useState<Pulling | null>(null);
  useEffect(() => throttle.cancel, [throttle]);

  const prepare = (handle: Handle, value: number) => (): (() => void) => {
    const prepared = actions.prepare(handle, value);
    return () => {
      shown.current = prepared;
      prepared.show();
    };
  };

  /** The same under a pointer, which pulls no farther than the draft can be cut. */
  const preparePull = (handle: Handle, value: number, place: SnapPlace) => (): (() => void) => {
    const drawn = (at: number): Prepared => actions.prepare(handle, at);
    limit.current ??= pullLimit(handle.value, countErrors(drawn(handle.value).draft));
    const found = limit.current.reach(value, steps.grid, drawn, ({ draft }) => countErrors(draft));
    return () => {
      const at = found.isLimit ? 'limit' : place;
      setPulling((last) =>
        last?.id === handle.id && last.place === at ? last : { id: handle.id, place: at },
      );
      shown.current = found.made;
      pulledTo.current = found.value;
      found.made.show();
    };
  };

  const commit = (handle: Handle, by: 'pull' | 'key' | 'sameKey'): void => {
    const preview = shown.current;
    shown.current = null;
    actions.commit(handle, preview && valueIn(preview.draft, preview.style, handle), by);
  };

  const show = (handle: Handle, step: PullStep, from: number, free: boolean): void => {
    if (!step.travel) return;
    const moved = (step.travel.x * handle.gain.x + step.travel.y * handle.gain.y) / pxPerMm;
    const reach = (REACH_PX * Math.hypot(handle.gain.x, handle.gain.y)) / pxPerMm;
    const { value, place } = free
      ? { value: from + moved, place: 'free' as const }
      : snap(from + moved, snapPoints.current, reach, steps.grid);
    const kept = Math.min(handle.most, Math.max(handle.least, value));
    setPulling((last) => last ?? { id: handle.id, place });
    // Between two lines of the grid nothing changes, and nothing has to be drawn.
    if (kept === requested.current) return;
    requested.current = kept;
    throttle.request(preparePull(handle, kept, place));
  };

  const send = (gesture: Gesture, free = false): void => {
    const handle = pressed.current;
    const before = state.current;
    const step = pull(before, gesture);
    state.current = step.state;
    if (!handle || before.kind === 'idle') return;
    if (step.effect === 'preview') {
      show(handle, step, before.value, free);
      return;
    }
    if (step.state.kind !== 'idle') return;
    let isRestored = step.effect === 'restore';
    if (step.effect === 'commit') {
      throttle.flush();
      // A pull that ends where it began changes nothing, not even how the wedge is sized.
      isRestored = pulledTo.current === null || Math.abs(pulledTo.current - before.value) < SAME_MM;
      if (!isRestored) commit(handle, 'pull');
    }
    throttle.cancel();
    if (isRestored) {
      shown.current = null;
      actions.restore();
    }
    pressed.current = null;
    pointer.current = null;
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
      pointer.current = event.pointerId;
      limit.current = null;
      pulledTo.current = null;
      lastPress.current = null;
      snapPoints.current = [...snapPointsFor(handle), { value: handle.value, place: 'start' }];
      requested.current = null;
      send({
        kind: 'press',
        handle: handle.id,
        at: { x: event.clientX, y: event.clientY },
        value: handle.value,
        along: handle.gain.y === 0 ? 'x' : 'y',
      });
    },
    onPointerMove: (event) => {
      if (event.pointerId === pointer.current)
        send({ kind: 'move', at: { x: event.clientX, y: event.clientY } }, event.altKey);
    },
    onPointerUp: ({ pointerId }) => {
      if (pointerId === pointer.current) send({ kind: 'release' });
    },
    onPointerCancel: ({ pointerId }) => {
      if (pointerId === pointer.current) send({ kind: 'cancel' });
    },
    onKeyDown: (event) => {
      if (event.key === 'Escape' && state.current.kind !== 'idle') return send({ kind: 'cancel' });
      const change = keyStep(event.key, handle.gain, event.shiftKey ? steps.large : steps.small);
      if (change === null) return;
      event.preventDefault();
      const value = valueByKey(handle, change);
      // At the end of the range there is nothing to commit.
      if (value === handle.value) return;
      keyed.current ??= {
        handle,
        by: continuesPress(lastPress.current, handle.id, event.timeStamp) ? 'sameKey' : 'key',
      };
      prepare(handle, value)()();
    },
    onKeyUp: ({ timeStamp }) => endKeyPresses(timeStamp),
    onBlur: ({ timeStamp }) => {
      endKeyPresses(timeStamp);
      lastPress.current = null;
    },
  });

  /** Breaks off a pull, as a second finger does. */
  const breakOff = (): void => send({ kind: 'cancel' });

  return { eventsFor, pulling, breakOff };
}

const countErrors = ({ issues }: Draft): number =>
  issues.filter(({ severity }) => severity === 'error').length;
