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

interface Wearer {
  readonly measurements: Measurements;
  readonly sides?: BodySides | null;
}

interface WornAsk {
  readonly draft: Draft;
  readonly wearer: Wearer;
  readonly style: Style;
  /** Width of the mesh, mm; left out for that of figures. */
  readonly width?: number;
}

const NOTHING: Worn = { result: null, state: 'busy' };

/** Null asks for nothing: the worker starts with the first draft that is asked for. */
export function useWorn(asked: WornAsk | null): Worn {
  const [worn, setWorn] = useState(NOTHING);
  const worker = useRef<Worker | null>(null);
  const number = useRef(0);
  const { draft = null, wearer, style, width } = asked ?? {};
  const { measurements, sides = null } = wearer ?? {};
  useEffect(
    () => () => {
      worker.current?.terminate();
      worker.current = null;
    },
    [],
  );
  useEffect(() => {
    number.current += 1;
    if (!draft || !measurements || !style) {
      setWorn(NOTHING);
      return;
    }
    if (typeof Worker === 'undefined') {
      setWorn({ result: null, state: 'noWorker' });
      return;
    }
    worker.current ??= startWorker(
      (answer) => {
        if (answer.number !== number.current) return;
        if (answer.kind === 'failed') setWorn((last) => ({ ...last, state: 'failed' }));
        else setWorn({ result: answer.result, state: 'sewn' });
      },
      // One that did not come, or broke off, answers nothing more: the next change starts another.
      () => {
        worker.current?.terminate();
        worker.current = null;
        setWorn((last) => ({ ...last, state: 'failed' }));
      },
    );
    const request: WornRequest = {
      number: number.current,
      draft: toBeSewn(draft),
      measurements,
      style,
      sides,
      ...(width === undefined ? {} : { width }),
    };
    worker.current.postMessage(request);
    setWorn((last) => ({ ...last, state: 'busy' }));
  }, [draft, measurements, style, sides, width]);
  return worn;
}

function startWorker(onAnswer: (answer: WornAnswer) => void, onFailure: () => void): Worker {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<WornAnswer>) => onAnswer(data));
  worker.addEventListener('error', onFailure);
  return worker;
}
