import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BOOK_KEY, type BookStorage, createBookStorage } from '../../../src/app/storage/bookStorage';
import { noticeSentence, saveStatusSentence } from '../../../src/app/storage/keepingSentences';
import { type SaveStatus, saveFaultOf } from '../../../src/app/storage/saveStatus';
import { browserStorage } from '../../../src/app/storage/storageLike';
import { BOOK_VERSION, type Book, DEMO_BOOK, DEMO_CLIENT, readBook } from '../../../src/document';
import { FakeStorage } from './fakeStorage';

const NOW = new Date('2026-11-25T09:41:00.000Z');
const ASIDE = `staywright.aside.${NOW.toISOString()}`;

/** A book that tells itself apart by its client's name. */
const bookOf = (name: string): Book => ({ ...DEMO_BOOK, clients: [{ ...DEMO_CLIENT, name }] });
const textOf = (name: string): string => JSON.stringify(bookOf(name));
const nameIn = (text: string | null | undefined): string | undefined => {
  const read = readBook(text ?? '');
  return read.kind === 'book' ? read.book.clients[0]?.name : read.kind;
};
const keeperOf = (storage: FakeStorage | null): BookStorage => createBookStorage({ storage, now: () => NOW });
const kept = (storage: FakeStorage): string | undefined => nameIn(storage.kept.get(BOOK_KEY));

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the first look', () => {
  it('gives the demo book and writes nothing on a first start', async () => {
    const storage = new FakeStorage();
    expect(await keeperOf(storage).load()).toEqual({ book: DEMO_BOOK, said: [] });
    expect(storage.written).toEqual([]);
  });

  it('gives the book that was kept', async () => {
    const keeper = keeperOf(new FakeStorage({ [BOOK_KEY]: textOf('Ada') }));
    expect(await keeper.load()).toEqual({ book: bookOf('Ada'), said: [] });
    expect(keeper.status()).toEqual({ kind: 'saved' });
  });

  it('fetches what reads a book only where there is a text to read, and changes nothing where it cannot', async () => {
    vi.doMock('../../../src/app/storage/bookReader', () => {
      throw new TypeError('Failed to fetch dynamically imported module');
    });
    vi.resetModules();
    try {
      const fresh = await import('../../../src/app/storage/bookStorage');
      const load = (storage: FakeStorage) => fresh.createBookStorage({ storage, now: () => NOW }).load();
      expect((await load(new FakeStorage())).said).toEqual([]);
      const storage = new FakeStorage({ [BOOK_KEY]: textOf('Ada') });
      await expect(load(storage)).rejects.toThrow();
      expect(storage.written).toEqual([]);
    } finally {
      vi.doUnmock('../../../src/app/storage/bookReader');
    }
  });

  it.each([
    ['cut off', textOf('Ada').slice(0, -9), 'unreadable'],
    ['empty', '', 'unreadable'],
    ['of another shape', '{"version":1,"clients":"Ada"}', 'unreadable'],
    ['of a later version', JSON.stringify({ version: BOOK_VERSION + 1, scrolls: [] }), 'newer'],
  ])('puts a text that is %s aside before anything is written over it', async (_, text, kind) => {
    const storage = new FakeStorage({ [BOOK_KEY]: text });
    const keeper = keeperOf(storage);
    const { book, said } = await keeper.load();
    expect(book).toBe(DEMO_BOOK);
    expect(said).toEqual([expect.objectContaining({ kind, quarantineKey: ASIDE })]);
    expect(said.map(noticeSentence).join()).toMatch(/put aside whole/);
    expect(keeper.quarantined()).toEqual([{ key: ASIDE, text }]);
    keeper.save(bookOf('Bea'));
    keeper.flush();
    expect(storage.written).toEqual([ASIDE, BOOK_KEY]);
    expect(kept(storage)).toBe('Bea');
    expect(keeper.quarantined()).toEqual([{ key: ASIDE, text }]);
  });

  it('puts the same text aside once, however often the page is opened', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: 'broken' });
    await keeperOf(storage).load();
    expect((await keeperOf(storage).load()).said).toEqual([
      expect.objectContaining({ quarantineKey: ASIDE }),
    ]);
    expect(storage.written).toEqual([ASIDE]);
  });

  it('never puts one text over another that was put aside in the same moment', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: 'broken', [ASIDE]: 'older' });
    const keeper = keeperOf(storage);
    await keeper.load();
    expect(keeper.quarantined()).toEqual([
      { key: ASIDE, text: 'older' },
      { key: `${ASIDE}.2`, text: 'broken' },
    ]);
  });

  it('works on without storage and says that nothing is kept', async () => {
    const keeper = keeperOf(null);
    expect(await keeper.load()).toEqual({
      book: DEMO_BOOK,
      said: [{ kind: 'unavailable', reason: 'absent' }],
    });
    keeper.save(bookOf('Ada'));
    keeper.flush();
    expect(keeper.status()).toEqual({ kind: 'failed', reason: 'absent' });
    expect(keeper.quarantined()).toEqual([]);
    keeper.discard(BOOK_KEY);
    expect(keeper.keepOurs()).toBe(false);
    expect(keeper.takeTheirs(readBook)).toBeNull();
  });

  it('does not write over a book it was not allowed to read', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: textOf('Ada') });
    storage.refusesToRead = true;
    const keeper = keeperOf(storage);
    expect((await keeper.load()).said).toEqual([{ kind: 'unavailable', reason: 'refused' }]);
    keeper.save(bookOf('Bea'));
    keeper.flush();
    expect(keeper.status()).toEqual({ kind: 'failed', reason: 'refused' });
    storage.refusesToRead = false;
    keeper.flush();
    expect(keeper.status()).toEqual({ kind: 'conflict', beside: true });
    expect(kept(storage)).toBe('Ada');
    expect(nameIn(storage.kept.get(ASIDE))).toBe('Bea');
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
});

