// Coalescing of arrow-key presses: a press soon after another on the same handle belongs to one movement, like a pull.

/** The last press that was committed. */
export interface LastKeyPress {
  readonly handle: string;
  /** The time at which its key was released, ms, as in an event's `timeStamp`. */
  readonly at: number;
}

/** A press after a longer pause starts a new movement. ms */
const LONGEST_PAUSE_MS = 1500;

/** Whether a key pressed on a handle at time `at`, ms, continues the movement of the last press. */
export const continuesPress = (lastPress: LastKeyPress | null, handle: string, at: number): boolean =>
  lastPress !== null && lastPress.handle === handle && at - lastPress.at <= LONGEST_PAUSE_MS;
