import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepHistory, packHistory, unpackHistory } from '../../../src/app/storage/book/historyStorage';
import { noticeSentence } from '../../../src/app/storage/keepingSentences';
import { HISTORY_KEY } from '../../../src/app/storage/records/record';
import { createStore } from '../../../src/app/store/store';
import {
  addClient,
  type Book,
  changeClient,
  changeStyle,
  DEMO_BOOK,
  type History,
  keepStyle,
  openClient,
  openDraftOf,
  record,
  removeClient,
  removeStyle,
  setStation,
  startHistory,
  undo,
} from '../../../src/document';
import { FakeStorage } from './fakeStorage';
import { clientsIn, keeperOf, openTab, present } from './keeper';

const named = (name: string) => (book: Book) => changeClient(book, (client) => ({ ...client, name }));

/** A history of changes of every kind, some of them undone. */
function worked(): History<Book> {
  let history = startHistory(DEMO_BOOK);
  const change = (name: string, step: (book: Book) => Book): void => {
    history = record(history, step(history.present), { code: 'clientOpened', name });
  };
  change('name', named('Ada'));
  change('wedge', (book) => changeStyle(book, (style) => setStation(style, 'front-bust', 0.2)));
  change('new', (book) => addClient(book, 'new', 'Bea'));
  change('gone', (book) => removeClient(book, 'new'));
  for (let i = 0; i < 150; i += 1) change(`name ${i}`, named(`Cleo ${i}`));
  return undo(undo(history));
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a kept history', () => {
  it('comes back whole, forwards and backwards', () => {
    const history = worked();
    const read = JSON.parse(JSON.stringify(history.present)) as Book;
    expect(unpackHistory(packHistory(history, 'seal').text, read, 'seal')).toEqual(history);
  });

  it('takes little room for many small changes', () => {
    expect(packHistory(worked(), 'seal').text.length).toBeLessThan(40_000);
  });

  it('lets go of what lies farthest back when it grows beyond its room', () => {
    let history = startHistory(DEMO_BOOK);
    for (let i = 0; i < 60; i += 1)
      history = record(history, named(`${i} ${'x'.repeat(10_000)}`)(history.present), {
        code: 'clientOpened',
        name: `name ${i}`,
      });
    const { text, steps } = packHistory(history, 'seal');
    expect(text.length).toBeLessThan(410_000);
    const back = unpackHistory(text, history.present, 'seal');
    expect(back.past.length).toBe(steps);
    expect(steps).toBeGreaterThan(30);
    expect(back.past).toEqual(history.past.slice(-back.past.length));
  });

  it.each([
    ['nothing', () => null],
    ['words', () => 'the quick brown fox'],
    ['a changed step', (text: string) => text.replace('Ada', 'Eve')],
    ['a text cut off', (text: string) => text.slice(0, -4)],
  ])('is empty where there is %s', (_, spoil) => {
    const history = worked();
    const found = unpackHistory(spoil(packHistory(history, 'seal').text), history.present, 'seal');
    expect(found).toEqual(startHistory(history.present));
  });

  it('is empty beside another book, and beside one with its clients in another order', () => {
    const history = worked();
    const { text } = packHistory(history, 'seal');
    expect(unpackHistory(text, history.present, 'another')).toEqual(startHistory(history.present));
    const other = addClient(history.present, 'x', 'X');
    expect(unpackHistory(text, other, 'seal')).toEqual(startHistory(other));
  });
});

