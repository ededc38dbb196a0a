// Touches that pull or pinch do not scroll the page.

import { type RefObject, useEffect, useRef } from 'react';

/** A point of the window, px. */
export interface ClientPoint {
  readonly clientX: number;
  readonly clientY: number;
}

/**
 * Keeps the page from scrolling while a finger pulls a handle that goes up and down, or two pinch.
 *
 * @param isPull whether a touch there pulls such a handle
 */
export function usePreventTouchScroll(
  canvas: RefObject<SVGSVGElement | null>,
  isPull: (at: ClientPoint) => boolean,
): void {
  const latest = useRef(isPull);
  useEffect(() => {
    latest.current = isPull;
  });
  useEffect(() => {
    const svg = canvas.current;
    const hold = (event: TouchEvent): void => {
      const onHandle = event.target instanceof Element && event.target.closest('[data-handle]') !== null;
      const [first] = event.touches;
      if (event.touches.length > 1 || (onHandle && first && latest.current(first))) event.preventDefault();
    };
    // React's touch listeners are passive, and not every browser applies touch-action inside an SVG.
    svg?.addEventListener('touchstart', hold, { passive: false });
    return () => svg?.removeEventListener('touchstart', hold);
  }, [canvas]);
}