describe('keeping', () => {
  it('keeps the last of many quick changes, once, when they stop', async () => {
    const storage = new FakeStorage();
    const keeper = keeperOf(storage);
    await keeper.load();
    for (const name of ['A', 'Ad', 'Ada']) {
      keeper.save(bookOf(name));
      vi.advanceTimersByTime(200);
    }
    expect(keeper.status()).toEqual({ kind: 'pending' });
    expect(storage.written).toEqual([]);
    vi.advanceTimersByTime(100);
    expect(storage.written).toEqual([BOOK_KEY]);
    expect(kept(storage)).toBe('Ada');
    expect(keeper.status()).toEqual({ kind: 'saved' });
  });

  it('keeps at once when told to, and not a second time', async () => {
    const storage = new FakeStorage();
    const keeper = keeperOf(storage);
    await keeper.load();
    keeper.flush();
    expect(storage.written).toEqual([]);
    keeper.save(bookOf('Ada'));
    keeper.flush();
    vi.advanceTimersByTime(1000);
    keeper.flush();
    expect(storage.written).toEqual([BOOK_KEY]);
  });

  it('tells every listener until it leaves', async () => {
    const keeper = keeperOf(new FakeStorage());
    await keeper.load();
    const heard: SaveStatus[] = [];
    const leave = keeper.subscribe((status) => heard.push(status));
    keeper.save(bookOf('Ada'));
    keeper.flush();
    leave();
    keeper.save(bookOf('Bea'));
    expect(heard).toEqual([{ kind: 'pending' }, { kind: 'saved' }]);
  });

  it.each([
    ['full', (storage: FakeStorage) => Object.assign(storage, { room: 10 })],
    ['refused', (storage: FakeStorage) => Object.assign(storage, { refusesToWrite: true })],
  ] as const)(
    'holds on to the book while the storage is %s, and keeps it with the next change',
    async (reason, spoil) => {
      const storage = new FakeStorage({ [BOOK_KEY]: textOf('Ada') });
      const keeper = keeperOf(storage);
      await keeper.load();
      spoil(storage);
      keeper.save(bookOf('Bea'));
      vi.advanceTimersByTime(300);
      expect(keeper.status()).toEqual({ kind: 'failed', reason });
      expect(saveStatusSentence(keeper.status())).toMatch(/still whole in this tab/);
      expect(kept(storage)).toBe('Ada');
      Object.assign(storage, { room: Number.POSITIVE_INFINITY, refusesToWrite: false });
      keeper.flush();
      expect(kept(storage)).toBe('Bea');
      expect(keeper.status()).toEqual({ kind: 'saved' });
    },
  );

  it('knows a full storage by either of its names', () => {
    expect(saveFaultOf(new DOMException('', 'QuotaExceededError'))).toBe('full');
    expect(saveFaultOf({ name: 'NS_ERROR_DOM_QUOTA_REACHED' })).toBe('full');
    expect(saveFaultOf(new Error('odd'))).toBe('refused');
    expect(saveFaultOf('odd')).toBe('refused');
  });
});

