// The garment of a draft as worn, sewn anew whenever the draft changes.

import { useEffect, useRef, useState } from 'react';
import type { BodySides, Draft, Measurements, Style } from '../../engine';
import type { WornResult } from './view/wornPicture';
import { toBeSewn, type WornAnswer, type WornRequest } from './wornRequest';

export interface Worn {
  /** The last that was sewn; null before the first. */
  readonly result: WornResult | null;
  /** `busy` while a newer one is being sewn; `failed` where it could not be, `noWorker` where the browser has none. */
  readonly state: 'sewn' | 'busy' | 'failed' | 'noWorker';
}

export function useWorn(
  draft: Draft,
  { measurements, sides = null }: { readonly measurements: Measurements; readonly sides?: BodySides | null },
  style: Style,
): Worn {
  const [worn, setWorn] = useState<Worn>({ result: null, state: 'busy' });
  const worker = useRef<Worker | null>(null);
  const number = useRef(0);
  useEffect(() => {
    if (typeof Worker === 'undefined') {
      setWorn({ result: null, state: 'noWorker' });
      return;
    }
    const started = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.current = started;
    const fail = (): void => setWorn((last) => ({ ...last, state: 'failed' }));
    started.addEventListener('message', ({ data }: MessageEvent<WornAnswer>) => {
      if (data.number !== number.current) return;
      if (data.kind === 'failed') fail();
      else setWorn({ result: data.result, state: 'sewn' });
    });
    started.addEventListener('error', fail);
    return () => {
      worker.current = null;
      started.terminate();
    };
  }, []);
  useEffect(() => {
    if (!worker.current) return;
    number.current += 1;
    const request: WornRequest = {
      number: number.current,
      draft: toBeSewn(draft),
      measurements,
      style,
      sides,
    };
    worker.current.postMessage(request);
    setWorn((last) => ({ ...last, state: 'busy' }));
  }, [draft, measurements, style, sides]);
  return worn;
}
