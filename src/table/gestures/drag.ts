// The drag of one handle as a pure state machine: idle → pressing → dragging. All lengths are px of the screen.

import type { ScreenPoint } from '../layout/viewport';

export type DragState =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'pressing' | 'dragging';
      readonly handle: string;
      readonly from: ScreenPoint;
      /** The handle's value when it was pressed, mm. */
      readonly value: number;
    };

export type DragEvent =
  | { readonly kind: 'press'; readonly handle: string; readonly at: ScreenPoint; readonly value: number }
  | { readonly kind: 'move'; readonly at: ScreenPoint }
  | { readonly kind: 'release' }
  | { readonly kind: 'cancel' };

export interface DragStep {
  readonly state: DragState;
  /** Travel since the press, px; null where nothing is to be shown. */
  readonly travel: ScreenPoint | null;
  /** What the caller does: `preview` the value, `commit` what was shown last, or `restore` what was there before. */
  readonly effect: 'none' | 'preview' | 'commit' | 'restore';
}

export const IDLE: DragState = { kind: 'idle' };

/** A press becomes a drag after this much travel, so that a click moves nothing. px */
const SLACK_PX = 3;

/** The next state, and what the caller is to do. Events that do not fit the state change nothing. */
export function drag(state: DragState, event: DragEvent): DragStep {
  switch (event.kind) {
    case 'press':
      if (state.kind !== 'idle') return { state, travel: null, effect: 'none' };
      return {
        state: { kind: 'pressing', handle: event.handle, from: event.at, value: event.value },
        travel: null,
        effect: 'none',
      };
    case 'move': {
      if (state.kind === 'idle') return { state, travel: null, effect: 'none' };
      const travel = { x: event.at.x - state.from.x, y: event.at.y - state.from.y };
      if (state.kind === 'pressing' && Math.hypot(travel.x, travel.y) < SLACK_PX)
        return { state, travel: null, effect: 'none' };
      return { state: { ...state, kind: 'dragging' }, travel, effect: 'preview' };
    }
    case 'release':
      return { state: IDLE, travel: null, effect: state.kind === 'dragging' ? 'commit' : 'none' };
    case 'cancel':
      return { state: IDLE, travel: null, effect: state.kind === 'dragging' ? 'restore' : 'none' };
  }
}
