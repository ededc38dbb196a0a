// The running search for a lay: a worker for each of at most two cores, each from a seed of its own.

import { useEffect, useRef, useState } from 'react';
import type { LayFault, LayPlan } from '../../../paper';
import { type LayAnswer, type LayRequest, MOST_SECONDS } from './layRequest';

interface Laying {
  readonly state: 'idle' | 'busy' | 'failed';
  /** Seconds since the start. */
  readonly seconds: number;
  readonly faults: readonly LayFault[];
  /**
   * Starts a search; each shorter plan is given to `onPlan`, and `onEnd` is called when it has ended, however it did. One that is
   * running is stopped.
   */
  readonly start: (
    request: Omit<LayRequest, 'seed'>,
    onPlan: (plan: LayPlan) => void,
    onEnd: () => void,
  ) => void;
  /** Loads the workers before they are needed, so that the first plan comes at once. */
  readonly prepare: () => void;
  /** Stops it; the shortest plan so far holds. */
  readonly stop: () => void;
}

export function useLay(): Laying {
  const [state, setState] = useState<Laying['state']>('idle');
  const [seconds, setSeconds] = useState(0);
  const [faults, setFaults] = useState<readonly LayFault[]>([]);
  const workers = useRef<readonly Worker[]>([]);
  const prepared = useRef<readonly Worker[]>([]);
  const whenEnded = useRef<() => void>(() => undefined);
  const end = (): void => {
    for (const worker of workers.current) worker.terminate();
    workers.current = [];
    const ended = whenEnded.current;
    whenEnded.current = () => undefined;
    ended();
  };
  useEffect(
    () => () => {
      for (const worker of [...workers.current, ...prepared.current]) worker.terminate();
      whenEnded.current();
    },
    [],
  );
  useEffect(() => {
    if (state !== 'busy') return;
    const clock = setInterval(() => setSeconds((last) => Math.min(MOST_SECONDS, last + 1)), 1000);
    return () => clearInterval(clock);
  }, [state]);

  const start: Laying['start'] = (request, onPlan, onEnd) => {
    end();
    whenEnded.current = onEnd;
    setFaults([]);
    setSeconds(0);
    setState('busy');
    const finish = (outcome: Laying['state']): void => {
      end();
      setState(outcome);
    };
    let shortest = Number.POSITIVE_INFINITY;
    let running = 0;
    let waiting: readonly Worker[] = [];
    const ask = (worker: Worker): void => {
      worker.postMessage({ ...request, seed: running } satisfies LayRequest);
      running += 1;
    };
    const answered = ({ data }: MessageEvent<LayAnswer>): void => {
      if (data.kind === 'faults') {
        setFaults(data.faults);
        finish('idle');
      } else if (data.kind === 'done') {
        running -= 1;
        if (running === 0) finish('idle');
      } else {
        if (data.plan.lengthMm < shortest) {
          shortest = data.plan.lengthMm;
          onPlan(data.plan);
        }
        // The first plan is the same of each: the others begin when it is there, and take no time from it.
        for (const worker of waiting) ask(worker);
        waiting = [];
      }
    };
    try {
      const ready = prepared.current.length > 0 ? prepared.current : openWorkers();
      prepared.current = [];
      workers.current = ready;
      for (const worker of ready) {
        worker.addEventListener('message', answered);
        worker.addEventListener('error', () => finish('failed'));
      }
      const [first, ...others] = ready;
      if (first) ask(first);
      waiting = others;
    } catch {
      finish('failed');
    }
  };
  const stop = (): void => {
    end();
    setState('idle');
  };
  const prepare = (): void => {
    if (state === 'busy' || prepared.current.length > 0) return;
    try {
      prepared.current = openWorkers();
    } catch {
      prepared.current = [];
    }
    // A worker that cannot be loaded is tried again, and its failure said, when it is needed.
    for (const worker of prepared.current)
      worker.addEventListener('error', () => {
        if (!prepared.current.includes(worker)) return;
        for (const each of prepared.current) each.terminate();
        prepared.current = [];
      });
  };
  return { state, seconds, faults, start, prepare, stop };
}

function openWorkers(): readonly Worker[] {
  const cores = typeof navigator === 'undefined' ? 1 : Math.min(2, navigator.hardwareConcurrency || 1);
  return Array.from(
    { length: cores },
    () => new Worker(new URL('./layWorker.ts', import.meta.url), { type: 'module' }),
  );
}
