// When one press of an arrow key goes on with the press before: both are then one movement of the handle, as a pull is one.

/** The last press that was kept. */
export interface LastKeyPress {
  readonly handle: string;
  /** When its key was let go, ms on the clock that events are stamped with. */
  readonly at: number;
}

/** A hand that has rested longer than this begins anew. ms */
const REST_MS = 1500;

/** Whether a key that goes down on a handle at `at` goes on with the run. */
export const goesOn = (lastPress: LastKeyPress | null, handle: string, at: number): boolean =>
  lastPress !== null && lastPress.handle === handle && at - lastPress.at <= REST_MS;
