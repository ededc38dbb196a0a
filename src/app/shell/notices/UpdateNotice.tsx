// Says that a later version of the page lies ready, and changes to it when that is asked for: in every tab, once its work is kept.

import { useCallback, useEffect, useState } from 'react';
import { SHELL, START } from '../../../document';
import { BackupButton } from '../../components/files/BackupButton';
import type { BookStorage } from '../../storage/book/bookStorage';
import { useStore } from '../../store/storeContext';
import { askedBefore, askIn, forgetAsked } from './askIn';
import { isServedBuild } from './servedBuild';

/** The page comes first; what is kept for the network's absence comes after it. ms */
const REGISTER_MS = 1000;

/** Whether this is a build that has a worker, in a browser that has such. */
const hasWorkers = (): boolean =>
  import.meta.env.PROD && import.meta.env.MODE !== 'single' && 'serviceWorker' in navigator;

type KeptBook = Pick<BookStorage, 'status' | 'subscribe' | 'flush'>;

interface UpdateNoticeProps {
  readonly storage: KeptBook;
  readonly reload?: () => void;
}

const loadAgain = (): void => window.location.reload();

export function UpdateNotice({ storage, reload = loadAgain }: UpdateNoticeProps) {
  const waiting = useWaitingWorker();
  const kept = useStore((state) => state.kept);
  const keep = useStore((state) => state.keep);
  const keepWork = useCallback(() => {
    keep({ code: 'passingChangeKept' });
    storage.flush();
  }, [keep, storage]);
  const isStuck = useTakenOver(storage, keepWork, reload);
  const [before] = useState(askedBefore);
  /** How often the worker was asked in before it is asked now; null while it is not asked. */
  const [asked, setAsked] = useState(before > 0 ? before : null);
  useEffect(forgetAsked, []);
  useEffect(() => {
    if (waiting && asked !== null) return askIn(waiting, { storage, keepWork, reload }, asked);
    return undefined;
  }, [waiting, asked, storage, keepWork, reload]);
  if (!waiting && !isStuck) return null;
  return (
    <div className="keeping" role="status">
      {isStuck ? (
        <p className="failed">
          {SHELL.update.elsewhere}
          <BackupButton book={kept} />
          <button type="button" onClick={reload}>
            {START.reload}
          </button>
        </p>
      ) : (
        <p>
          {asked === null ? SHELL.update.ready : SHELL.update.asked}
          <button type="button" disabled={asked !== null} onClick={() => setAsked(0)}>
            {SHELL.update.use}
          </button>
        </p>
      )}
    </div>
  );
}

/**
 * Loads the page again when a later worker has taken charge, as soon as what is under way here is kept. True while that cannot be
 * kept: the page then goes on as it is, with the files of its own build.
 */
function useTakenOver(storage: KeptBook, keepWork: () => void, reload: () => void): boolean {
  const [isStuck, setStuck] = useState(false);
  useEffect(() => {
    if (!hasWorkers()) return;
    let there = true;
    let hadWorker = navigator.serviceWorker.controller !== null;
    let unsubscribe = (): void => undefined;
    const reloadWhenKept = (): void => {
      const { kind } = storage.status();
      if (kind === 'saved') reload();
      else setStuck(kind !== 'pending');
    };
    const takeOver = (): void => {
      keepWork();
      unsubscribe();
      unsubscribe = storage.subscribe(reloadWhenKept);
      reloadWhenKept();
    };
    const compare = async (): Promise<void> => {
      if (!(await isServedBuild()) && there) takeOver();
    };
    const changed = (): void => {
      if (hadWorker) takeOver();
      // The first worker of all mostly finds the page that it was fetched for.
      else void compare();
      hadWorker = true;
    };
    navigator.serviceWorker.addEventListener('controllerchange', changed);
    const wait = setTimeout(() => void compare(), REGISTER_MS);
    return () => {
      there = false;
      clearTimeout(wait);
      navigator.serviceWorker.removeEventListener('controllerchange', changed);
      unsubscribe();
    };
  }, [storage, keepWork, reload]);
  return isStuck;
}

/** The worker of a later build that waits to take over; null while there is none. */
function useWaitingWorker(): ServiceWorker | null {
  const [waiting, setWaiting] = useState<ServiceWorker | null>(null);
  useEffect(() => {
    if (!hasWorkers()) return;
    let there = true;
    const look = (registration: ServiceWorkerRegistration): void => {
      if (there && registration.waiting && navigator.serviceWorker.controller)
        setWaiting(registration.waiting);
    };
    const register = async (): Promise<void> => {
      const registration = await navigator.serviceWorker.register('./sw.js');
      look(registration);
      registration.addEventListener('updatefound', () => {
        look(registration);
        const { installing } = registration;
        installing?.addEventListener('statechange', () => look(registration));
      });
    };
    // Where the browser refuses, the page works as before, with the network.
    const wait = setTimeout(() => void register().catch(() => undefined), REGISTER_MS);
    return () => {
      there = false;
      clearTimeout(wait);
    };
  }, []);
  return waiting;
}
