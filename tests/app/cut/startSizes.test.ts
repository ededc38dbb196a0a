import { afterEach, expect, it, vi } from 'vitest';
import type { SizesJob } from '../../../src/app/cut/sizes/sizesJob';
import { releaseSizes, startSizes } from '../../../src/app/cut/sizes/startSizes';
import { DEMO_BOOK, openClient, openDraftOf } from '../../../src/document';

/** A worker that answers at once, as long as nobody has ended it. */
class Answering extends EventTarget {
  ended = false;
  postMessage(): void {
    queueMicrotask(() => {
      const data = { kind: 'result', result: { kind: 'proved', table: [] } };
      if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data }));
    });
  }
  terminate(): void {
    this.ended = true;
  }
}

afterEach(() => {
  releaseSizes();
  vi.unstubAllGlobals();
});

it('gives the next work to the worker that has answered, stopped afterwards or not', async () => {
  const opened: Answering[] = [];
  const open = class extends Answering {
    constructor() {
      super();
      opened.push(this);
    }
  };
  vi.stubGlobal('Worker', open);
  const savedDraft = openDraftOf(openClient(DEMO_BOOK));
  const job: SizesJob = { kind: 'prove', bodies: [], savedDraft, withTable: false };
  const first = startSizes(job, () => undefined);
  await first.result;
  first.stop();
  expect(await startSizes(job, () => undefined).result).toEqual({ kind: 'proved', table: [] });
  expect(opened).toHaveLength(1);
  releaseSizes();
  expect(opened.map(({ ended }) => ended)).toEqual([true]);
});
