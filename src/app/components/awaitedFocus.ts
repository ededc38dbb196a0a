// Places that take the focus when they are asked for, from whichever step that is: at once where they are on the screen, else as
// soon as their step is laid out.

interface AwaitedFocus<Place extends HTMLElement> {
  /** Asks for the focus; the place that arrives next has it. */
  readonly request: () => void;
  /** Gives the place the focus where it was asked for; nothing happens while the place is not on the screen (null). */
  readonly arrive: (place: Place | null) => void;
}

function awaitedFocus<Place extends HTMLElement>(focus: (place: Place) => void): AwaitedFocus<Place> {
  let isAwaited = false;
  return {
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

/** Goes to the cautions, now or when their card is laid out. */
export function goToCautions(): void {
  cautionsFocus.request();
  arriveAtCautions();
}