describe('a text that can be neither opened nor put aside', () => {
  const broken = 'x'.repeat(100);
  const guarded = (): { storage: FakeStorage; keeper: BookStorage } => {
    const storage = new FakeStorage({ [BOOK_KEY]: broken });
    storage.room = 150;
    return { storage, keeper: keeperOf(storage) };
  };

  it('is said, offered for download and not written over', async () => {
    const { storage, keeper } = guarded();
    const { said } = await keeper.load();
    expect(said).toEqual([expect.objectContaining({ kind: 'unreadable', quarantineKey: null })]);
    expect(said.map(noticeSentence).join()).toMatch(/nothing is written over it/);
    expect(keeper.status()).toEqual({ kind: 'failed', reason: 'guarding' });
    keeper.save(bookOf('Ada'));
    vi.advanceTimersByTime(300);
    expect(keeper.status()).toEqual({ kind: 'failed', reason: 'guarding' });
    expect(storage.kept.get(BOOK_KEY)).toBe(broken);
    expect(keeper.quarantined()).toEqual([{ key: BOOK_KEY, text: broken }]);
  });

  it('is put aside as soon as there is room, and then the book is kept', async () => {
    const { storage, keeper } = guarded();
    await keeper.load();
    keeper.save(bookOf('Ada'));
    keeper.flush();
    storage.room = Number.POSITIVE_INFINITY;
    keeper.flush();
    expect(storage.kept.get(ASIDE)).toBe(broken);
    expect(kept(storage)).toBe('Ada');
  });

  it('gives way when the maker discards it', async () => {
    const { storage, keeper } = guarded();
    await keeper.load();
    keeper.save(bookOf('Ada'));
    keeper.flush();
    storage.room = 1e6;
    keeper.discard(BOOK_KEY);
    expect(kept(storage)).toBe('Ada');
    expect(keeper.quarantined()).toEqual([]);
  });

  it('is the only thing under the book’s key that can be discarded', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: textOf('Ada'), other: 'of another page', [ASIDE]: 'old' });
    const keeper = keeperOf(storage);
    await keeper.load();
    keeper.discard(BOOK_KEY);
    keeper.discard('other');
    keeper.discard(ASIDE);
    expect([...storage.kept.keys()]).toEqual([BOOK_KEY, 'other']);
  });
});

