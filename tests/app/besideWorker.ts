// The worker of a print where there are no workers.

import type { PrintWorker } from '../../src/app/cut/print/openWorker';
import { type FacedJob, makePrint, type PrintMessage } from '../../src/app/cut/print/printJob';

export function openWorker(): PrintWorker {
  const answers = new EventTarget();
  let ended = false;
  const send = (data: PrintMessage): void => {
    if (!ended) answers.dispatchEvent(new MessageEvent('message', { data }));
  };
  return {
    postMessage: (job: FacedJob) => {
      makePrint(job, (drawn, of) => send({ kind: 'page', drawn, of }))
        .then((bytes) => send({ kind: 'made', bytes }))
        .catch(() => send({ kind: 'failed' }));
    },
    addEventListener: answers.addEventListener.bind(answers) as PrintWorker['addEventListener'],
    terminate: () => {
      ended = true;
    },
  };
}
