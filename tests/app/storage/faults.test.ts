// Every call that keeping makes of a storage, with every fault, before and after the book is moved into records.

import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepAgain } from '../../../src/app/storage/asides';
import { BOOK_KEY } from '../../../src/app/storage/records/record';
import { addClient, openClient } from '../../../src/document';
import { FakeStorage, type StorageFault } from './fakeStorage';
import { clientsIn, namesIn, newId, openTab, present, type Tab } from './keeper';

const EARLIER = readFileSync('tests/document/model/fixtures/book-v5.json', 'utf8');

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** The storage before and after the move. */
async function storages(): Promise<Readonly<Record<'before' | 'after', () => FakeStorage>>> {
  const moved = new FakeStorage({ [BOOK_KEY]: EARLIER });
  await openTab(moved);
  vi.runAllTimers();
  const records = Object.fromEntries(moved.kept);
  return { before: () => new FakeStorage({ [BOOK_KEY]: EARLIER }), after: () => new FakeStorage(records) };
}

/** A day's work: one client is renamed, another added, and both are kept. */
async function work(storage: FakeStorage): Promise<Tab> {
  const tab = await openTab(storage);
  vi.advanceTimersByTime(50);
  tab.rename('Renamed');
  vi.advanceTimersByTime(400);
  tab.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, newId(), 'Added'));
  tab.books.flush();
  vi.advanceTimersByTime(400);
  return tab;
}

/** How many calls the work makes where nothing fails. */
async function callsOf(storage: FakeStorage): Promise<number> {
  await work(storage);
  return storage.calls;
}

const isTold = ({ books }: Tab): boolean =>
  books.isWaiting() && books.status().kind !== 'saved' && books.status().kind !== 'pending';

/** What this tab has is kept, or it is said that it is not; what was there before is there. */
function expectNothingLost(storage: FakeStorage, tab: Tab, before: string): void {
  const there = namesIn(storage);
  const own = present(tab);
  for (const { name } of own.clients) if (!there.has(name)) expect(isTold(tab), `${name} is lost`).toBe(true);
  // Who was open has another name since.
  expect([...there]).toContain(before);
}

const FAULTS: readonly StorageFault[] = ['throws', 'isFull', 'dropsIt'];

describe.each(['before', 'after'] as const)('%s the move', (side) => {
  it.each(FAULTS.flatMap((kind) => [[kind, false] as const, [kind, true] as const]))(
    'a call that %s (from then on: %s) loses nothing, and is told',
    async (kind, from) => {
      const make = (await storages())[side];
      const calls = await callsOf(make());
      expect(calls).toBeGreaterThan(20);
      for (let call = 1; call <= calls; call += 1) {
        const storage = make();
        storage.fault = { call, kind, from };
        const tab = await work(storage);
        const open = openClient(present(tab)).name;
        storage.fault = null;
        expect(open, `call ${call}`).toBe('Added');
        expectNothingLost(storage, tab, 'Orla Fenwick');
        tab.books.retry();
        vi.advanceTimersByTime(1000);
        if (tab.books.status().kind === 'cleared') keepAgain(tab.books);
        expect(tab.books.status().kind, `call ${call}`).toBe('saved');
        for (const { name } of present(tab).clients) expect([...namesIn(storage)]).toContain(name);
        // What another start of the page finds: everybody, and nobody twice but for her who was kept under two names.
        const next = await openTab(storage);
        vi.advanceTimersByTime(1000);
        expect([...clientsIn(storage).keys()]).toEqual(expect.arrayContaining(['Added', 'Orla Fenwick']));
        expect(next.books.status().kind).toBe('saved');
      }
    },
  );

  it('a page that dies at any call is opened again with everything that was kept', async () => {
    const make = (await storages())[side];
    const calls = await callsOf(make());
    for (let call = 1; call <= calls; call += 1) {
      const storage = make();
      storage.fault = { call, kind: 'throws', from: true };
      const saved: string[] = [];
      const tab = await openTab(storage);
      tab.books.subscribe(({ kind }) => {
        if (kind === 'saved') saved.push(openClient(present(tab)).name);
      });
      vi.advanceTimersByTime(50);
      tab.rename('Renamed');
      vi.advanceTimersByTime(400);
      vi.clearAllTimers();
      storage.fault = null;
      const next = await openTab(storage);
      vi.advanceTimersByTime(1000);
      expect(next.books.status().kind, `call ${call}`).toBe('saved');
      const there = [...clientsIn(storage).keys()];
      expect(there).toContain('Orla Fenwick');
      expect(there.some((name) => name === 'Bram Tolliver' || name === 'Renamed')).toBe(true);
      if (saved.includes('Renamed')) expect(there).toContain('Renamed');
      expect(storage.kept.has(BOOK_KEY)).toBe(false);
    }
  });
});
