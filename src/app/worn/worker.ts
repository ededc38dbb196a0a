// The worker that sews a draft on its body. It looks for a newer request between its steps, and leaves the older one off.

import { sewing } from '../../engine';
import { buffersOf, wornResult } from './view/wornPicture';
import type { WornAnswer, WornRequest } from './wornRequest';

/** Work is given up after so long; the garment is then not at rest. */
const MOST_MS = 60_000;
/** Messages are looked for after so long. */
const LOOK_MS = 30;

let newest = 0;

self.addEventListener('message', ({ data }: MessageEvent<WornRequest>) => {
  newest = data.number;
  sew(data).catch(() => answer({ number: data.number, kind: 'failed' }));
});

async function sew({ number, draft, measurements, style, sides, width }: WornRequest): Promise<void> {
  const work = sewing(draft, measurements, style, sides, width === undefined ? {} : { width });
  const start = performance.now();
  let looked = start;
  for (;;) {
    const { done, value } = work.next();
    if (done) {
      const result = wornResult(value);
      answer({ number, kind: 'sewn', result }, buffersOf(result));
      return;
    }
    const now = performance.now();
    if (now - start > MOST_MS) throw new Error('it takes too long');
    if (now - looked < LOOK_MS) continue;
    await messagesRead();
    if (newest !== number) return;
    looked = performance.now();
  }
}

const channel = new MessageChannel();

/** Waits until what was sent meanwhile has been read. */
const messagesRead = (): Promise<void> =>
  new Promise((resolve) => {
    channel.port1.onmessage = () => resolve();
    channel.port2.postMessage(null);
  });

const answer = (message: WornAnswer, transfer: Transferable[] = []): void =>
  self.postMessage(message, { transfer });
