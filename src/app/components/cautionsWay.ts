// The way to the cautions for tight lacing, from wherever they are spoken of: on Draft, into view and under the focus.

/** The step that has them. */
export const CAUTIONS_STEP = '#draft';

const CAUTIONS_ID = 'cautions';

/** Asked for from another step, whose screen has to give way first. */
let awaited = false;

/** Goes there at once where the card lies on the screen; else when it is laid out. */
export function goToCautions(): void {
  const heading = document.getElementById(CAUTIONS_ID);
  awaited = heading === null;
  if (heading) show(heading);
}

/** What the heading of the card is given: the place that is gone to. */
export const CAUTIONS_PLACE = {
  id: CAUTIONS_ID,
  tabIndex: -1,
} as const;

/** The card is laid out: whoever was on the way has arrived. */
export function arriveAtCautions(): void {
  const heading = awaited ? document.getElementById(CAUTIONS_ID) : null;
  if (!heading) return;
  awaited = false;
  show(heading);
}

function show(heading: HTMLElement): void {
  heading.focus({ preventScroll: true });
  heading.scrollIntoView({ block: 'start' });
}
