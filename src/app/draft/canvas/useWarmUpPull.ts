// A pull should be smooth from its first frame. What has not run before is slow, so while nothing else is to be done after
// the table is laid, a handle is pulled by nothing a few times: the same redraft and redrawing as under a hand, unseen.

import { useEffect, useRef } from 'react';
import { flushSync } from 'react-dom';
import { changeStyle } from '../../../document';
import { useStore } from '../../store/storeContext';

/** Pulls after which a browser has made fast what a pull runs through. */
const ROUNDS = 60;
/** Let the page settle first. ms */
const SETTLE_MS = 600;

/** What a hand does first; from then on it comes before any preparation for it. */
const FIRST_ACTIONS = ['pointerdown', 'keydown', 'input', 'wheel'] as const;

/** Once for each time the page is opened; what was made fast stays so. */
let warm = false;

/** @param onPull a handle is being pulled, or was let go */
export function useWarmUpPull(laid: boolean, onPull: (pulling: boolean) => void): void {
  const show = useStore((state) => state.show);
  const drop = useStore((state) => state.drop);
  const pull = useRef(onPull);
  useEffect(() => {
    pull.current = onPull;
  });
  useEffect(() => {
    if (!laid || warm) return;
    let rounds = 0;
    let stop = later(() => next(), SETTLE_MS);
    const interrupt = (): void => stop();
    const next = (): void => {
      flushSync(() => {
        pull.current(true);
        show((book) => changeStyle(book, (style) => ({ ...style })));
      });
      flushSync(() => {
        pull.current(false);
        drop();
      });
      rounds += 1;
      warm = rounds === ROUNDS;
      if (rounds < ROUNDS) stop = whenIdle(next);
    };
    for (const action of FIRST_ACTIONS)
      window.addEventListener(action, interrupt, { capture: true, once: true });
    return () => {
      interrupt();
      for (const action of FIRST_ACTIONS) window.removeEventListener(action, interrupt, { capture: true });
    };
  }, [laid, show, drop]);
}

function later(work: () => void, ms: number): () => void {
  const wait = setTimeout(work, ms);
  return () => clearTimeout(wait);
}

/** Not every browser tells when it is idle. */
function whenIdle(work: () => void): () => void {
  if (!('requestIdleCallback' in window)) return later(work, 50);
  const wait = requestIdleCallback(work);
  return () => cancelIdleCallback(wait);
}
