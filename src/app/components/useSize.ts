// The size an element has on the screen, followed as it changes.

import { type RefObject, useLayoutEffect, useState } from 'react';

export function useSize(ref: RefObject<Element | null>): { width: number; height: number } {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const read = (): void => {
      const { width, height } = element.getBoundingClientRect();
      setSize((last) => (last.width === width && last.height === height ? last : { width, height }));
    };
    read();
    const observer = new ResizeObserver(read);
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return size;
}
