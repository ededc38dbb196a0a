// The worker that makes a print, so that the page still answers meanwhile.

import { makePrint, type PrintJob, type PrintMessage } from './printJob';

const send = (message: PrintMessage): void => self.postMessage(message);

self.addEventListener('message', ({ data }: MessageEvent<PrintJob>) => {
  makePrint(data, (drawn, of) => send({ kind: 'page', drawn, of }))
    .then((bytes) => send({ kind: 'made', bytes }))
    .catch(() => send({ kind: 'failed' }));
});
