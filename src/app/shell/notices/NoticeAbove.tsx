// Leads to what keeping has to say where one has scrolled away from it: on a phone it stands above what one types.

import { type RefObject, useEffect, useState } from 'react';
import { KEEPING } from '../../../document';

/** @param notices what is led to; it stands at the top of the page */
export function NoticeAbove({ notices }: { notices: RefObject<HTMLElement | null> }) {
  const top = useTopWhereAbove(notices);
  if (top === null) return null;
  return (
    <p className="notice-above" style={{ top }}>
      {KEEPING.above.says}
      <button
        type="button"
        onClick={() => {
          window.scrollTo({ top: 0 });
          notices.current?.querySelector('button')?.focus({ preventScroll: true });
        }}
      >
        {KEEPING.above.show}
      </button>
    </p>
  );
}

/** Where the part of the window begins in which the page is seen, px; null while something of an element is to be seen there. */
function useTopWhereAbove(element: RefObject<HTMLElement | null>): number | null {
  const [top, setTop] = useState<number | null>(null);
  useEffect(() => {
    const { current } = element;
    if (!current) return;
    const covered = headerPx();
    const observer = new IntersectionObserver(
      ([entry]) => {
        if (entry) setTop(entry.isIntersecting || entry.boundingClientRect.top > 0 ? null : covered);
      },
      { rootMargin: `${-covered}px 0px 0px 0px` },
    );
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return top;
}

/** Height of the header where it stays at the top of the window, px; 0 where it scrolls away. */
function headerPx(): number {
  const header = document.querySelector('header.shell');
  if (!header || getComputedStyle(header).position !== 'sticky') return 0;
  return header.getBoundingClientRect().height;
}
