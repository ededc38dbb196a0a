// Lets the browser go on between two pieces of work.

/** What newer browsers have for it. */
interface Scheduler {
  readonly yield?: () => Promise<void>;
}

/** A moment in which the browser may draw and listen. A timer, where there is nothing better, takes 4 ms each time. */
export const pause = (): Promise<void> => {
  const { scheduler } = globalThis as { scheduler?: Scheduler };
  return scheduler?.yield ? scheduler.yield() : new Promise((go) => setTimeout(go));
};
