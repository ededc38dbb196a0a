// One drag of one handle, as a pure machine: idle → pressing → dragging. Screen pixels come in, mm go out.

/** A place on the screen, px. */
interface Pointer {
  readonly x: number;
  readonly y: number;
}

export type DragState =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'pressing' | 'dragging';
      readonly handle: string;
      readonly from: Pointer;
      readonly value: number;
    };

export type DragEvent =
  | { readonly kind: 'press'; readonly handle: string; readonly at: Pointer; readonly value: number }
  | { readonly kind: 'move'; readonly at: Pointer }
  | { readonly kind: 'release' }
  | { readonly kind: 'cancel' };

export interface DragStep {
  readonly state: DragState;
  /** Travel since the press, px; null when there is nothing to show yet. */
  readonly travel: Pointer | null;
  /** What the view should do: show a value in passing, keep it, or put the old one back. */
  readonly effect: 'none' | 'preview' | 'commit' | 'restore';
}

export const IDLE: DragState = { kind: 'idle' };

/** A press becomes a drag only after this much travel, so that a click never moves anything. px */
const SLACK_PX = 3;

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
