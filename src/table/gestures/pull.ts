// The pull of one handle as a pure state machine: idle → pressing → pulling. All lengths are px of the screen.

import type { ScreenPoint } from '../layout/viewport';

export type PullState =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'pressing' | 'pulling';
      readonly handle: string;
      readonly from: ScreenPoint;
      /** The handle's value when it was pressed, mm. */
      readonly value: number;
      /** The way the handle goes: to the sides or up and down. */
      readonly along: 'x' | 'y';
      /** Where the pointer was last, and what it has moved the handle by until then. */
      readonly at: ScreenPoint;
      readonly travel: ScreenPoint;
    };

export type Gesture =
  | {
      readonly kind: 'press';
      readonly handle: string;
      readonly at: ScreenPoint;
      readonly value: number;
      readonly along: 'x' | 'y';
    }
  | { readonly kind: 'move'; readonly at: ScreenPoint }
  | { readonly kind: 'release' }
  | { readonly kind: 'cancel' };

export interface PullStep {
  readonly state: PullState;
  /** What the handle has moved by since the press, px; null where nothing is to be shown. */
  readonly travel: ScreenPoint | null;
  /** What the caller does: `preview` the value, `commit` what was shown last, or `restore` what was there before. */
  readonly effect: 'none' | 'preview' | 'commit' | 'restore';
}

export const IDLE: PullState = { kind: 'idle' };

/** A press becomes a pull after this much travel, so that a click moves nothing. px */
const SLACK_PX = 3;

/** A pointer no farther than this off the handle's way moves it as far as itself. px */
const FULL_PX = 56;

/** The share of a pointer's movement that the handle takes: the finer, the farther the pointer is off the handle's way. */
const fineness = (offPx: number): number => FULL_PX / Math.max(FULL_PX, offPx);

/** The next state, and what the caller is to do. Events that do not fit the state change nothing. */
export function pull(state: PullState, event: Gesture): PullStep {
  switch (event.kind) {
    case 'press': {
      if (state.kind !== 'idle') return { state, travel: null, effect: 'none' };
      const { handle, at, value, along } = event;
      return {
        state: { kind: 'pressing', handle, from: at, value, along, at, travel: { x: 0, y: 0 } },
        travel: null,
        effect: 'none',
      };
    }
    case 'move': {
      if (state.kind === 'idle') return { state, travel: null, effect: 'none' };
      const { from, along } = state;
      const off = along === 'x' ? event.at.y - from.y : event.at.x - from.x;
      const share = fineness(Math.abs(off));
      const travel = {
        x: state.travel.x + (event.at.x - state.at.x) * share,
        y: state.travel.y + (event.at.y - state.at.y) * share,
      };
      const next = { ...state, at: event.at, travel };
      if (state.kind === 'pressing' && Math.hypot(event.at.x - from.x, event.at.y - from.y) < SLACK_PX)
        return { state: next, travel: null, effect: 'none' };
      return { state: { ...next, kind: 'pulling' }, travel, effect: 'preview' };
    }
    case 'release':
      return { state: IDLE, travel: null, effect: state.kind === 'pulling' ? 'commit' : 'none' };
    case 'cancel':
      return { state: IDLE, travel: null, effect: state.kind === 'pulling' ? 'restore' : 'none' };
  }
}
