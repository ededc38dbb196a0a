// Fetches the notices about keeping the book when there is one to show: they are rare, so their texts are not part of the first
// load.

import { lazy, Suspense, useState, useSyncExternalStore } from 'react';
import { SHELL } from '../../document';
import { later } from '../components/later';
import type { Keeping } from './KeepingNotices';

/** Where the notices cannot be fetched, one sentence of the first load stands for them. */
const fetchNotices = later(async () => (await import('./KeepingNotices')).KeepingNotices);
const KeepingNotices = lazy(() =>
  fetchNotices().then(
    (notices) => ({ default: notices }),
    () => ({ default: UnfetchedNotice }),
  ),
);

export function KeepingArea({ keeping }: { keeping: Keeping }) {
  const { storage, said } = keeping;
  const { kind } = useSyncExternalStore(storage.subscribe, storage.status);
  // Once there they stay, because they also show what the choice between two tabs puts aside.
  const [isNeeded, setNeeded] = useState(() => said.length > 0 || storage.quarantined().length > 0);
  const isFault = kind === 'failed' || kind === 'conflict';
  if (isFault && !isNeeded) setNeeded(true);
  if (!isNeeded) return null;
  return (
    <Suspense fallback={null}>
      <KeepingNotices keeping={keeping} />
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