describe('two tabs', () => {
  const twoTabs = async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: textOf('Start') });
    const [ours, theirs] = [keeperOf(storage), keeperOf(storage)];
    await ours.load();
    await theirs.load();
    theirs.save(bookOf('Theirs'));
    theirs.flush();
    ours.save(bookOf('Ours 1'));
    ours.flush();
    return { storage, ours, theirs };
  };
  const asideNames = (keeper: BookStorage): (string | undefined)[] =>
    keeper.quarantined().map(({ text }) => nameIn(text));

  it('keep both books, one place each, until the maker chooses', async () => {
    const { storage, ours } = await twoTabs();
    expect(ours.status()).toEqual({ kind: 'conflict', beside: true });
    expect(saveStatusSentence(ours.status())).toMatch(/^Another tab/);
    ours.save(bookOf('Ours 2'));
    vi.advanceTimersByTime(300);
    expect(kept(storage)).toBe('Theirs');
    expect(asideNames(ours)).toEqual(['Ours 2']);
  });

  it('can go on with ours, theirs put aside', async () => {
    const { storage, ours, theirs } = await twoTabs();
    ours.save(bookOf('Ours 2'));
    ours.keepOurs();
    expect(ours.status()).toEqual({ kind: 'saved' });
    expect(kept(storage)).toBe('Ours 2');
    expect(asideNames(ours)).toEqual(['Theirs']);
    vi.advanceTimersByTime(1000);
    theirs.save(bookOf('Theirs 2'));
    theirs.flush();
    expect(theirs.status()).toEqual({ kind: 'conflict', beside: true });
    expect(kept(storage)).toBe('Ours 2');
  });

  it('can go on with theirs, ours put aside', async () => {
    const { storage, ours } = await twoTabs();
    ours.save(bookOf('Ours 2'));
    expect(ours.takeTheirs(readBook)).toEqual({ book: bookOf('Theirs'), said: [] });
    expect(asideNames(ours)).toEqual(['Ours 2']);
    ours.save(bookOf('On from theirs'));
    ours.flush();
    expect(kept(storage)).toBe('On from theirs');
    expect(ours.status()).toEqual({ kind: 'saved' });
  });

  it('lose nothing when there is no room for a second book', async () => {
    const { storage, ours } = await twoTabs();
    storage.refusesToWrite = true;
    ours.save(bookOf('Ours 2'));
    ours.flush();
    expect(ours.status()).toEqual({ kind: 'conflict', beside: false });
    expect(saveStatusSentence(ours.status())).toMatch(/leave it open/);
    expect(ours.takeTheirs(readBook)).toBeNull();
    expect(ours.keepOurs()).toBe(false);
    expect(ours.status()).toEqual({ kind: 'conflict', beside: false });
    expect(kept(storage)).toBe('Theirs');
    storage.refusesToWrite = false;
    expect(ours.keepOurs()).toBe(true);
    expect(kept(storage)).toBe('Ours 2');
    expect(asideNames(ours)).toEqual(['Theirs']);
  });

  it('never share a key for what they put aside', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: textOf('Start'), [ASIDE]: textOf('Ours 1') });
    const [ours, theirs] = [keeperOf(storage), keeperOf(storage)];
    await ours.load();
    await theirs.load();
    theirs.save(bookOf('Theirs'));
    theirs.flush();
    for (const name of ['Ours 1', 'Ours 2']) {
      ours.save(bookOf(name));
      ours.flush();
    }
    expect(asideNames(ours)).toEqual(['Ours 1', 'Ours 2']);
  });

  it('write on where the kept book was cleared away', async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: textOf('Start') });
    const keeper = keeperOf(storage);
    await keeper.load();
    storage.kept.clear();
    keeper.save(bookOf('Ada'));
    keeper.flush();
    expect(kept(storage)).toBe('Ada');
  });
});

describe('the page', () => {
  const hide = (state: 'hidden' | 'visible'): void => {
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue(state);
    document.dispatchEvent(new Event('visibilitychange'));
  };
  const otherTabWrote = (storage: FakeStorage, name: string): void => {
    storage.kept.set(BOOK_KEY, textOf(name));
    window.dispatchEvent(new StorageEvent('storage', { key: BOOK_KEY, newValue: textOf(name) }));
  };
  const attached = async () => {
    const storage = new FakeStorage({ [BOOK_KEY]: textOf('Start') });
    const keeper = keeperOf(storage);
    await keeper.load();
    return { storage, keeper, detach: keeper.attachFlush(window) };
  };

  it('keeps what waits when it is hidden or left, and not after it is let go', async () => {
    const { storage, keeper, detach } = await attached();
    keeper.save(bookOf('Ada'));
    hide('visible');
    expect(kept(storage)).toBe('Start');
    hide('hidden');
    expect(kept(storage)).toBe('Ada');
    keeper.save(bookOf('Bea'));
    window.dispatchEvent(new Event('pagehide'));
    expect(kept(storage)).toBe('Bea');
    detach();
    keeper.save(bookOf('Cora'));
    window.dispatchEvent(new Event('pagehide'));
    hide('hidden');
    expect(kept(storage)).toBe('Bea');
  });

  it('says at once when another tab keeps another book', async () => {
    const { storage, keeper, detach } = await attached();
    window.dispatchEvent(new StorageEvent('storage', { key: 'other', newValue: 'x' }));
    expect(keeper.status()).toEqual({ kind: 'saved' });
    otherTabWrote(storage, 'Theirs');
    expect(keeper.status()).toEqual({ kind: 'conflict', beside: true });
    expect(keeper.takeTheirs(readBook)?.book).toEqual(bookOf('Theirs'));
    expect(keeper.quarantined()).toEqual([]);
    detach();
  });

  it('keeps waiting changes beside when another tab keeps another book', async () => {
    const { storage, keeper, detach } = await attached();
    keeper.save(bookOf('Ours'));
    otherTabWrote(storage, 'Theirs');
    expect(keeper.status()).toEqual({ kind: 'conflict', beside: true });
    expect(keeper.quarantined().map(({ text }) => nameIn(text))).toEqual(['Ours']);
    detach();
  });
});
