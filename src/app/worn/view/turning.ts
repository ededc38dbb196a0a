// Turning and zooming the camera by pointers and wheel.

import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { type Camera, moved } from './camera';

/** Turning by one pointer, zooming by two. */
export function usePointers(setCamera: (change: (last: Camera) => Camera) => void) {
  const down = useRef(new Map<number, { x: number; y: number }>());
  const spread = (): number => {
    const [a, b] = [...down.current.values()];
    return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
  };
  return {
    down: (event: PointerEvent<HTMLCanvasElement>): void => {
      event.currentTarget.setPointerCapture(event.pointerId);
      down.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    },
    /** True where a pointer that is down moved. */
    move: (event: PointerEvent<HTMLCanvasElement>): boolean => {
      const last = down.current.get(event.pointerId);
      if (!last) return false;
      const before = spread();
      down.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
      const { height } = event.currentTarget.getBoundingClientRect();
      const by =
        before > 0
          ? { zoom: spread() / before }
          : {
              // What is under the pointer goes with it.
              turn: (-3 * (event.clientX - last.x)) / height,
              tilt: event.pointerType === 'touch' ? 0 : (2 * (event.clientY - last.y)) / height,
            };
      setCamera((camera) => moved(camera, by));
      return true;
    },
    up: (event: PointerEvent<HTMLCanvasElement>): void => {
      down.current.delete(event.pointerId);
    },
  };
}

/** The wheel zooms with Ctrl, as it does elsewhere; without it the page scrolls. */
export function useZoomByWheel(
  canvas: RefObject<HTMLCanvasElement | null>,
  zoom: (by: number) => void,
): void {
  const latest = useRef(zoom);
  latest.current = zoom;
  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    const turn = (event: WheelEvent): void => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      latest.current(Math.exp(-event.deltaY / 400));
    };
    // React listens to the wheel without a way to keep the page from zooming.
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [canvas]);
}
