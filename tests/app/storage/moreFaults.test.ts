// Every fault at every call of the storage where parts of an earlier book cannot be read, where two tabs clash, and where one
// follows the other.

import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BOOK_KEY, clientRecord, splitRecord } from '../../../src/app/storage/records/record';
import { type ClashChoice, settleClash } from '../../../src/app/storage/windows/settleClash';
import { openClient } from '../../../src/document';
import { FakeStorage, type StorageFault } from './fakeStorage';
import { namesIn, newId, openTab, present, type Tab } from './keeper';
import { SharedStorage } from './sharedStorage';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const FAULTS: readonly StorageFault[] = ['throws', 'isFull', 'dropsIt'];
const EACH = FAULTS.flatMap((kind) => [[kind, false] as const, [kind, true] as const]);

/** Names of all clients and styles of which something lies in a storage, in whatever place. */
const allNamesIn = (storage: FakeStorage): string[] => [
  ...namesIn(storage),
  ...[...storage.kept.values()].flatMap((text) => splitRecord(text)?.head.name ?? []),
];

/** Goes on where the storage works again, until all is kept. */
function recover(storage: FakeStorage, { books }: Tab): void {
  storage.fault = null;
  books.retry();
  vi.advanceTimersByTime(1000);
}

describe('an earlier book with parts that cannot be read', () => {
  const book = JSON.parse(readFileSync('tests/document/model/fixtures/book-v5.json', 'utf8'));
  const [orla, bram] = book.clients;
  const [style] = book.styles;
  const text = JSON.stringify({
    ...book,
    clients: [orla, { ...orla, id: 'torn', name: 'Maud Torn', measurements: { waist: 'wide' } }, bram],
    styles: [style, { ...style, id: 'torn', name: 'Torn style', style: 'none' }],
  });
  const NAMES = ['Orla Fenwick', 'Bram Tolliver', 'Maud Torn', 'Harbour sweetheart', 'Torn style'];
  const work = async (storage: FakeStorage): Promise<Tab> => {
    const tab = await openTab(storage);
    vi.advanceTimersByTime(1000);
    return tab;
  };

  it.each(EACH)('has each of them still, where a call %s (from then on: %s)', async (kind, from) => {
    const whole = new FakeStorage({ [BOOK_KEY]: text });
    await work(whole);
    expect(whole.kept.has(BOOK_KEY)).toBe(false);
    const calls = whole.calls;
    expect(calls).toBeGreaterThan(20);
    for (let call = 1; call <= calls; call += 1) {
      const storage = new FakeStorage({ [BOOK_KEY]: text });
      storage.fault = { call, kind, from };
      const tab = await work(storage);
      expect(allNamesIn(withoutFault(storage)), `call ${call}`).toEqual(expect.arrayContaining(NAMES));
      recover(storage, tab);
      // Another start of the page goes on with what was broken off.
      const next = await work(storage);
      expect(next.books.status().kind, `call ${call}`).toBe('saved');
      // A book that was there and could not be seen is told of when it is.
      const isSaid = next.books.keeping().notices.some(({ kind: said }) => said === 'earlierBuild');
      expect(storage.kept.has(BOOK_KEY), `call ${call}`).toBe(isSaid);
      expect(allNamesIn(storage), `call ${call}`).toEqual(expect.arrayContaining(NAMES));
    }
  });
});

/** The storage as one reads it that has no fault. */
const withoutFault = (storage: FakeStorage): FakeStorage => {
  const copy = new FakeStorage();
  for (const [key, value] of storage.kept) copy.kept.set(key, value);
  return copy;
};

interface TwoTabs {
  readonly ours: Tab;
  readonly theirs: Tab;
  /** As this tab has it, and may fail it. */
  readonly own: SharedStorage;
}

/** Two tabs on one client, whom the other one has renamed and kept. */
async function twoTabs(): Promise<TwoTabs> {
  const [first, own] = SharedStorage.tabs(2) as [SharedStorage, SharedStorage];
  const theirs = await openTab(first);
  theirs.rename('Before');
  theirs.books.flush();
  const ours = await openTab(own);
  own.inbox.length = 0;
  theirs.rename('Theirs');
  theirs.books.flush();
  return { ours, theirs, own };
}

