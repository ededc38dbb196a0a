// The worker that drafts and prints many bodies, so that the page still answers meanwhile.

import type { SizeProof } from '../../../document';
import { runSizes } from './runSizes';
import type { SizesJob, SizesResult } from './sizesJob';

/** A message of the worker. */
export type SizesMessage =
  | {
      readonly kind: 'done';
      readonly done: number;
      readonly of: number;
      readonly proof: SizeProof | undefined;
    }
  | { readonly kind: 'result'; readonly result: SizesResult }
  | { readonly kind: 'failed' };

const send = (message: SizesMessage): void => self.postMessage(message);

self.addEventListener('message', ({ data }: MessageEvent<SizesJob>) => {
  runSizes(data, (done, of, proof) => send({ kind: 'done', done, of, proof }))
    .then((result) => {
      send({ kind: 'result', result });
      // What was proved is mostly printed next.
      if (data.kind === 'prove')
        return import('./printBodies').then(
          () => undefined,
          () => undefined,
        );
    })
    .catch(() => send({ kind: 'failed' }));
});
