// What a pull has come to when it rests: what need not be drawn in each frame of a pull follows it then.

import { startTransition, useContext, useEffect, useState } from 'react';
import type { Book } from '../../document';
import { StoreContext } from './storeHooks';

/** A pull rests when nothing has moved for so long. ms */
const REST_MS = 400;
/** A look that comes later than it was set for by more than this came out of long work, behind which a move may wait. ms */
const LATE_MS = 50;

/** The book as the pull left it when it last rested; null before that, and while nothing is pulled. */
export function usePullAtRest(pulling: boolean): Book | null {
  const store = useContext(StoreContext);
  const [rested, setRested] = useState<Book | null>(null);
  useEffect(() => {
    if (!pulling || !store) {
      setRested(null);
      return;
    }
    let moved = performance.now();
    let look: ReturnType<typeof setTimeout> | undefined;
    // One timer for many frames: each only notes that the pull goes on.
    const wait = (ms: number): void => {
      const due = performance.now() + ms;
      look = setTimeout(() => {
        const now = performance.now();
        const left = now - due > LATE_MS ? 2 * LATE_MS : moved + REST_MS - now;
        if (left > 0) return wait(left);
        look = undefined;
        const { preview } = store.getState();
        startTransition(() => setRested(preview));
      }, ms);
    };
    // The store is listened to beside React: a frame of a pull draws nothing here.
    const leave = store.subscribe(() => {
      moved = performance.now();
      if (look === undefined) wait(REST_MS);
    });
    return () => {
      leave();
      clearTimeout(look);
    };
  }, [pulling, store]);
  return pulling ? rested : null;
}
