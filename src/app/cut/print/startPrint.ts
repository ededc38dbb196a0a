// Starts a print in a worker, or on the page where there is none; either can be told to stop.

import type { PageWatch } from '../../../paper';
import { makePrint, type PrintJob, type PrintNews } from './printJob';

export interface Print {
  /** The bytes; null where no page can be so large. Never settles once stopped. */
  readonly made: Promise<Uint8Array | null>;
  readonly stop: () => void;
}

export function startPrint(job: PrintJob, watch: PageWatch): Print {
  const worker = workerFor(job);
  return worker ? inWorker(worker, watch) : onPage(job, watch);
}

/** Null where the browser gives no worker or the job cannot be handed over. */
function workerFor(job: PrintJob): Worker | null {
  try {
    const worker = new Worker(new URL('./printWorker.ts', import.meta.url), { type: 'module' });
    worker.postMessage(job);
    return worker;
  } catch {
    return null;
  }
}

function inWorker(worker: Worker, watch: PageWatch): Print {
  const made = new Promise<Uint8Array | null>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<PrintNews>) => {
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
  return { made, stop: () => worker.terminate() };
}

function onPage(job: PrintJob, watch: PageWatch): Print {
  let stopped = false;
  const breathe = async (drawn: number, of: number): Promise<void> => {
    await watch(drawn, of);
    await new Promise((resolve) => setTimeout(resolve));
    // A promise that never settles leaves the drawing where it is, to be collected.
    if (stopped) await new Promise(() => undefined);
  };
  return {
    made: makePrint(job, breathe),
    stop: () => {
      stopped = true;
    },
  };
}
