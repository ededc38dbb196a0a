import { Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { draftStream } from '../../src/cli/draftStream';
import { DEFAULT_STYLE } from '../../src/engine';

/** Takes one write at a time and only when let. */
class SlowReader extends Writable {
  taken = 0;
  private go: (() => void) | null = null;

  constructor() {
    super({ highWaterMark: 1 });
  }

  override _write(_chunk: unknown, _encoding: string, done: () => void): void {
    this.taken += 1;
    this.go = done;
  }

  release(): void {
    const { go } = this;
    this.go = null;
    go?.();
  }
}

describe('the stream', () => {
  it('drafts no faster than it is read', async () => {
    let asked = 0;
    async function* clients(): AsyncGenerator<string> {
      for (; asked < 5; asked += 1) yield '{"name":"nobody"}\n';
    }
    const reader = new SlowReader();
    const done = draftStream(clients(), reader, DEFAULT_STYLE);
    const settle = () => new Promise((resolve) => setImmediate(resolve));
    await settle();
    expect([asked, reader.taken]).toEqual([0, 1]);
    for (let count = 1; count < 5; count += 1) {
      reader.release();
      await settle();
      expect(reader.taken).toBe(count + 1);
    }
    reader.release();
    await settle();
    // An empty chunk behind the last answer tells that it was written.
    reader.release();
    await done;
    expect(asked).toBe(5);
  });
});
