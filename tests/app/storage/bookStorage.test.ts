import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { discard, keepAgain, quarantinedIn } from '../../../src/app/storage/asides';
import { type SaveStatus, saveFaultOf } from '../../../src/app/storage/device/saveStatus';
import { browserStorage } from '../../../src/app/storage/device/storageLike';
import { noticeSentence, saveStatusSentence } from '../../../src/app/storage/keepingSentences';
import { NO_STEPS } from '../../../src/app/storage/records/migrations';
import { openKept } from '../../../src/app/storage/records/openKept';
import { outsideOf } from '../../../src/app/storage/records/outsideOf';
import { readClientRecord } from '../../../src/app/storage/records/readRecord';
import {
  BOOK_KEY,
  clientRecord,
  LAYOUT,
  OPEN_KEY,
  recordKey,
  splitRecord,
} from '../../../src/app/storage/records/record';
import { sumOf } from '../../../src/app/storage/records/sum';
import { addClient, BOOK_VERSION, DEMO_CLIENT, entriesOf, openClient, readBook } from '../../../src/document';
import { FakeStorage } from './fakeStorage';
import { ASIDE, clientsIn, keeperOf, namesIn, newId, openTab, present, type Tab } from './keeper';

const fixture = (version: number): string =>
  readFileSync(`tests/document/model/fixtures/book-v${version}.json`, 'utf8');

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A storage in which these clients were kept, the last one open. */
async function storageOf(...names: string[]): Promise<FakeStorage> {
  const storage = new FakeStorage();
  const tab = await openTab(storage);
  names.forEach((name, i) => {
    if (i > 0) tab.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, newId(), name));
    else tab.rename(name);
  });
  tab.books.flush();
  storage.written.length = 0;
  return storage;
}

const keyOf = (storage: FakeStorage, name: string): string =>
  `staywright.client.${clientsIn(storage).get(name)?.id}`;
const names = (tab: Tab): string[] =>
  entriesOf(present(tab))
    .map(({ name }) => name)
    .sort();

describe('a first start', () => {
  it('gives the invented client an id of her own and writes nothing', async () => {
    const storage = new FakeStorage();
    const [one, other] = [await keeperOf(storage).load(), await keeperOf(storage).load()];
    expect(openClient(one)).toEqual({ ...DEMO_CLIENT, id: one.openClient });
    expect(one.openClient).not.toBe(other.openClient);
    expect(storage.written).toEqual([]);
  });

  it('fetches what reads a book only where there is something to read, and changes nothing where it cannot', async () => {
    const kept = await storageOf('Ada');
    vi.doMock('../../../src/app/storage/book/bookReader', () => {
      throw new TypeError('Failed to fetch dynamically imported module');
    });
    vi.resetModules();
    try {
      const { BookStorage } = await import('../../../src/app/storage/book/bookStorage');
      const load = (storage: FakeStorage) =>
        new BookStorage({ storage, now: () => new Date(), newId }).load();
      expect((await load(new FakeStorage())).clients).toHaveLength(1);
      await expect(load(kept)).rejects.toThrow();
      expect(kept.written).toEqual([]);
    } finally {
      vi.doUnmock('../../../src/app/storage/book/bookReader');
    }
  });
});

