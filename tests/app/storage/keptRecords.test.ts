import { expect, it } from 'vitest';
import { KeptRecords, type Waiting } from '../../../src/app/storage/book/keptRecords';
import { addStyle, type Book, DEMO_BOOK } from '../../../src/document';
import { DEFAULT_STYLE } from '../../../src/engine';
import { FakeStorage } from './fakeStorage';

/** A book with styles of these names, in this order. */
const withStyles = (...names: string[]): Book => {
  const none: Book = { ...DEMO_BOOK, styles: [] };
  return names.reduce((book, name) => addStyle(book, name, name, DEFAULT_STYLE, '2026-11-25'), none);
};

/** The names of the styles that were kept, by the numbers they are sorted by. */
const namesByOrder = (kept: readonly Waiting[]): string[] =>
  [...kept].sort((a, b) => (a.order ?? 0) - (b.order ?? 0)).map(({ name }) => name);

it('gives styles that stand in another order numbers that sort them so', () => {
  const records = new KeptRecords(new FakeStorage());
  const kept = new Map<string, Waiting>();
  const keep = (book: Book): void => {
    for (const waiting of records.waiting(book)) {
      expect(records.write(waiting)).toBe('kept');
      if (waiting.order !== undefined) kept.set(waiting.key, waiting);
    }
  };
  keep(withStyles('one', 'two', 'three'));
  expect(namesByOrder([...kept.values()])).toEqual(['one', 'two', 'three']);
  keep(withStyles('three', 'one', 'two'));
  expect(namesByOrder([...kept.values()])).toEqual(['three', 'one', 'two']);
  const orders = [...kept.values()].map(({ order }) => order);
  expect(new Set(orders).size).toBe(3);
});
