// The handles as one set: which of them is in hand, and the keys that go from one to the next.

import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { HandleEvents } from '../gestures/useHandleDrag';

interface InHand {
  /** A wedge, or a handle that belongs to none; null before the first choice. */
  readonly held: string | null;
  readonly take: (held: string) => void;
  /** The handle that has the focus, or had it last. */
  readonly focused: string | null;
  readonly focus: (handle: string) => void;
}

/** What was taken in hand; a wedge that is chosen elsewhere is in hand too. */
export function useInHand(selected: string | null): InHand {
  const [held, take] = useState<string | null>(null);
  const [focused, focus] = useState<string | null>(null);
  const before = useRef(selected);
  useEffect(() => {
    if (before.current !== selected && selected !== null) take(selected);
    before.current = selected;
  }, [selected]);
  return { held, take, focused, focus };
}

/** Keys that go to another handle, and where to: by so many, or to the first or the last. */
const KEYS: Readonly<Record<string, 1 | -1 | 'first' | 'last'>> = {
  PageDown: 1,
  PageUp: -1,
  Home: 'first',
  End: 'last',
};

/** Gives the focus to the handle that a key goes to. Whether it was such a key. */
export function goTo(canvas: SVGSVGElement | null, key: string): boolean {
  const step = KEYS[key];
  const handles = [...(canvas?.querySelectorAll<SVGElement>('[data-handle]') ?? [])];
  const at = handles.indexOf(document.activeElement as SVGElement);
  if (step === undefined || at < 0) return false;
  const next = step === 'first' ? 0 : step === 'last' ? handles.length - 1 : at + step;
  handles[(next + handles.length) % handles.length]?.focus();
  return true;
}

/** The events of a handle that pulls, with what its set does first: a press may only choose, a key may go on to the next. */
export const handleEvents = (
  own: HandleEvents,
  press: (event: PointerEvent<SVGElement>) => void,
  goByKey: (key: string) => boolean,
) => ({
  ...own,
  onPointerDown: press,
  onKeyDown: (event: KeyboardEvent<SVGElement>) => {
    if (goByKey(event.key)) event.preventDefault();
    else own.onKeyDown(event);
  },
});
