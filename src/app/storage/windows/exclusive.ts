// Lets one tab after the other write, where the browser has locks.

/** A tab that waits longer than this goes on without the lock: each write still looks at what is there. */
const MOST_MS = 1000;

export function exclusiveOf(locks: LockManager | undefined): (run: () => void) => void {
  if (!locks) return (run) => run();
  return (run) => {
    let ran = false;
    const once = (): void => {
      if (!ran) run();
      ran = true;
    };
    locks.request('staywright', { signal: AbortSignal.timeout(MOST_MS) }, once).catch(once);
  };
}
