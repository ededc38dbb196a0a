// How many bodies, styles or values a property test draws: a few where somebody works; many with `MANY_BODIES=1`, as the gate sets it;
// all of them with `ALL_BODIES=1`, for a change in how something is drafted. Each is drawn from the same seed, so that the few are the
// first of the many, and these the first of all.

const ALL = process.env.ALL_BODIES === '1';
const MANY = process.env.MANY_BODIES === '1';

/** The share of all that are many. A fault that one body in a hundred shows is missed by 800 of 2,000 once in three thousand times. */
const MANY_SHARE = 0.4;

/** The count for this run. */
export function howMany({ few, all }: { readonly few: number; readonly all: number }): number {
  if (ALL) return all;
  return MANY ? Math.max(few, Math.ceil(MANY_SHARE * all)) : few;
}

/** The longest that a test of what is drawn may take, ms: all of it, on a busy machine. */
export const DRAWN = { timeout: ALL || MANY ? 600_000 : 60_000 };
