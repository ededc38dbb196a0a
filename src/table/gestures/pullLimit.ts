// How far a handle can be pulled: to the last value at which the draft has no more faults than where the pull began.

interface Reached<Made> {
  readonly value: number;
  readonly made: Made;
  /** It stays short of what was asked. */
  readonly isLimit: boolean;
}

export interface PullLimit {
  /**
   * What is made at `value`, or at the last value towards it that is sound, found to within `grid`.
   *
   * @param make drafts for a value of the handle
   * @param faultsOf counts the faults of what was made
   */
  readonly reach: <Made>(
    value: number,
    grid: number,
    make: (value: number) => Made,
    faultsOf: (made: Made) => number,
  ) => Reached<Made>;
}

/** Rounds in which the way to a limit is halved. */
const MOST_ROUNDS = 6;

/**
 * @param start the handle's value where the pull began
 * @param faults what the draft has of them there; a pull may go through as many
 */
export function pullLimit(start: number, faults: number): PullLimit {
  // The values on both sides beyond which there is nothing to be had, as far as they are known.
  let [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  return {
    reach: (value, grid, make, faultsOf) => {
      const asked = Math.min(most, Math.max(least, value));
      const made = make(asked);
      if (faultsOf(made) <= faults) return { value: asked, made, isLimit: asked !== value };
      let sound = { value: start, made: make(start) };
      let beyond = asked;
      for (let i = 0; i < MOST_ROUNDS && Math.abs(beyond - sound.value) > grid; i += 1) {
        const middle = (sound.value + beyond) / 2;
        const half = make(middle);
        if (faultsOf(half) <= faults) sound = { value: middle, made: half };
        else beyond = middle;
      }
      if (asked > start) most = sound.value;
      else least = sound.value;
      return { ...sound, isLimit: true };
    },
  };
}
