// The viewport of the canvas as state, and the events that change it: a pull on the paper, two pointers, the wheel.

import { type PointerEvent, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { CanvasLayout } from '../layout/layOut';
import {
  fitTo,
  type PanZoom,
  panZoomed,
  type Rims,
  type Size,
  scrolledTo,
  type Viewport,
  zoomedTo,
} from '../layout/viewport';
import { NO_POINTERS, trackPointers, wheelFactor } from './trackPointers';

export interface CanvasView {
  readonly view: Viewport;
  readonly size: Size;
  /** True while the whole layout is in view, and stays so when the draft grows. */
  readonly isFitted: boolean;
  readonly fit: () => void;
  readonly zoomBy: (factor: number) => void;
  readonly zoomTo: (pxPerMm: number) => void;
  /** Brings a point into view, canvas mm. */
  readonly show: (at: { x: number; y: number }) => void;
  readonly panZoom: (panZoom: PanZoom) => void;
}

/** Margin round a point that is brought into view, px. */
const MARGIN_PX = 40;

/**
 * The part of the canvas on the screen; the same object as long as nothing of it changes.
 *
 * @param size of the canvas on the screen, px
 * @param leastPxPerMm the least scale of the fitted view, so that a small screen shows a part of it large enough
 * @param rims what the fitted view keeps free at both sides and at the top
 */
export function useCanvasView(
  layout: CanvasLayout | null,
  size: Size,
  leastPxPerMm: number,
  rims: Rims,
): CanvasView {
  const [free, setFree] = useState<Viewport | null>(null);
  const { width, height } = size;
  return useMemo(() => {
    const size = { width, height };
    const whole = layout ? fitTo(layout, size, leastPxPerMm, rims) : { left: 0, top: 0, pxPerMm: 1 };
    const change = (step: (view: Viewport, on: CanvasLayout) => Viewport): void => {
      if (layout) setFree((last) => step(last ?? whole, layout));
    };
    return {
      view: free ?? whole,
      size,
      isFitted: free === null,
      fit: () => setFree(null),
      zoomBy: (factor) => change((view, on) => zoomedTo(view, view.pxPerMm * factor, on, size)),
      zoomTo: (pxPerMm) => change((view, on) => zoomedTo(view, pxPerMm, on, size)),
      show: (at) => {
        if (layout && scrolledTo(free ?? whole, at, layout, size, MARGIN_PX) !== (free ?? whole))
          change((view, on) => scrolledTo(view, at, on, size, MARGIN_PX));
      },
      panZoom: (step) => change((view, on) => panZoomed(view, step, on, size)),
    };
  }, [layout, width, height, leastPxPerMm, rims, free]);
}

/**
 * Handlers of pointer events for the canvas; the wheel is listened to by itself.
 *
 * @param panZoom changes the view
 * @param onClick is called for a press that moved nothing
 * @param busy true while a handle is pulled, when presses do not pan the canvas
 * @param onSecond is called for a second finger that comes down meanwhile
 */
export function usePointers(
  canvas: RefObject<SVGSVGElement | null>,
  panZoom: (panZoom: PanZoom) => void,
  onClick: (event: PointerEvent<SVGSVGElement>) => void,
  busy: boolean,
  onSecond: () => void,
) {
  const pointers = useRef(NO_POINTERS);
  const latest = useRef(panZoom);
  useEffect(() => {
    latest.current = panZoom;
  });
  useEffect(() => {
    const svg = canvas.current;
    if (!svg) return;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const { left, top } = svg.getBoundingClientRect();
      const to = { x: event.clientX - left, y: event.clientY - top };
      const isSideways = !event.ctrlKey && Math.abs(event.deltaX) > Math.abs(event.deltaY);
      latest.current(
        isSideways
          ? { from: { ...to, x: to.x + event.deltaX }, to, factor: 1 }
          : { from: to, to, factor: wheelFactor(event.deltaY, event.deltaMode) },
      );
    };
    // React's wheel listeners are passive, and the page must not scroll.
    svg.addEventListener('wheel', onWheel, { passive: false });
    return () => svg.removeEventListener('wheel', onWheel);
  }, [canvas]);
  const send = (kind: 'down' | 'move' | 'up', event: PointerEvent<SVGSVGElement>): void => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const at = { id: event.pointerId, x: event.clientX - left, y: event.clientY - top };
    const step = trackPointers(pointers.current, { kind, ...at });
    pointers.current = step.pointers;
    if (step.panZoom) panZoom(step.panZoom);
  };
  const up = (event: PointerEvent<SVGSVGElement>, isClick: boolean): void => {
    const { active, moved } = pointers.current;
    const clicked = isClick && !moved && active.some(({ id }) => id === event.pointerId);
    send('up', event);
    if (clicked) onClick(event);
  };
  return {
    onPointerDownCapture: (event: PointerEvent<SVGSVGElement>) => {
      if (busy && !event.isPrimary) onSecond();
      if (pointers.current.active.length === 0) return;
      // A second pointer zooms, also where it comes down on a handle.
      event.stopPropagation();
      send('down', event);
    },
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (busy || event.button !== 0) return;
      // The pointer is captured when it moves, so that a click still reaches the element under it.
      send('down', event);
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (pointers.current.active.length === 0) return;
      send('move', event);
      if (pointers.current.moved && pointers.current.active.some(({ id }) => id === event.pointerId))
        event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => up(event, true),
    onPointerCancel: (event: PointerEvent<SVGSVGElement>) => up(event, false),
    onPointerLeave: (event: PointerEvent<SVGSVGElement>) => {
      if (!event.currentTarget.hasPointerCapture(event.pointerId)) up(event, false);
    },
  };
}
