// The print under way, if there is one, and what became of the last.

import { useEffect, useRef, useState } from 'react';
import { download } from '../../components/download';
import type { PrintJob } from './printJob';
import { type Print, startPrint } from './startPrint';

export interface Printing {
  /** Pages drawn of all; null while nothing is printed. */
  readonly progress: { readonly drawn: number; readonly of: number } | null;
  /** What went wrong with the last print; null when nothing did. */
  readonly failure: string | null;
  readonly print: (job: PrintJob, file: string) => void;
  readonly cancel: () => void;
}

export function usePrint(): Printing {
  const [progress, setProgress] = useState<Printing['progress']>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const running = useRef<Print | null>(null);
  useEffect(() => () => running.current?.stop(), []);

  const cancel = (): void => {
    running.current?.stop();
    running.current = null;
    setProgress(null);
  };
  const print = (job: PrintJob, file: string): void => {
    cancel();
    setFailure(null);
    setProgress({ drawn: 0, of: 1 });
    const started = startPrint(job, (drawn, of) => {
      if (running.current === started) setProgress({ drawn, of });
    });
    running.current = started;
    const end = (said: string | null): void => {
      if (running.current !== started) return;
      running.current = null;
      setProgress(null);
      setFailure(said);
    };
    started.made.then(
      (bytes) => {
        if (running.current === started && bytes) download(bytes, 'application/pdf', file);
        end(bytes ? null : 'The picture would be larger than a PDF page may be; take a narrower one.');
      },
      () => end('The PDF could not be made. Nothing in the book has changed; try again.'),
    );
  };
  return { progress, failure, print, cancel };
}
