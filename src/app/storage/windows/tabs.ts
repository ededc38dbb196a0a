// Lives with other tabs and with being left: follows what they keep, tells of clashes, and keeps what waits before the page goes.

import type { BookStorage } from '../book/bookStorage';
import type { Host } from '../device/host';
import { kindOfKey } from '../records/record';

/** Attaches a keeper to the page; gives what ends it. */
export function attach(window: Window, books: BookStorage, host: Host): () => void {
  const leave = (): void => {
    host.finish();
    books.flush();
  };
  const hidden = (): void => {
    if (window.document.visibilityState === 'hidden') leave();
  };
  const ask = (event: Event): void => {
    leave();
    if (books.isWaiting()) event.preventDefault();
  };
  // Asked for only while something waits: a page that may ask cannot be gone back to at once.
  let asks = false;
  const follow = books.subscribe((status) => {
    const mayBeLost = status.kind !== 'saved' && books.isWaiting();
    if (mayBeLost === asks) return;
    asks = mayBeLost;
    if (asks) window.addEventListener('beforeunload', ask);
    else window.removeEventListener('beforeunload', ask);
  });
  const heard = ({ key, newValue }: StorageEvent): void => {
    import('./otherTabs').then(
      ({ hear }) => hear(books, host, key, newValue),
      () => {
        // What is there is compared again before anything is written over it.
        if (key === null || kindOfKey(key) !== null) books.notify({ kind: 'notFollowed' });
      },
    );
  };
  window.addEventListener('pagehide', leave);
  window.document.addEventListener('visibilitychange', hidden);
  window.addEventListener('storage', heard);
  return () => {
    follow();
    window.removeEventListener('beforeunload', ask);
    window.removeEventListener('pagehide', leave);
    window.document.removeEventListener('visibilitychange', hidden);
    window.removeEventListener('storage', heard);
  };
}
