// Undo and redo as a row of immutable snapshots, one a finished change.

import type { Change } from './change';

export interface History<T> {
  /** Oldest first. */
  readonly past: readonly Step<T>[];
  readonly present: T;
  /** Nearest first. */
  readonly future: readonly Step<T>[];
}

/** A snapshot, and the change that left it. */
interface Step<T> {
  readonly state: T;
  readonly change: Change;
}

/** Snapshots kept; older ones are let go. */
const MOST_STEPS = 200;

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [] });

/**
 * Records a change; what was undone before it is gone. The same state again records nothing.
 *
 * @param goesOn it goes on with the last change, and is one step with it under that one's code; where there is none, or
 * one was undone since, it is a step of its own
 */
export function record<T>(history: History<T>, state: T, change: Change, goesOn = false): History<T> {
  if (state === history.present) return history;
  if (goesOn && history.past.length > 0 && history.future.length === 0) return { ...history, present: state };
  const past = [...history.past, { state: history.present, change }].slice(-MOST_STEPS);
  return { past, present: state, future: [] };
}

export function undo<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (!last) return history;
  return {
    past: history.past.slice(0, -1),
    present: last.state,
    future: [{ state: history.present, change: last.change }, ...history.future],
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [next, ...future] = history.future;
  if (!next) return history;
  return {
    past: [...history.past, { state: history.present, change: next.change }],
    present: next.state,
    future,
  };
}
