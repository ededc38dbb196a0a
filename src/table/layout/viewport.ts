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

/** The viewport that shows the whole layout at the largest scale, not below `leastPxPerMm`; what does not fit starts at the left. */
export function fitTo(layout: CanvasLayout, size: Size, leastPxPerMm = LEAST_PX_PER_MM): Viewport {
  const whole = Math.min(size.width / layout.width, size.height / layout.height);
  const pxPerMm = Math.min(MOST_PX_PER_MM, Math.max(leastPxPerMm, whole));
  const [width, height] = [size.width / pxPerMm, size.height / pxPerMm];
  return {
    left: width >= layout.width ? layout.left - (width - layout.width) / 2 : layout.left,
    top: height >= layout.height ? layout.top - (height - layout.height) / 2 : layout.top,
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
