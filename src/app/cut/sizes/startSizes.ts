// Starts work on many bodies in a worker, or on the page where there is no worker. Both can be stopped.

import { runSizes } from './runSizes';
import type { SizesJob, SizesResult, SizesWatch } from './sizesJob';
import type { SizesMessage } from './sizesWorker';

export interface RunningSizes {
  /** Never settles once stopped. */
  readonly result: Promise<SizesResult>;
  readonly stop: () => void;
}

export function startSizes(job: SizesJob, watch: SizesWatch): RunningSizes {
  const worker = workerFor(job);
  return worker ? inWorker(worker, watch) : onPage(job, watch);
}

/** A worker with its code loaded that waits for work. */
let waiting: Worker | null = null;

/** Loads a worker before it is needed, so that the first bodies come at once. */
export function prepareSizes(): void {
  try {
    waiting ??= openWorker();
  } catch {
    waiting = null;
  }
}

/** Ends the worker that waits for work. */
export function releaseSizes(): void {
  waiting?.terminate();
  waiting = null;
}

function openWorker(): Worker {
  const worker = new Worker(new URL('./sizesWorker.ts', import.meta.url), { type: 'module' });
  // One that cannot be loaded is tried again, and its failure said, when there is work.
  worker.addEventListener('error', () => {
    if (waiting === worker) releaseSizes();
  });
  return worker;
}

/** A worker that has been given the job; null where the browser has no workers or cannot copy the job to one. */
function workerFor(job: SizesJob): Worker | null {
  try {
    const worker = waiting ?? openWorker();
    waiting = null;
    worker.postMessage(job);
    return worker;
  } catch {
    return null;
  }
}

function inWorker(worker: Worker, watch: SizesWatch): RunningSizes {
  const listening = new AbortController();
  const { signal } = listening;
  const result = new Promise<SizesResult>((resolve, reject) => {
    const fail = (reason: string): void => {
      worker.terminate();
      reject(new Error(reason));
    };
    const answered = ({ data }: MessageEvent<SizesMessage>): void => {
      if (data.kind === 'done') void watch(data.done, data.of, data.proof);
      else if (data.kind === 'failed') fail('the work failed');
      else {
        // What it has loaded serves the next work.
        listening.abort();
        if (waiting) worker.terminate();
        else waiting = worker;
        resolve(data.result);
      }
    };
    worker.addEventListener('message', answered, { signal });
    worker.addEventListener('error', () => fail('the worker failed'), { signal });
  });
  return {
    result,
    stop: () => {
      // One that has answered may be at other work.
      if (!signal.aborted) worker.terminate();
    },
  };
}

function onPage(job: SizesJob, watch: SizesWatch): RunningSizes {
  let isStopped = false;
  const afterBody: SizesWatch = async (done, of, proof) => {
    await watch(done, of, proof);
    await new Promise((resolve) => setTimeout(resolve));
    // A promise that never settles stops the work where it is.
    if (isStopped) await new Promise(() => undefined);
  };
  return {
    // Nobody is told of a body before the work is in the caller's hands.
    result: Promise.resolve().then(() => runSizes(job, afterBody)),
    stop: () => {
      isStopped = true;
    },
  };
}
