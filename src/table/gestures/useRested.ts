// A value that is seen again only when it has rested: what hardly moves under a pull need not be drawn in each of its frames.

import { startTransition, useEffect, useRef, useState } from 'react';

/** So long a value has to stay the same. ms */
const REST_MS = 150;

/**
 * The value; while it is held, as it last rested, and before that as it was when holding began.
 *
 * @param isHeld true while another part of the drawing is pulled
 */
export function useRested<T>(value: T, isHeld: boolean): T {
  const before = useRef(value);
  const [rested, setRested] = useState<{ readonly value: T } | null>(null);
  useEffect(() => {
    if (!isHeld) {
      before.current = value;
      setRested(null);
      return;
    }
    const timer = setTimeout(() => startTransition(() => setRested({ value })), REST_MS);
    return () => clearTimeout(timer);
  }, [value, isHeld]);
  return isHeld ? (rested?.value ?? before.current) : value;
}
