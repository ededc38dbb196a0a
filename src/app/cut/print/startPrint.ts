// Starts a print in a worker. It can be stopped.

import type { PageWatch } from '../../../paper';
import { openWorker } from './openWorker';
import type { FacedJob, PrintJob, PrintMessage } from './printJob';
import { withFonts } from './withFonts';

export interface RunningPrint {
  /** The PDF; null where a page would be larger than PDF allows. Never settles once stopped. */
  readonly bytes: Promise<Uint8Array | null>;
  readonly stop: () => void;
}

export function startPrint(job: PrintJob, watch: PageWatch = () => undefined): RunningPrint {
  let [stopped, stop] = [false, (): void => undefined];
  const bytes = async (): Promise<Uint8Array | null> => {
    const faced = { ...job, input: await withFonts(job.input) } as FacedJob;
    if (stopped) return new Promise(() => undefined);
    return inWorker(faced, watch, (end) => {
      stop = end;
    });
  };
  return {
    bytes: bytes(),
    stop: () => {
      stopped = true;
      stop();
    },
  };
}

function inWorker(
  job: FacedJob,
  watch: PageWatch,
  canEnd: (end: () => void) => void,
): Promise<Uint8Array | null> {
  const worker = openWorker();
  canEnd(() => worker.terminate());
  return new Promise((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<PrintMessage>) => {
      if (data.kind === 'page') {
        void watch(data.drawn, data.of);
        return;
      }
      worker.terminate();
      if (data.kind === 'made') resolve(data.bytes);
      else reject(new Error('the print failed'));
    });
    worker.addEventListener('error', () => {
      worker.terminate();
      reject(new Error('the worker failed'));
    });
    worker.postMessage(job);
  });
}