describe('a book kept client by client', () => {
  it('opens the client who was open, and of the others knows what a list shows', async () => {
    const storage = await storageOf('Ada', 'Bea', 'Cleo');
    const book = present(await openTab(storage));
    expect(openClient(book).name).toBe('Cleo');
    const read = clientsIn(storage);
    const also = book.unopened?.map(({ name, draftNames }) => [name, draftNames]);
    // The history of the page has opened all three.
    expect(also).toBeUndefined();
    storage.kept.delete('staywright.history');
    const listed = present(await openTab(storage));
    expect(listed.clients.map(({ name }) => name)).toEqual(['Cleo']);
    expect(listed.unopened?.map(({ name }) => name).sort()).toEqual(['Ada', 'Bea']);
    expect(listed.unopened?.find(({ name }) => name === 'Ada')?.draftNames).toEqual(
      read.get('Ada')?.drafts.map(({ name }) => name),
    );
  });

  it('writes one record for a change of one client, however many there are', async () => {
    const storage = await storageOf(...Array.from({ length: 30 }, (_, i) => `Client ${i}`));
    const tab = await openTab(storage);
    tab.rename('Dora');
    tab.books.flush();
    expect(storage.written).toEqual([keyOf(storage, 'Dora'), 'staywright.history']);
    expect(clientsIn(storage).size).toBe(30);
  });

  it('removes the record of a client who is deleted, and only hers', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const tab = await openTab(storage);
    const ada = keyOf(storage, 'Ada');
    tab.store.getState().change({ code: 'clientRemoved', name: 'Ada' }, (book) => ({
      ...book,
      clients: book.clients.filter(({ name }) => name !== 'Ada'),
    }));
    tab.books.flush();
    expect(storage.kept.has(ada)).toBe(false);
    expect([...clientsIn(storage).keys()]).toEqual(['Bea']);
  });

  it('keeps the last of many quick changes, once, when they stop', async () => {
    const storage = await storageOf('Start');
    const tab = await openTab(storage);
    for (const name of ['A', 'Ad', 'Ada']) {
      tab.rename(name);
      vi.advanceTimersByTime(200);
    }
    expect(tab.books.status()).toEqual({ kind: 'pending' });
    expect(storage.written).toEqual([]);
    vi.advanceTimersByTime(100);
    expect(storage.written.filter((key) => key.includes('client'))).toHaveLength(1);
    expect([...clientsIn(storage).keys()]).toEqual(['Ada']);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
  });

  it('tells every listener until it leaves', async () => {
    const { books, rename } = await openTab(new FakeStorage());
    const heard: SaveStatus['kind'][] = [];
    const leave = books.subscribe(({ kind }) => heard.push(kind));
    rename('Ada');
    books.flush();
    leave();
    rename('Bea');
    expect([...new Set(heard)]).toEqual(['pending', 'saved']);
  });

  it('sets one client aside whose record is damaged, says so and writes over nothing', async () => {
    const storage = await storageOf('Ada', 'Bea', 'Cleo');
    const ada = keyOf(storage, 'Ada');
    const damaged = `${storage.kept.get(ada)?.slice(0, -3)}xyz`;
    storage.kept.set(ada, damaged);
    const tab = await openTab(storage);
    expect(names(tab)).toEqual(['Bea', 'Cleo']);
    expect(tab.books.keeping().notices.map(noticeSentence).join()).toMatch(
      /could not be opened and was set aside/,
    );
    expect(quarantinedIn(tab.books)).toEqual([{ key: ada, text: damaged }]);
    tab.rename('Clio');
    tab.books.flush();
    expect(storage.kept.get(ada)).toBe(damaged);
    discard(tab.books, ada);
    expect(storage.kept.has(ada)).toBe(false);
  });

  it('opens another client where the open one was kept by a later build, and leaves her as she is', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const key = keyOf(storage, 'Bea');
    const [, ...words] = (storage.kept.get(key) ?? '').split(' ');
    const later = words.join(' ').replace(`"book":${BOOK_VERSION}`, `"book":${BOOK_VERSION + 1}`);
    const text = `${sumOf(later)} ${later}`;
    storage.kept.set(key, text);
    const tab = await openTab(storage);
    expect(openClient(present(tab)).name).toBe('Ada');
    expect(tab.books.keeping().notices).toEqual([{ kind: 'newer', version: BOOK_VERSION + 1 }]);
    expect(names(tab)).toEqual(['Ada', 'Bea']);
    tab.rename('Adah');
    tab.books.flush();
    expect(storage.kept.get(key)).toBe(text);
  });

  describe('of an earlier version', () => {
    const earlier = 8;
    const [client] = JSON.parse(fixture(earlier)).clients;
    /** A storage with this client as her record was written by the version before. */
    const earlierStorage = (): { storage: FakeStorage; key: string; text: string } => {
      const now = clientRecord({ ...client, lastUsed: null }, null);
      const rest = now.slice(now.indexOf(' ') + 1).replace(`"book":${BOOK_VERSION}`, `"book":${earlier}`);
      const [storage, key] = [new FakeStorage(), recordKey('client', client.id)];
      const text = `${sumOf(rest)} ${rest}`;
      storage.kept.set(key, text);
      storage.kept.set(OPEN_KEY, JSON.stringify({ layout: LAYOUT, open: client.id }));
      return { storage, key, text };
    };

    it('is brought up to this one where it is opened, and written when it is changed', async () => {
      const { storage, key, text } = earlierStorage();
      const tab = await openTab(storage);
      const whole = readBook(fixture(earlier));
      const expected = whole.kind === 'book' ? whole.book.clients[0] : null;
      expect(openClient(present(tab))).toEqual({ ...expected, lastUsed: null });
      expect(tab.books.keeping().notices).toEqual([]);
      tab.books.flush();
      expect(storage.kept.get(key)).toBe(text);
      tab.rename('Adah');
      tab.books.flush();
      expect(splitRecord(storage.kept.get(key) ?? '')?.head.book).toBe(BOOK_VERSION);
    });

    it('is left as it lies where the steps to this one cannot be fetched, and the page says so', async () => {
      const { storage, key, text } = earlierStorage();
      vi.doMock('../../../src/app/storage/records/allSteps', () => {
        throw new TypeError('Failed to fetch dynamically imported module');
      });
      vi.resetModules();
      try {
        const { BookStorage } = await import('../../../src/app/storage/book/bookStorage');
        const books = new BookStorage({ storage, now: () => new Date(), newId });
        await expect(books.load()).rejects.toThrow();
        books.flush();
        expect(storage.kept.get(key)).toBe(text);
        expect(storage.written).toEqual([]);
      } finally {
        vi.doUnmock('../../../src/app/storage/records/allSteps');
      }
    });

    it('is neither read nor put aside without the steps', () => {
      const { storage, key, text } = earlierStorage();
      expect(readClientRecord(text, NO_STEPS)).toEqual({ kind: 'earlier' });
      expect(outsideOf(text, NO_STEPS)).toBeNull();
      const heads = new Map([[key, splitRecord(text)?.head ?? null]]);
      const kept = {
        records: new Map([[key, text]]),
        open: storage.kept.get(OPEN_KEY) ?? null,
        earlier: null,
      };
      const opened = openKept(kept, { heads, newId, also: [], steps: NO_STEPS });
      expect(opened).toMatchObject({ isEarlier: true, unreadable: [], notices: [] });
    });
  });

  it('opens another client where the open one is damaged', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const bea = keyOf(storage, 'Bea');
    storage.kept.set(bea, 'nothing of ours');
    const tab = await openTab(storage);
    expect(openClient(present(tab)).name).toBe('Ada');
    expect(tab.books.keeping().notices).toEqual([{ kind: 'setAside', names: [], count: 1 }]);
  });
});

