import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BOOK_KEY, createBookStorage } from '../../../src/app/storage/bookStorage';
import {
  HISTORY_KEY,
  keepHistory,
  loadHistory,
  packHistory,
  unpackHistory,
} from '../../../src/app/storage/historyStorage';
import {
  addClient,
  type Book,
  changeClient,
  changeStyle,
  DEMO_BOOK,
  type History,
  readBook,
  record,
  removeClient,
  setStation,
  startHistory,
  undo,
} from '../../../src/document';
import { FakeStorage } from './fakeStorage';

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
    const text = JSON.stringify(history.present);
    const read = readBook(text);
    expect(read.kind === 'book' && unpackHistory(packHistory(history), read.book, text)).toEqual(history);
  });

  it('takes little room for many small changes', () => {
    expect(packHistory(worked()).length).toBeLessThan(40_000);
  });

  it('lets go of what lies farthest back when it grows beyond its room', () => {
    let history = startHistory(DEMO_BOOK);
    for (let i = 0; i < 60; i += 1)
      history = record(history, named(`${i} ${'x'.repeat(10_000)}`)(history.present), {
        code: 'clientOpened',
        name: `name ${i}`,
      });
    const text = packHistory(history);
    expect(text.length).toBeLessThan(410_000);
    const back = unpackHistory(text, history.present, JSON.stringify(history.present));
    expect(back.past.length).toBeGreaterThan(30);
    expect(back.past).toEqual(history.past.slice(-back.past.length));
  });

  it.each([
    ['nothing', () => null],
    ['words', () => 'the quick brown fox'],
    ['a changed step', (text: string) => text.replace('Ada', 'Eve')],
    ['a text cut off', (text: string) => text.slice(0, -4)],
  ])('is empty where there is %s', (_, spoil) => {
    const history = worked();
    const text = JSON.stringify(history.present);
    const found = unpackHistory(spoil(packHistory(history)), history.present, text);
    expect(found).toEqual(startHistory(history.present));
  });

  it('is empty beside another book', () => {
    const other = named('Theirs')(DEMO_BOOK);
    expect(unpackHistory(packHistory(worked()), other, JSON.stringify(other))).toEqual(startHistory(other));
  });
});

describe('keeping the history', () => {
  async function keeper(storage: FakeStorage, history: () => History<Book>) {
    const books = createBookStorage({ storage, now: () => new Date(0) });
    await books.load();
    keepHistory(storage, books, history);
    return books;
  }

  it('follows the book, and is there for the next start', async () => {
    const storage = new FakeStorage();
    const history = worked();
    const books = await keeper(storage, () => history);
    books.save(history.present);
    expect(storage.kept.has(HISTORY_KEY)).toBe(false);
    books.flush();
    expect(loadHistory(storage, history.present)).toEqual(history);
  });

  it('makes way for the book when room runs out', async () => {
    const history = worked();
    const storage = new FakeStorage({ [HISTORY_KEY]: 'x'.repeat(5_000) });
    const book = history.present;
    storage.room = JSON.stringify(book).length + 100;
    const books = await keeper(storage, () => history);
    books.save(book);
    books.flush();
    expect(storage.kept.get(BOOK_KEY)).toBe(JSON.stringify(book));
    expect(storage.kept.has(HISTORY_KEY)).toBe(false);
    expect(books.status()).toEqual({ kind: 'saved' });
  });

  it('does without a storage that refuses', async () => {
    const storage = new FakeStorage();
    storage.refusesToRead = true;
    expect(loadHistory(storage, DEMO_BOOK)).toEqual(startHistory(DEMO_BOOK));
    expect(loadHistory(null, DEMO_BOOK)).toEqual(startHistory(DEMO_BOOK));
  });
});
