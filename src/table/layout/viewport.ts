// What part of the cutting table is on the screen, and at what scale: pure steps from one view to the next.

import type { CanvasLayout } from './layout';

/** A place on the screen, px from the table's top-left corner on it. */
interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Viewport {
  /** Table mm at the top-left corner. */
  readonly left: number;
  readonly top: number;
  readonly pxPerMm: number;
}

/** Size of the table on the screen, px. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** What hands or a wheel ask for: the place under `from` comes to lie under `to`, drawn `factor` times as large. */
export interface Shift {
  readonly from: Spot;
  readonly to: Spot;
  readonly factor: number;
}

/** The farthest a table is drawn from afar and from near, px per mm. Real size on a usual screen is about 4. */
const LEAST_PX_PER_MM = 0.25;
const MOST_PX_PER_MM = 24;

/** Everything in view, as large as it goes but not below `leastPxPerMm`; what does not fit begins at the left. */
export function fitted(layout: CanvasLayout, size: Size, leastPxPerMm = LEAST_PX_PER_MM): Viewport {
  const whole = Math.min(size.width / layout.width, size.height / layout.height);
  const pxPerMm = Math.min(MOST_PX_PER_MM, Math.max(leastPxPerMm, whole));
  const [width, height] = [size.width / pxPerMm, size.height / pxPerMm];
  return {
    left: width >= layout.width ? layout.left - (width - layout.width) / 2 : layout.left,
    top: height >= layout.height ? layout.top - (height - layout.height) / 2 : layout.top,
    pxPerMm,
  };
}

/** The view after a shift. The middle of the screen stays over the drawn part of the table, so that it cannot be lost. */
export function shifted(
  view: Viewport,
  { from, to, factor }: Shift,
  layout: CanvasLayout,
  size: Size,
): Viewport {
  const pxPerMm = within(view.pxPerMm * factor, LEAST_PX_PER_MM, MOST_PX_PER_MM);
  const left = view.left + from.x / view.pxPerMm - to.x / pxPerMm;
  const top = view.top + from.y / view.pxPerMm - to.y / pxPerMm;
  const [halfWidth, halfHeight] = [size.width / pxPerMm / 2, size.height / pxPerMm / 2];
  return {
    left: within(left + halfWidth, layout.left, layout.left + layout.width) - halfWidth,
    top: within(top + halfHeight, layout.top, layout.top + layout.height) - halfHeight,
    pxPerMm,
  };
}

/** The view drawn at a scale, the middle of the screen staying where it is. */
export function scaledTo(view: Viewport, pxPerMm: number, layout: CanvasLayout, size: Size): Viewport {
  const middle = { x: size.width / 2, y: size.height / 2 };
  return shifted(view, { from: middle, to: middle, factor: pxPerMm / view.pxPerMm }, layout, size);
}

/** The view moved just so far that a place of the table (mm) is on the screen, `marginPx` from its rim. */
export function showing(
  view: Viewport,
  at: Spot,
  layout: CanvasLayout,
  size: Size,
  marginPx: number,
): Viewport {
  const on = { x: (at.x - view.left) * view.pxPerMm, y: (at.y - view.top) * view.pxPerMm };
  const to = {
    x: within(on.x, marginPx, size.width - marginPx),
    y: within(on.y, marginPx, size.height - marginPx),
  };
  return to.x === on.x && to.y === on.y ? view : shifted(view, { from: on, to, factor: 1 }, layout, size);
}

const within = (value: number, least: number, most: number): number =>
  Math.min(Math.max(least, most), Math.max(least, value));