describe('a storage that fails', () => {
  it('is said where there is none, and the page works on', async () => {
    const tab = await openTab(null);
    expect(tab.books.keeping().notices).toEqual([{ kind: 'unavailable', reason: 'absent' }]);
    tab.rename('Ada');
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'failed', reason: 'absent' });
    expect(quarantinedIn(tab.books)).toEqual([]);
  });

  it('keeps new work beside what it would not let be read, and says that this can be read again', async () => {
    const storage = await storageOf('Ada');
    storage.refusesToRead = true;
    const tab = await openTab(storage);
    expect(tab.books.keeping().notices.map(noticeSentence).join()).toMatch(/did not let this page read/);
    tab.rename('Bea');
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'failed', reason: 'refused' });
    storage.refusesToRead = false;
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Bea']);
    expect(tab.books.keeping().notices.map(noticeSentence).join()).toMatch(/lets this page read again/);
  });

  it('that lists a client and does not give her out is said to be unread, and is read later', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const [hidden, text] = [keyOf(storage, 'Ada'), storage.kept.get(keyOf(storage, 'Ada'))];
    const read = storage.getItem.bind(storage);
    storage.getItem = (key) => (key === hidden ? null : read(key));
    const tab = await openTab(storage);
    expect(tab.books.keeping().notices).toEqual([{ kind: 'unavailable', reason: 'refused' }]);
    storage.getItem = read;
    tab.rename('Cleo');
    tab.books.flush();
    expect(tab.books.keeping().notices).toEqual([{ kind: 'readAgain' }]);
    expect(storage.kept.get(hidden)).toBe(text);
    expect(names(await openTab(storage))).toEqual(['Ada', 'Bea', 'Cleo']);
  });

  it('that could not be read and holds a book of the first layout has it moved at the next start', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: fixture(BOOK_VERSION) });
    storage.refusesToRead = true;
    const tab = await openTab(storage);
    tab.rename('Bea');
    storage.refusesToRead = false;
    tab.books.flush();
    expect(storage.kept.has(BOOK_KEY)).toBe(true);
    const next = await openTab(storage);
    expect(names(next)).toEqual(['Bea', 'Bram Tolliver', 'Orla Fenwick']);
  });

  it.each([
    ['full', (storage: FakeStorage) => Object.assign(storage, { room: 10 })],
    ['refused', (storage: FakeStorage) => Object.assign(storage, { refusesToWrite: true })],
  ] as const)(
    'holds on to the book while it is %s, and keeps it when that has passed',
    async (reason, spoil) => {
      const storage = await storageOf('Ada');
      const tab = await openTab(storage);
      spoil(storage);
      tab.rename('Bea');
      vi.advanceTimersByTime(300);
      expect(tab.books.status()).toEqual({ kind: 'failed', reason });
      expect(saveStatusSentence({ kind: 'failed', reason })).toMatch(/still whole in this tab/);
      expect(tab.books.isWaiting()).toBe(true);
      expect([...clientsIn(storage).keys()]).toEqual(['Ada']);
      Object.assign(storage, { room: Number.POSITIVE_INFINITY, refusesToWrite: false });
      tab.books.flush();
      expect([...clientsIn(storage).keys()]).toEqual(['Bea']);
      expect(tab.books.status()).toEqual({ kind: 'saved' });
      expect(tab.books.isWaiting()).toBe(false);
    },
  );

  it('is tried again once what was put aside is discarded', async () => {
    const storage = await storageOf('Ada');
    storage.kept.set(ASIDE, 'x'.repeat(5_000));
    const tab = await openTab(storage);
    storage.room = [...storage.kept].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
    tab.rename('Adah '.repeat(800));
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'failed', reason: 'full' });
    discard(tab.books, ASIDE);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(quarantinedIn(tab.books)).toEqual([]);
  });

  it('knows a full storage by either of its names', () => {
    expect(saveFaultOf(new DOMException('', 'QuotaExceededError'))).toBe('full');
    expect(saveFaultOf({ name: 'NS_ERROR_DOM_QUOTA_REACHED' })).toBe('full');
    expect(saveFaultOf(new Error('odd'))).toBe('refused');
    expect(saveFaultOf('odd')).toBe('refused');
  });

  it('takes a browser that throws when asked for its storage for one without', () => {
    const window = {
      get localStorage(): Storage {
        throw new DOMException('no', 'SecurityError');
      },
    };
    expect(browserStorage(window as Window)).toBeNull();
    expect(browserStorage(globalThis.window)).toBe(globalThis.window.localStorage);
  });

  it('is said to be full where one record does not fit and another is refused', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const tab = await openTab(storage);
    const [full, refused] = [keyOf(storage, 'Bea'), 'staywright.client.c'];
    const setItem = storage.setItem.bind(storage);
    storage.setItem = (key, value) => {
      if (key === full) throw new DOMException('full', 'QuotaExceededError');
      if (key === refused) throw new DOMException('no', 'SecurityError');
      setItem(key, value);
    };
    tab.rename('Beatrix');
    tab.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, 'c', 'Cleo'));
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'failed', reason: 'full' });
  });

  it('that drops which client is open is said, and is not taken for one that was cleared', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    tab.rename('Ada');
    const write = storage.setItem.bind(storage);
    storage.setItem = (key, value) => {
      if (key !== OPEN_KEY) write(key, value);
    };
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'failed', reason: 'refused' });
    tab.rename('Adah');
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'failed', reason: 'refused' });
    storage.setItem = write;
    tab.books.retry();
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(names(await openTab(storage))).toEqual(['Adah']);
  });

  it('that was cleared is said, and nothing is written until the user says so', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const tab = await openTab(storage);
    storage.kept.clear();
    tab.rename('Bea 2');
    tab.books.flush();
    expect(tab.books.status()).toEqual({ kind: 'cleared' });
    expect(storage.kept.size).toBe(0);
    expect(tab.books.isWaiting()).toBe(true);
    keepAgain(tab.books);
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Bea 2']);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
  });

  it('that was cleared is said too where only somebody new is to be kept, and she is kept with the others', async () => {
    const storage = await storageOf('Ada', 'Bea');
    const tab = await openTab(storage);
    const add = (name: string): void => {
      tab.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, newId(), name));
      tab.books.flush();
    };
    storage.kept.clear();
    add('Cleo');
    expect(tab.books.status()).toEqual({ kind: 'cleared' });
    storage.kept.clear();
    add('Dora');
    expect(storage.kept.size).toBe(0);
    keepAgain(tab.books);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(names(await openTab(storage))).toEqual(['Ada', 'Bea', 'Cleo', 'Dora']);
  });

  it('is said to be nearly full from four fifths on, until there is room', async () => {
    const storage = await storageOf('Ada');
    storage.kept.set('of another page', 'x'.repeat(4_500_000));
    const tab = await openTab(storage);
    expect(tab.books.keeping().notices).toEqual([{ kind: 'nearlyFull', percent: 86 }]);
    tab.books.storage?.removeItem('of another page');
    tab.rename('Bea');
    tab.books.flush();
    expect(tab.books.keeping().notices).toEqual([]);
  });
});