describe('a clash over one client', () => {
  const clash = async (): Promise<TwoTabs & { readonly key: string }> => {
    const tabs = await twoTabs();
    tabs.ours.rename('Ours');
    tabs.ours.books.flush();
    const status = tabs.ours.books.status();
    return { ...tabs, key: status.kind === 'conflict' ? (status.clashes[0]?.key ?? '') : '' };
  };
  const CHOICES: readonly ClashChoice[] = ['ours', 'theirs', 'both'];

  it.each(CHOICES.flatMap((choice) => EACH.map((fault) => [choice, ...fault] as const)))(
    'that is ended with %s loses neither, where a call %s (from then on: %s)',
    async (choice, kind, from) => {
      const whole = await clash();
      const before = whole.own.calls;
      expect(await settleClash(whole.ours.books, whole.ours.host, whole.key, choice)).toBe(true);
      const calls = whole.own.calls - before;
      expect(calls).toBeGreaterThan(2);
      for (let call = 1; call <= calls; call += 1) {
        const { ours, own, key } = await clash();
        own.fault = { call: own.calls + call, kind, from };
        await settleClash(ours.books, ours.host, key, choice);
        vi.advanceTimersByTime(1000);
        const there = allNamesIn(withoutFault(own));
        expect(there, `call ${call}`).toContain('Theirs');
        const inTab = present(ours).clients.map(({ name }) => name);
        const isTold = ours.books.isWaiting() && ours.books.status().kind !== 'pending';
        expect(there.some((name) => name.startsWith('Ours')) || (inTab.includes('Ours') && isTold)).toBe(
          true,
        );
        recover(own, ours);
        // Chosen again where nothing was changed.
        if (ours.books.status().kind === 'conflict')
          expect(await settleClash(ours.books, ours.host, key, choice), `call ${call}`).toBe(true);
        vi.advanceTimersByTime(1000);
        expect(ours.books.status().kind, `call ${call}`).toBe('saved');
        const names = allNamesIn(own);
        expect(names).toContain('Theirs');
        expect(
          names.some((name) => name.startsWith('Ours')),
          `call ${call}: ${names}`,
        ).toBe(true);
      }
    },
  );
});

describe('a tab that follows another', () => {
  const hearAll = async ({ ours, own }: TwoTabs): Promise<void> => {
    for (const { key, value } of own.inbox.splice(0)) await ours.hear(key, value);
    vi.advanceTimersByTime(1000);
  };

  it.each(EACH)(
    'writes over nothing that the other kept, where a call %s (from then on: %s)',
    async (kind, from) => {
      const whole = await twoTabs();
      const before = whole.own.calls;
      await hearAll(whole);
      const calls = whole.own.calls - before;
      expect(calls).toBeGreaterThan(0);
      for (let call = 1; call <= calls; call += 1) {
        const tabs = await twoTabs();
        tabs.own.fault = { call: tabs.own.calls + call, kind, from };
        await hearAll(tabs);
        tabs.own.fault = null;
        // Whether it has followed or not: what it changes now does not take away what the other kept.
        const followed = openClient(present(tabs.ours)).name === 'Theirs';
        tabs.ours.rename('Ours');
        tabs.ours.books.flush();
        vi.advanceTimersByTime(1000);
        const names = allNamesIn(tabs.own);
        expect(names, `call ${call}`).toContain('Ours');
        if (!followed) expect(names, `call ${call}`).toContain('Theirs');
        expect(tabs.ours.books.status().kind).toBe(followed ? 'saved' : 'conflict');
      }
    },
  );

  it.each(EACH)(
    'puts aside what it wrote over unknowingly, or says so, where a call %s (from then on: %s)',
    async (kind, from) => {
      for (let call = 1; call <= 4; call += 1) {
        const { ours, own } = await twoTabs();
        ours.rename('Ours');
        ours.books.flush();
        const { id } = openClient(present(ours));
        const theirs = clientRecord({ ...openClient(present(ours)), name: newId() }, null);
        own.fault = { call: own.calls + call, kind, from };
        await ours.hear(`staywright.client.${id}`, theirs);
        own.fault = null;
        expect(allNamesIn(own)).toContain('Ours');
      }
    },
  );
});
