// Fetches the notices about keeping the book when there is one to show: they are rare, so their texts are not part of the first
// load.

import { lazy, Suspense, useContext, useState, useSyncExternalStore } from 'react';
import { SHELL } from '../../../document';
import { later } from '../../components/later/later';
import type { BookStorage } from '../../storage/book/bookStorage';
import { BooksContext } from '../../storage/windows/booksContext';

/** Where the notices cannot be fetched, one sentence of the first load stands for them. */
const fetchNotices = later(async () => (await import('./KeepingNotices')).KeepingNotices);
const KeepingNotices = lazy(() =>
  fetchNotices().then(
    (notices) => ({ default: notices }),
    () => ({ default: UnfetchedNotice }),
  ),
);

export function KeepingArea() {
  const books = useContext(BooksContext);
  return books ? <Area storage={books.storage} /> : null;
}

function Area({ storage }: { storage: BookStorage }) {
  const { status, notices } = useSyncExternalStore(storage.subscribe, storage.keeping);
  // Once there they stay, because they also show what the choice between two tabs puts aside.
  const [isNeeded, setNeeded] = useState(() => storage.hasAside());
  const isFault = status.kind !== 'saved' && status.kind !== 'pending';
  if ((isFault || notices.length > 0) && !isNeeded) setNeeded(true);
  if (!isNeeded) return null;
  return (
    <Suspense fallback={null}>
      <KeepingNotices />
    </Suspense>
  );
}

function UnfetchedNotice() {
  return (
    <div className="keeping" role="status">
      <p className="failed">{SHELL.keepingUnknown}</p>
    </div>
  );
}
