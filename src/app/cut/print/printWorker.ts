// The worker that makes a print, so that the page still answers meanwhile. Nothing else carries what writes PDF.

import { type FacedJob, makePrint, type PrintMessage } from './printJob';

const send = (message: PrintMessage): void => self.postMessage(message);

self.addEventListener('message', ({ data }: MessageEvent<FacedJob>) => {
  makePrint(data, (drawn, of) => send({ kind: 'page', drawn, of }))
    .then((bytes) => send({ kind: 'made', bytes }))
    .catch(() => send({ kind: 'failed' }));
});
