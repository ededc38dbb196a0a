// The part of the canvas that is on the screen, and its scale: pure functions from one viewport to the next.

import type { CanvasLayout } from './layOut';

/** A point on the screen, px; of the canvas's functions, from its top-left corner on the screen. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

export interface Viewport {
  /** The point at the top-left corner, canvas mm. */
  readonly left: number;
  readonly top: number;
  readonly pxPerMm: number;
}

/** Size of the canvas on the screen, px. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** One step of panning and zooming: what lies under `from` comes to lie under `to`, drawn `factor` times as large. */
export interface PanZoom {
  readonly from: ScreenPoint;
  readonly to: ScreenPoint;
  readonly factor: number;
}

/** Range of the scale, px per mm. Real size on a usual screen is about 4. */
const LEAST_PX_PER_MM = 0.25;
const MOST_PX_PER_MM = 24;

/** Room at the rims of the screen that the layout is kept out of, px. */
export interface Rims {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

const NO_RIMS: Rims = { left: 0, right: 0, top: 0 };

/**
 * The viewport that shows the whole layout between the rims at the largest scale, not below `leastPxPerMm`; what does not fit
 * starts at the left.
 */
export function fitTo(
  layout: CanvasLayout,
  size: Size,
  leastPxPerMm = LEAST_PX_PER_MM,
  rims: Rims = NO_RIMS,
): Viewport {
  const between = Math.max(1, size.width - rims.left - rims.right);
  const below = Math.max(1, size.height - rims.top);
  const whole = Math.min(between / layout.width, below / layout.height);
  const pxPerMm = Math.min(MOST_PX_PER_MM, Math.max(leastPxPerMm, whole));
  const [width, height] = [between / pxPerMm, below / pxPerMm];
  return {
    left: layout.left - rims.left / pxPerMm - Math.max(0, (width - layout.width) / 2),
    top: layout.top - rims.top / pxPerMm - Math.max(0, (height - layout.height) / 2),
    pxPerMm,
  };
}

/** The viewport after a step. The middle of the screen stays within the layout, so that the drawing cannot be lost from view. */
export function panZoomed(
  view: Viewport,
  { from, to, factor }: PanZoom,
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

/** The viewport at a scale, about the middle of the screen. */
export function zoomedTo(view: Viewport, pxPerMm: number, layout: CanvasLayout, size: Size): Viewport {
  const middle = { x: size.width / 2, y: size.height / 2 };
  return panZoomed(view, { from: middle, to: middle, factor: pxPerMm / view.pxPerMm }, layout, size);
}

/** The viewport moved by the least distance that brings a point `at` (canvas mm) onto the screen, `marginPx` from its rim. */
export function scrolledTo(
  view: Viewport,
  at: { readonly x: number; readonly y: number },
  layout: CanvasLayout,
  size: Size,
  marginPx: number,
): Viewport {
  const on = { x: (at.x - view.left) * view.pxPerMm, y: (at.y - view.top) * view.pxPerMm };
  const to = {
    x: within(on.x, marginPx, size.width - marginPx),
    y: within(on.y, marginPx, size.height - marginPx),
  };
  return to.x === on.x && to.y === on.y ? view : panZoomed(view, { from: on, to, factor: 1 }, layout, size);
}

const within = (value: number, least: number, most: number): number =>
  Math.min(Math.max(least, most), Math.max(least, value));
