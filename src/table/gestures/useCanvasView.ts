// Joins the view of the table to pointers, wheel and keys: drag on the paper, two fingers, wheel about the pointer.

import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import type { CanvasLayout } from '../layout/layout';
import { fitted, type Shift, type Size, scaledTo, shifted, showing, type Viewport } from '../layout/viewport';
import { handle, NO_POINTERS, wheelFactor } from './pointers';

export interface CanvasView {
  readonly view: Viewport;
  readonly size: Size;
  /** Everything is in view, and stays so when the draft grows. */
  readonly isFitted: boolean;
  readonly fit: () => void;
  readonly zoomBy: (factor: number) => void;
  readonly zoomTo: (pxPerMm: number) => void;
  readonly show: (at: { x: number; y: number }) => void;
  readonly shift: (shift: Shift) => void;
}

/** Room that is kept round what is brought into view, px. */
const MARGIN_PX = 40;

/**
 * The part of the table on the screen.
 *
 * @param size of the table on the screen, px
 * @param leastPxPerMm scale below which `fit` does not go by itself, so that a small screen shows a part, large enough
 */
export function useCanvasView(layout: CanvasLayout | null, size: Size, leastPxPerMm: number): CanvasView {
  const [free, setFree] = useState<Viewport | null>(null);
  const whole = layout ? fitted(layout, size, leastPxPerMm) : { left: 0, top: 0, pxPerMm: 1 };
  const change = (step: (view: Viewport, on: CanvasLayout) => Viewport): void => {
    if (layout) setFree((last) => step(last ?? whole, layout));
  };
  return {
    view: free ?? whole,
    size,
    isFitted: free === null,
    fit: () => setFree(null),
    zoomBy: (factor) => change((view, on) => scaledTo(view, view.pxPerMm * factor, on, size)),
    zoomTo: (pxPerMm) => change((view, on) => scaledTo(view, pxPerMm, on, size)),
    show: (at) => {
      if (layout && showing(free ?? whole, at, layout, size, MARGIN_PX) !== (free ?? whole))
        change((view, on) => showing(view, at, on, size, MARGIN_PX));
    },
    shift: (step) => change((view, on) => shifted(view, step, on, size)),
  };
}

/**
 * Pointer events for the paper, and a wheel on the whole table.
 *
 * @param onClick a press that moved nothing
 * @param busy a handle is being pulled, and the table stands still
 */
export function usePointers(
  canvas: RefObject<SVGSVGElement | null>,
  shift: (shift: Shift) => void,
  onClick: (event: PointerEvent<SVGSVGElement>) => void,
  busy: boolean,
) {
  const pointers = useRef(NO_POINTERS);
  const latest = useRef(shift);
  useEffect(() => {
    latest.current = shift;
  });
  useEffect(() => {
    const svg = canvas.current;
    const turn = (event: WheelEvent): void => {
      event.preventDefault();
      const { left, top } = (svg as SVGSVGElement).getBoundingClientRect();
      const to = { x: event.clientX - left, y: event.clientY - top };
      const sideways = !event.ctrlKey && Math.abs(event.deltaX) > Math.abs(event.deltaY);
      latest.current(
        sideways
          ? { from: { ...to, x: to.x + event.deltaX }, to, factor: 1 }
          : { from: to, to, factor: wheelFactor(event.deltaY, event.deltaMode) },
      );
    };
    // React listens passively; the page must not scroll under the table.
    svg?.addEventListener('wheel', turn, { passive: false });
    return () => svg?.removeEventListener('wheel', turn);
  }, [canvas]);
  const send = (kind: 'down' | 'move' | 'up', event: PointerEvent<SVGSVGElement>): void => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const at = { id: event.pointerId, x: event.clientX - left, y: event.clientY - top };
    const step = handle(pointers.current, { kind, ...at });
    pointers.current = step.pointers;
    if (step.shift) shift(step.shift);
  };
  const up = (event: PointerEvent<SVGSVGElement>, isClick: boolean): void => {
    const { fingers, moved } = pointers.current;
    const clicked = isClick && !moved && fingers.some(({ id }) => id === event.pointerId);
    send('up', event);
    if (clicked) onClick(event);
  };
  return {
    onPointerDownCapture: (event: PointerEvent<SVGSVGElement>) => {
      if (pointers.current.fingers.length === 0) return;
      // A second finger scales the table, also where it comes down on a handle.
      event.stopPropagation();
      send('down', event);
    },
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (busy || event.button !== 0 || onHandle(event.target)) return;
      // Not captured before it moves: a click has to find what lies under it.
      send('down', event);
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (pointers.current.fingers.length === 0) return;
      send('move', event);
      if (pointers.current.moved && pointers.current.fingers.some(({ id }) => id === event.pointerId))
        event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => up(event, true),
    onPointerCancel: (event: PointerEvent<SVGSVGElement>) => up(event, false),
    onPointerLeave: (event: PointerEvent<SVGSVGElement>) => {
      if (!event.currentTarget.hasPointerCapture(event.pointerId)) up(event, false);
    },
  };
}

const onHandle = (target: EventTarget): boolean =>
  target instanceof Element && target.closest('[data-handle]') !== null;