describe('keeping the history', () => {
  it('follows the book, and is there for the next start, across clients who were opened', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    tab.rename('Ada');
    const { change } = tab.store.getState();
    change({ code: 'clientAdded' }, (book) => addClient(book, 'b', 'Bea'));
    tab.books.flush();
    const first = present(tab).clients[0]?.id ?? '';
    storage.kept.delete(HISTORY_KEY);
    const second = await openTab(storage);
    expect(present(second).unopened?.map(({ id }) => id)).toEqual([first]);
    second.open(first);
    second.rename('Adah');
    second.books.flush();
    const third = await openTab(storage);
    expect(third.store.getState().history).toEqual(second.store.getState().history);
    third.store.getState().undo();
    third.store.getState().undo();
    third.books.flush();
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Bea']);
    expect(third.books.status()).toEqual({ kind: 'saved' });
  });

  it('comes in a task of its own after the book, and at once where the page goes away', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    tab.rename('Ada');
    const isKept = (): boolean => storage.kept.has(HISTORY_KEY);
    while (!clientsIn(storage).has('Ada')) vi.advanceTimersToNextTimer();
    expect(isKept()).toBe(false);
    vi.advanceTimersToNextTimer();
    expect(isKept()).toBe(true);
    storage.kept.delete(HISTORY_KEY);
    tab.rename('Adah');
    tab.books.flush();
    expect(isKept()).toBe(true);
  });

  it('waits for a change that comes between the book and its task, so that it always belongs to the kept book', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    tab.rename('Ada');
    while (!clientsIn(storage).has('Ada')) vi.advanceTimersToNextTimer();
    tab.rename('Adah');
    vi.advanceTimersByTime(10);
    expect(storage.kept.has(HISTORY_KEY)).toBe(false);
    vi.runAllTimers();
    expect(clientsIn(storage).has('Adah')).toBe(true);
    expect((await openTab(storage)).store.getState().history).toEqual(tab.store.getState().history);
  });

  it.each(['one', 'two', 'three'])(
    'is there where a style was taken out and put back among others after a start: %s',
    async (taken) => {
      const storage = new FakeStorage();
      const tab = await openTab(storage);
      const { style } = openDraftOf(openClient(present(tab)));
      for (const id of ['one', 'two', 'three'])
        tab.store
          .getState()
          .change({ code: 'styleKept', title: id }, (book) => keepStyle(book, id, id, style, '2026-11-25'));
      tab.store.getState().change({ code: 'styleRemoved', title: taken }, (book) => removeStyle(book, taken));
      tab.books.flush();
      const second = await openTab(storage);
      second.store.getState().undo();
      second.books.flush();
      const third = await openTab(storage);
      expect(present(third).styles.map(({ id }) => id)).toEqual(['one', 'two', 'three']);
      expect(third.store.getState().history).toEqual(second.store.getState().history);
    },
  );

  it('makes way for the book when room runs out, and says so', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    tab.rename('Ada');
    tab.books.flush();
    storage.kept.set(HISTORY_KEY, 'x'.repeat(3_000));
    storage.room = [...storage.kept].reduce((sum, [key, text]) => sum + key.length + text.length, 0) + 20;
    tab.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, 'b', 'Bea'));
    tab.books.flush();
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Bea']);
    expect(storage.kept.get(HISTORY_KEY)?.startsWith('x')).not.toBe(true);
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(tab.books.keeping().notices.map(noticeSentence).join()).toMatch(/undo (holds only|goes back)/);
  });

  it('is kept too where what keeps it comes after the first change was kept', async () => {
    const storage = new FakeStorage();
    const books = keeperOf(storage);
    const { getState } = createStore(await books.load());
    getState().change({ code: 'clientAdded' }, (book) => addClient(book, 'b', 'Bea'));
    books.save(getState().history.present);
    books.flush();
    expect(storage.kept.has(HISTORY_KEY)).toBe(false);
    keepHistory(books, () => getState().history);
    expect((await openTab(storage)).store.getState().history.past).toHaveLength(1);
  });

  it('takes at most half of the room that is left, and says how far back it goes', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    storage.kept.set('of another page', 'x'.repeat(5_200_000));
    tab.books.storage?.getItem('of another page');
    for (let i = 0; i < 60; i += 1) tab.rename(`${i} ${'long '.repeat(200)}`);
    tab.books.flush();
    const kept = storage.kept.get(HISTORY_KEY)?.length ?? 0;
    expect(kept).toBeGreaterThan(1_000);
    expect(kept).toBeLessThan(25_000);
    const steps = (await openTab(storage)).store.getState().history.past.length;
    expect(tab.books.keeping().notices).toContainEqual({ kind: 'undoShortened', steps });
  });

  it('says nothing where it ends at its own limit and there is room enough', async () => {
    const storage = new FakeStorage();
    const tab = await openTab(storage);
    for (let i = 0; i < 60; i += 1) tab.rename(`${i} ${'x'.repeat(10_000)}`);
    tab.books.flush();
    expect((await openTab(storage)).store.getState().history.past.length).toBeLessThan(60);
    expect(tab.books.keeping().notices).toEqual([]);
  });

  it('does without a storage that refuses', async () => {
    const storage = new FakeStorage();
    storage.refusesToRead = true;
    for (const each of [storage, null])
      expect((await openTab(each)).store.getState().history.past).toEqual([]);
  });
});
