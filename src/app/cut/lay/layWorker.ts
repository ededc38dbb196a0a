// The worker that lays panels on cloth: it sends every plan that is shorter than those before, until its time is up.

import { startLay } from '../../../paper';
import { type LayAnswer, type LayRequest, MOST_SECONDS } from './layRequest';

/** A plan is sent at most once in so long. */
const SEND_MS = 120;

const send = (answer: LayAnswer): void => self.postMessage(answer);

self.addEventListener('message', ({ data: { asked, cloth, seed } }: MessageEvent<LayRequest>) => {
  const start = performance.now();
  const laid = startLay(asked, cloth, seed);
  if (!laid.ok) {
    send({ kind: 'faults', faults: laid.faults });
    return;
  }
  const { step, best } = laid.work;
  let shown = best();
  send({ kind: 'plan', plan: shown });
  let sent = performance.now();
  while (performance.now() - start < MOST_SECONDS * 1000) {
    step();
    if (performance.now() - sent < SEND_MS) continue;
    sent = performance.now();
    const plan = best();
    if (plan === shown) continue;
    shown = plan;
    send({ kind: 'plan', plan });
  }
  const last = best();
  if (last !== shown) send({ kind: 'plan', plan: last });
  send({ kind: 'done' });
});
