// Says that a later version of the page lies ready, and changes to it when the maker says so.

import { useEffect, useState } from 'react';
import { SHELL } from '../../document';
import { useStore } from '../store/storeContext';

/** The page comes first; what is kept for the network's absence comes after it. ms */
const REGISTER_MS = 1000;

export function UpdateNotice() {
  const waiting = useWaitingWorker();
  const keep = useStore((state) => state.keep);
  if (!waiting) return null;
  return (
    <div className="keeping" role="status">
      <p>
        {SHELL.update.ready}
        <button
          type="button"
          onClick={() => {
            keep({ code: 'passingChangeKept' });
            // The page goes over to it only when it has taken charge; what is under way is kept as at any leaving.
            navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload());
            waiting.postMessage('update');
          }}
        >
          {SHELL.update.use}
        </button>
      </p>
    </div>
  );
}

/** The worker of a later build that waits to take over; null while there is none. */
function useWaitingWorker(): ServiceWorker | null {
  const [waiting, setWaiting] = useState<ServiceWorker | null>(null);
  useEffect(() => {
    if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
    let there = true;
    const look = (registration: ServiceWorkerRegistration): void => {
      if (there && registration.waiting && navigator.serviceWorker.controller)
        setWaiting(registration.waiting);
    };
    const register = async (): Promise<void> => {
      const registration = await navigator.serviceWorker.register('./sw.js');
      look(registration);
      registration.addEventListener('updatefound', () => {
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
