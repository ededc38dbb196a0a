// The handles as one set: which of them is selected, and the keys that move the focus from one to the next.

import {
  type KeyboardEvent,
  type PointerEvent,
  useCallback,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import type { HandleEvents } from '../gestures/useHandlePull';
import type { Handle } from '../handles/handle';

/** The id that is selected with a handle: its wedge's, or its own where it belongs to none. */
export const selectionId = ({ id, wedge }: Handle): string => wedge ?? id;

interface HandleSelection {
  /** Id of the selected wedge, or of the selected handle where it belongs to no wedge; null before the first choice. */
  readonly selectedId: string | null;
  readonly select: (id: string) => void;
  /** The handle that has the focus, or had it last. */
  readonly focused: string | null;
  readonly focus: (handle: string) => void;
}

/**
 * The selection of a set of handles.
 *
 * @param selected id of the wedge that is selected outside the set; it becomes selected in it as well
 */
export function useHandleSelection(selected: string | null): HandleSelection {
  const [selectedId, select] = useState<string | null>(null);
  const [focused, focus] = useState<string | null>(null);
  const before = useRef(selected);
  useEffect(() => {
    if (before.current !== selected && selected !== null) select(selected);
    before.current = selected;
  }, [selected]);
  return { selectedId, select, focused, focus };
}

/** Keys that move the focus, and where to: by so many handles, or to the first or the last. */
const KEYS: Readonly<Record<string, 1 | -1 | 'first' | 'last'>> = {
  PageDown: 1,
  PageUp: -1,
  Home: 'first',
  End: 'last',
};

/** Moves the focus to the handle that a key goes to; false where it is no such key. */
export function focusByKey(canvas: SVGSVGElement | null, key: string): boolean {
  const step = KEYS[key];
  const handles = [...(canvas?.querySelectorAll<SVGElement>('[data-handle]') ?? [])];
  const at = handles.indexOf(document.activeElement as SVGElement);
  if (step === undefined || at < 0) return false;
  const next = step === 'first' ? 0 : step === 'last' ? handles.length - 1 : at + step;
  handles[(next + handles.length) % handles.length]?.focus();
  return true;
}

/**
 * The events of a handle within its set: a press goes to `press`, which may only select, and a key may move the focus to another
 * handle.
 */
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

/** What a drawn handle calls. */
interface MarkEvents extends ReturnType<typeof handleEvents> {
  /** `byKey`: the focus is visible, so it came from the keyboard. */
  readonly onFocus: (byKey: boolean) => void;
}

/** Gives the events of a handle by its id; undefined where there is no such handle now. */
export type MarkEventsOf = (id: string) => MarkEvents | undefined;

/** The same function from drawing to drawing, which asks the one of the last drawing: a handle that has not moved is not drawn again. */
export function useSteadyEvents(of: MarkEventsOf): MarkEventsOf {
  const last = useRef(of);
  useLayoutEffect(() => {
    last.current = of;
  });
  return useCallback((id) => last.current(id), []);
}
