import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { headsOf } from '../../../src/app/storage/records/openKept';
import { clientRecord } from '../../../src/app/storage/records/record';
import { DEMO_CLIENT } from '../../../src/document';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const record = (name: string): string => clientRecord({ ...DEMO_CLIENT, name }, null);

it('reads the heads of many records a few at a time, so that the page stays responsive', async () => {
  const names = Array.from({ length: 100 }, (_, i) => `Client ${i}`);
  const records = new Map(names.map((name) => [name, record(name)]));
  // each look at the clock is a millisecond later
  let clock = 0;
  const read = headsOf(records, () => {
    clock += 1;
    return clock;
  });
  let waits = 0;
  while (vi.getTimerCount() > 0) {
    waits += 1;
    await vi.advanceTimersToNextTimerAsync();
  }
  const heads = await read;
  expect(waits).toBeGreaterThan(1);
  expect([...heads.values()].map((head) => head?.name)).toEqual(names);
});

it('has null for a text that is not as it was written', async () => {
  const heads = await headsOf(new Map([['a', `${record('Ada')} `]]));
  expect(heads.get('a')).toBeNull();
});
