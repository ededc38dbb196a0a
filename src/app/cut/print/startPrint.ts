// Starts a print in a worker, or on the page where there is no worker. Both can be stopped.

import type { PageWatch } from '../../../paper';
import { makePrint, type PrintJob, type PrintMessage } from './printJob';

export interface RunningPrint {
  /** The PDF; null where a page would be larger than PDF allows. Never settles once stopped. */
  readonly bytes: Promise<Uint8Array | null>;
  readonly stop: () => void;
}

export function startPrint(job: PrintJob, watch: PageWatch): RunningPrint {
  const worker = workerFor(job);
  return worker ? inWorker(worker, watch) : onPage(job, watch);
}

/** A worker that has been given the job; null where the browser has no workers or cannot copy the job to one. */
function workerFor(job: PrintJob): Worker | null {
  try {
    const worker = new Worker(new URL('./printWorker.ts', import.meta.url), { type: 'module' });
    worker.postMessage(job);
    return worker;
  } catch {
    return null;
  }
}

function inWorker(worker: Worker, watch: PageWatch): RunningPrint {
  const bytes = new Promise<Uint8Array | null>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<PrintMessage>) => {
      if (data.kind === 'page') void watch(data.drawn, data.of);
      else {
        worker.terminate();
        if (data.kind === 'made') resolve(data.bytes);
        else reject(new Error('the print failed'));
      }
    });
    worker.addEventListener('error', () => {
      worker.terminate();
      reject(new Error('the worker failed'));
    });
  });
  return { bytes, stop: () => worker.terminate() };
}

function onPage(job: PrintJob, watch: PageWatch): RunningPrint {
  let stopped = false;
  const afterPage = async (drawn: number, of: number): Promise<void> => {
    await watch(drawn, of);
    await new Promise((resolve) => setTimeout(resolve));
    // A promise that never settles stops the drawing where it is; memory is freed as usual.
    if (stopped) await new Promise(() => undefined);
  };
  return {
    bytes: makePrint(job, afterPage),
    stop: () => {
      stopped = true;
    },
  };
}
