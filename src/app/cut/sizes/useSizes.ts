// The drafts of the bodies in view, proved anew whenever the bodies or the style change, and the running print.

import { useCallback, useEffect, useRef, useState } from 'react';
import type { NamedBody, SavedDraft, SizeProof, SizeRow } from '../../../document';
import { download } from '../../components/files/download';
import type { SizesJob } from './sizesJob';
import { prepareSizes, type RunningSizes, releaseSizes, startSizes } from './startSizes';

export interface Proved {
  readonly proofs: readonly SizeProof[];
  readonly table: readonly SizeRow[];
}

/**
 * The proofs of the bodies, in their order; the first of many are there before the last are drafted. Those of before stay in view
 * until then. The table is made where it is asked for.
 */
export function useProofs(
  bodies: readonly NamedBody[],
  savedDraft: SavedDraft,
  withTable: boolean,
): { readonly proved: Proved; readonly state: 'busy' | 'proved' | 'failed' } {
  const [proved, setProved] = useState<Proved>(NOTHING);
  const [state, setState] = useState<'busy' | 'proved' | 'failed'>('proved');
  useEffect(() => releaseSizes, []);
  useEffect(() => {
    prepareSizes();
    if (bodies.length === 0) {
      setProved(NOTHING);
      setState('proved');
      return;
    }
    setState('busy');
    let running: RunningSizes | null = null;
    const proofs: SizeProof[] = [];
    const timer = setTimeout(() => {
      running = startSizes({ kind: 'prove', bodies, savedDraft, withTable }, (done, _of, proof) => {
        if (proof) proofs.push(proof);
        if (done % AT_ONCE === 0) setProved({ proofs: [...proofs], table: [] });
      });
      running.result
        .then((result) => {
          if (result.kind !== 'proved') return;
          setProved({ proofs, table: result.table });
          setState('proved');
        })
        .catch(() => setState('failed'));
    }, SETTLE_MS);
    return () => {
      clearTimeout(timer);
      running?.stop();
    };
  }, [bodies, savedDraft, withTable]);
  return { proved, state };
}

const NOTHING: Proved = { proofs: [], table: [] };

/** So many proofs come into view at once: a page of the list. */
export const AT_ONCE = 25;

/** While somebody types no draft is begun. ms */
const SETTLE_MS = 120;

export interface SizesPrinting {
  readonly progress: { readonly done: number; readonly of: number } | null;
  readonly outcome: 'made' | 'failed' | 'tooLarge' | null;
  readonly print: (job: SizesJob, file: string, type: string) => void;
  readonly cancel: () => void;
}

export function useSizesPrint(): SizesPrinting {
  const [progress, setProgress] = useState<SizesPrinting['progress']>(null);
  const [outcome, setOutcome] = useState<SizesPrinting['outcome']>(null);
  const running = useRef<RunningSizes | null>(null);
  const cancel = useCallback((): void => {
    running.current?.stop();
    running.current = null;
    setProgress(null);
  }, []);
  useEffect(() => () => running.current?.stop(), []);
  const print = (job: SizesJob, file: string, type: string): void => {
    cancel();
    setOutcome(null);
    setProgress({ done: 0, of: job.bodies.length });
    const started = startSizes(job, (done, of) => {
      if (running.current === started) setProgress({ done, of });
    });
    running.current = started;
    started.result
      .then((result) => {
        if (running.current !== started) return;
        if (result.kind === 'file') download(result.content, type, file);
        setOutcome(result.kind === 'file' ? 'made' : 'tooLarge');
      })
      .catch(() => setOutcome('failed'))
      .finally(() => {
        if (running.current !== started) return;
        running.current = null;
        setProgress(null);
      });
  };
  return { progress, outcome, print, cancel };
}