describe('a book of the first layout', () => {
  it.each([1, 2, 3, 4, 5, 6].filter((version) => version <= BOOK_VERSION))(
    'of version %i is moved into records, all of it, and then removed',
    async (version) => {
      const storage = new FakeStorage({ [BOOK_KEY]: fixture(version) });
      const tab = await openTab(storage);
      vi.runAllTimers();
      expect(tab.books.status()).toEqual({ kind: 'saved' });
      expect(storage.kept.has(BOOK_KEY)).toBe(false);
      const whole = readBook(fixture(version));
      const clients = whole.kind === 'book' ? whole.book.clients : [];
      expect([...clientsIn(storage).values()]).toEqual(expect.arrayContaining([...clients]));
      expect(JSON.parse(storage.kept.get(OPEN_KEY) ?? '')).toEqual({
        layout: LAYOUT,
        open: tab.store.getState().kept().openClient,
      });
    },
  );

  it('gives the invented client, who had one id everywhere, an id of her own', async () => {
    const book = {
      version: BOOK_VERSION,
      styles: [],
      clients: [{ ...DEMO_CLIENT, name: 'Ada' }],
      openClient: 'demo',
    };
    const storage = new FakeStorage({ [BOOK_KEY]: JSON.stringify(book) });
    const tab = await openTab(storage);
    vi.runAllTimers();
    const [ada] = present(tab).clients;
    expect(ada?.name).toBe('Ada');
    expect(ada?.id).not.toBe('demo');
    expect(present(tab).openClient).toBe(ada?.id);
  });

  it('with one bad client moves the others, and puts her aside whole', async () => {
    const book = JSON.parse(fixture(5));
    book.clients[0].measurements.bust = 'wide';
    const storage = new FakeStorage({ [BOOK_KEY]: JSON.stringify(book) });
    const tab = await openTab(storage);
    vi.runAllTimers();
    expect(names(tab)).toEqual(['Bram Tolliver']);
    expect(tab.books.keeping().notices.map(noticeSentence).join()).toMatch(
      /^Orla Fenwick could not be opened/,
    );
    expect(storage.kept.has(BOOK_KEY)).toBe(false);
    const [aside] = quarantinedIn(tab.books);
    expect(JSON.parse(aside?.text ?? '').clients).toEqual([book.clients[0]]);
  });

  it.each([
    ['cut off', fixture(6).slice(0, -9), 'unreadable'],
    ['empty', '', 'unreadable'],
    ['of another shape', '{"version":1,"clients":"Ada"}', 'unreadable'],
    ['of a later version', JSON.stringify({ version: BOOK_VERSION + 1, scrolls: [] }), 'newer'],
  ])('that is %s stays as it is, is said and can be looked into', async (_, text, kind) => {
    const storage = new FakeStorage({ [BOOK_KEY]: text });
    const tab = await openTab(storage);
    expect(tab.books.keeping().notices).toEqual([expect.objectContaining({ kind })]);
    expect(quarantinedIn(tab.books)).toEqual([{ key: BOOK_KEY, text }]);
    tab.rename('Bea');
    tab.books.flush();
    expect(storage.kept.get(BOOK_KEY)).toBe(text);
    const next = await openTab(storage);
    expect(names(next)).toEqual(['Bea']);
    expect(next.books.keeping().notices).toEqual([expect.objectContaining({ kind })]);
    discard(next.books, BOOK_KEY);
    expect(storage.kept.has(BOOK_KEY)).toBe(false);
  });

  it('for whose records there is no room beside it is deflated in its place first', async () => {
    const text = fixture(5);
    const storage = new FakeStorage({ [BOOK_KEY]: text });
    storage.room = text.length + BOOK_KEY.length + 50;
    const tab = await openTab(storage);
    vi.runAllTimers();
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(storage.kept.has(BOOK_KEY)).toBe(false);
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Bram Tolliver', 'Orla Fenwick']);
  });

  it('is moved a few clients at a time, so that the page answers between', async () => {
    const book = JSON.parse(fixture(5));
    const clients = Array.from({ length: 12 }, (_, i) => ({
      ...book.clients[0],
      id: `m${i}`,
      name: `M ${i}`,
    }));
    const storage = new FakeStorage({ [BOOK_KEY]: JSON.stringify({ ...book, clients, openClient: 'm3' }) });
    let now = 0;
    const clock = vi.spyOn(performance, 'now').mockImplementation(() => {
      now += 3;
      return now;
    });
    const tab = await openTab(storage);
    const written = (): number => storage.written.filter((key) => key.includes('.client.')).length;
    vi.advanceTimersToNextTimer();
    expect(written()).toBeGreaterThan(0);
    expect(written()).toBeLessThan(12);
    vi.runAllTimers();
    expect(written()).toBe(12);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(storage.kept.has(BOOK_KEY)).toBe(false);
    clock.mockRestore();
  });

  it('stays until a clash over one of its clients is ended', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: fixture(5) });
    const [first] = JSON.parse(fixture(5)).clients;
    const tab = await openTab(storage);
    const theirs = await openTab(new FakeStorage());
    theirs.rename('Theirs');
    // Another tab has moved her, and changed her since.
    const { name: _, ...other } = openClient(present(theirs));
    storage.kept.set(
      `staywright.client.${first.id}`,
      clientRecord({ ...other, id: first.id, name: 'Theirs' }, null),
    );
    vi.runAllTimers();
    expect(tab.books.status().kind).toBe('conflict');
    expect(storage.kept.get(BOOK_KEY)).toBe(fixture(5));
    expect([...namesIn(storage)]).toEqual(expect.arrayContaining([first.name, 'Theirs', 'Bram Tolliver']));
  });

  it('that a tab with an earlier build writes later is told and left alone', async () => {
    const storage = await storageOf('Ada');
    const tab = await openTab(storage);
    storage.kept.set(BOOK_KEY, fixture(5));
    await tab.hear(BOOK_KEY, fixture(5));
    expect(tab.books.keeping().notices).toEqual([{ kind: 'earlierBuild' }]);
    const next = await openTab(storage);
    expect(names(next)).toEqual(['Ada']);
    expect(next.books.keeping().notices).toEqual([{ kind: 'earlierBuild' }]);
    expect(quarantinedIn(next.books)).toEqual([{ key: BOOK_KEY, text: fixture(5) }]);
  });

  it('is left where a tab with an earlier build has written it since it was read', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: fixture(5) });
    const tab = await openTab(storage);
    storage.kept.set(BOOK_KEY, fixture(4));
    vi.advanceTimersByTime(1000);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(storage.kept.get(BOOK_KEY)).toBe(fixture(4));
    const next = await openTab(storage);
    expect(next.books.keeping().notices).toEqual([{ kind: 'earlierBuild' }]);
  });

  it('never puts one text over another that was put aside in the same moment', async () => {
    const book = JSON.parse(fixture(5));
    book.clients[0].unit = 'ell';
    const storage = new FakeStorage({ [BOOK_KEY]: JSON.stringify(book), [ASIDE]: 'older' });
    await openTab(storage);
    vi.runAllTimers();
    expect(storage.kept.get(ASIDE)).toBe('older');
    expect(namesIn(storage)).toContain('Orla Fenwick');
  });
});
