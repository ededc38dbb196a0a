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

/** A worker that has been given the job; null where the browser has no workers or cannot copy the job to one. */
function workerFor(job: SizesJob): Worker | null {
  try {
    const worker = new Worker(new URL('./sizesWorker.ts', import.meta.url), { type: 'module' });
    worker.postMessage(job);
    return worker;
  } catch {
    return null;
  }
}

function inWorker(worker: Worker, watch: SizesWatch): RunningSizes {
  const result = new Promise<SizesResult>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<SizesMessage>) => {
      if (data.kind === 'done') {
        void watch(data.done, data.of, data.proof);
        return;
      }
      worker.terminate();
      if (data.kind === 'result') resolve(data.result);
      else reject(new Error('the work failed'));
    });
    worker.addEventListener('error', () => {
      worker.terminate();
      reject(new Error('the worker failed'));
    });
  });
  return { result, stop: () => worker.terminate() };
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
