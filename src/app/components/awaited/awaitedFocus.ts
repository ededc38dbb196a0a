// Places that take the focus when they are asked for, from whichever step that is: at once where they are on the screen, else as
// soon as their step is laid out.

interface AwaitedFocus<Place extends HTMLElement> {
  /** Whether it was asked for and has not been given yet. */
  readonly isAwaited: () => boolean;
  /** Asks for the focus; the place that arrives next has it. */
  readonly request: () => void;
  /** Gives the place the focus where it was asked for; nothing happens while the place is not on the screen (null). */
  readonly arrive: (place: Place | null) => void;
}

function awaitedFocus<Place extends HTMLElement>(focus: (place: Place) => void): AwaitedFocus<Place> {
  let isAwaited = false;
  return {
    isAwaited: () => isAwaited,
    request: () => {
      isAwaited = true;
    },
    arrive: (place) => {
      if (!isAwaited || !place) return;
      isAwaited = false;
      focus(place);
    },
  };
}

/** The field of an added client's name; typing puts another in its place. */
export const nameFocus = awaitedFocus<HTMLInputElement>((field) => {
  field.focus();
  field.select();
});

const cautionsFocus = awaitedFocus((heading) => {
  heading.focus({ preventScroll: true });
  heading.scrollIntoView({ block: 'start' });
});

/** The step that has the cautions for tight lacing. */
export const CAUTIONS_STEP = '#draft';

/** The attributes of the heading of the cautions. */
export const CAUTIONS_PLACE = { id: 'cautions', tabIndex: -1 } as const;

/** The card of the cautions is laid out. */
export const arriveAtCautions = (): void => cautionsFocus.arrive(document.getElementById(CAUTIONS_PLACE.id));

/** Whether the cautions were asked for while they were not on the screen. */
export const areCautionsAwaited = (): boolean => cautionsFocus.isAwaited();

const cautionsListeners = new Set<() => void>();

/** Calls `listener` whenever the cautions are asked for and are not on the screen; gives the end of it. */
export function onCautionsAwaited(listener: () => void): () => void {
  cautionsListeners.add(listener);
  return () => cautionsListeners.delete(listener);
}

/** Goes to the cautions, now or when their place is laid out. */
export function goToCautions(): void {
  cautionsFocus.request();
  arriveAtCautions();
  if (areCautionsAwaited()) for (const listener of cautionsListeners) listener();
}

const mendListFocus = awaitedFocus((heading) => {
  heading.focus({ preventScroll: true });
  heading.scrollIntoView({ block: 'nearest' });
});

/** The step that tells what is to mend, and the id of the heading there. */
export const MEND_STEP = '#draft';
export const MEND_LIST = 'to-mend';

/** The list of what is to mend is laid out. */
export const arriveAtMendList = (): void => mendListFocus.arrive(document.getElementById(MEND_LIST));

/** Goes to the list of what is to mend, now or when it is laid out. */
export function goToMendList(): void {
  mendListFocus.request();
  arriveAtMendList();
}
