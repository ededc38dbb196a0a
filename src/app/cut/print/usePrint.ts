// The running print, if there is one, and whether the last one failed.

import { useEffect, useRef, useState } from 'react';
import { download } from '../../components/files/download';
import type { PrintJob } from './printJob';
import { type RunningPrint, startPrint } from './startPrint';
import { useKeepPrint } from './useKeepPrint';

export interface Printing {
  /** Pages drawn of all; null while nothing is printed. */
  readonly progress: { readonly drawn: number; readonly of: number } | null;
  /** How the last print failed: the picture is larger than a PDF page may be, or it could not be made; null where it did not. */
  readonly failure: 'tooLarge' | 'failed' | null;
  /** The last print, made and downloaded; null while there is none. */
  readonly made: File | null;
  /** Starts a print and downloads it under the name of the file; a print that is running is stopped. */
  readonly print: (job: PrintJob, file: string) => void;
  readonly cancel: () => void;
}

export function usePrint(): Printing {
  const [progress, setProgress] = useState<Printing['progress']>(null);
  const [failure, setFailure] = useState<Printing['failure']>(null);
  const [made, setMade] = useState<File | null>(null);
  const keepPrint = useKeepPrint();
  const running = useRef<RunningPrint | null>(null);
  useEffect(() => () => running.current?.stop(), []);

  const cancel = (): void => {
    running.current?.stop();
    running.current = null;
    setProgress(null);
  };
  const print = (job: PrintJob, file: string): void => {
    cancel();
    setFailure(null);
    setMade(null);
    setProgress({ drawn: 0, of: 1 });
    const started = startPrint(job, (drawn, of) => {
      if (running.current === started) setProgress({ drawn, of });
    });
    running.current = started;
    const end = (outcome: Printing['failure'], ready: File | null = null): void => {
      if (running.current !== started) return;
      running.current = null;
      setProgress(null);
      setFailure(outcome);
      setMade(ready);
    };
    started.bytes.then(
      (bytes) => {
        if (running.current === started && bytes) {
          download(bytes, 'application/pdf', file);
          if (job.kind !== 'draftingSheet' && job.kind !== 'lay') keepPrint(job.kind);
        }
        if (bytes) end(null, new File([new Uint8Array(bytes)], file, { type: 'application/pdf' }));
        else end('tooLarge');
      },
      () => end('failed'),
    );
  };
  return { progress, failure, made, print, cancel };
}
