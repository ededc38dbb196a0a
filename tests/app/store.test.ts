import { describe, expect, it } from 'vitest';
import { createTable } from '../../src/app/store/store';
import { type Book, changeStyle, DEMO_BOOK, openClient, openSheet } from '../../src/document';

const hem = (mm: number) => (book: Book) => changeStyle(book, (style) => ({ ...style, hemBelow: mm }));

/** A table whose hem is moved by a key or a pull, step by step. */
function moving() {
  const table = createTable(DEMO_BOOK);
  const move = (mm: number, by: 'pull' | 'key' | 'sameKey'): void => {
    table.getState().show(hem(mm));
    table.getState().keep('hem', { value: `${mm} mm`, by });
  };
  const changes = () => table.getState().history.past.map(({ change }) => change);
  const hemNow = () => openSheet(openClient(table.getState().kept())).style.hemBelow;
  return { table, move, changes, hemNow };
}

describe('keys pressed in a row', () => {
  it('are one step, and each is kept at once', () => {
    const { table, move, changes, hemNow } = moving();
    move(90, 'key');
    for (const mm of [91, 92, 93]) {
      move(mm, 'sameKey');
      expect(hemNow()).toBe(mm);
    }
    expect(changes()).toEqual(['hem']);
    table.getState().undo();
    expect(table.getState().kept()).toBe(DEMO_BOOK);
    table.getState().redo();
    expect(hemNow()).toBe(93);
  });

  it('are two where the hand rested between', () => {
    const { move, changes } = moving();
    move(90, 'key');
    move(91, 'key');
    move(92, 'sameKey');
    expect(changes()).toEqual(['hem', 'hem']);
  });

  it.each<[string, (table: ReturnType<typeof moving>) => void, readonly string[], number]>([
    ['a change', ({ table }) => table.getState().change('seam', hem(50)), ['hem', 'seam', 'hem'], 50],
    [
      'an undo',
      ({ table }) => table.getState().undo(),
      ['hem'],
      openSheet(openClient(DEMO_BOOK)).style.hemBelow,
    ],
    [
      'an undo taken back',
      ({ table }) => {
        table.getState().undo();
        table.getState().redo();
      },
      ['hem', 'hem'],
      90,
    ],
    ['a pull', ({ move }) => move(70, 'pull'), ['hem', 'hem', 'hem'], 70],
    [
      'the page going away under a key',
      ({ table }) => {
        table.getState().show(hem(60));
        table.getState().keep('last change');
      },
      ['hem', 'last change', 'hem'],
      60,
    ],
  ])('do not go on behind %s', (_, between, expected, before) => {
    const moves = moving();
    moves.move(90, 'key');
    between(moves);
    moves.move(95, 'sameKey');
    expect(moves.changes()).toEqual(expected);
    moves.table.getState().undo();
    expect(moves.hemNow()).toBe(before);
  });

  it('do not go on behind a book from elsewhere', () => {
    const { table, move, changes } = moving();
    move(90, 'key');
    table.getState().open(hem(40)(DEMO_BOOK));
    move(95, 'sameKey');
    expect(changes()).toEqual(['hem']);
  });
});
