// How many bodies, styles or values a property test draws: a few where somebody works, all of them where `ALL_BODIES=1` is set, as
// the gate sets it.

const ALL = process.env.ALL_BODIES === '1';

/** The count for this run. Both are drawn from the same seed, so that the few are the first of all. */
export const howMany = ({ few, all }: { readonly few: number; readonly all: number }): number =>
  ALL ? all : few;

/** The longest that a test of what is drawn may take, ms: all of it, on a busy machine. */
export const DRAWN = { timeout: ALL ? 600_000 : 60_000 };
