import { describe, expect, it } from 'vitest';
import { createStore } from '../../src/app/store/store';
import { type Book, type Change, changeStyle, DEMO_BOOK, openClient, openDraftOf } from '../../src/document';

const HEM: Change = { code: 'hemMoved' };
const hem = (mm: number) => (book: Book) => changeStyle(book, (style) => ({ ...style, hemBelow: mm }));

/** A table whose hem is moved by a key or a pull, step by step. */
function moving() {
  const store = createStore(DEMO_BOOK);
  const move = (mm: number, by: 'pull' | 'key' | 'sameKey'): void => {
    store.getState().show(hem(mm));
    store.getState().keep(HEM, { value: `${mm} mm`, by });
  };
  const changes = () => store.getState().history.past.map(({ change }) => change.code);
  const hemNow = () => openDraftOf(openClient(store.getState().kept())).style.hemBelow;
  return { table: store, move, changes, hemNow };
}

describe('keys pressed in a row', () => {
  it('are one step, and each is kept at once', () => {
    const { table: store, move, changes, hemNow } = moving();
    move(90, 'key');
    for (const mm of [91, 92, 93]) {
      move(mm, 'sameKey');
      expect(hemNow()).toBe(mm);
    }
    expect(changes()).toEqual(['hemMoved']);
    store.getState().undo();
    expect(store.getState().kept()).toBe(DEMO_BOOK);
    store.getState().redo();
    expect(hemNow()).toBe(93);
  });

  it('are two where the hand rested between', () => {
    const { move, changes } = moving();
    move(90, 'key');
    move(91, 'key');
    move(92, 'sameKey');
    expect(changes()).toEqual(['hemMoved', 'hemMoved']);
  });

  it.each<[string, (store: ReturnType<typeof moving>) => void, readonly string[], number]>([
    [
      'a change',
      ({ table: store }) => store.getState().change({ code: 'allowanceSet', edge: 'seam' }, hem(50)),
      ['hemMoved', 'allowanceSet', 'hemMoved'],
      50,
    ],
    [
      'an undo',
      ({ table: store }) => store.getState().undo(),
      ['hemMoved'],
      openDraftOf(openClient(DEMO_BOOK)).style.hemBelow,
    ],
    [
      'an undo taken back',
      ({ table: store }) => {
        store.getState().undo();
        store.getState().redo();
      },
      ['hemMoved', 'hemMoved'],
      90,
    ],
    ['a pull', ({ move }) => move(70, 'pull'), ['hemMoved', 'hemMoved', 'hemMoved'], 70],
    [
      'the page going away under a key',
      ({ table: store }) => {
        store.getState().show(hem(60));
        store.getState().keep({ code: 'passingChangeKept' });
      },
      ['hemMoved', 'passingChangeKept', 'hemMoved'],
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

  it('do not go on behind what another tab kept', () => {
    const { table: store, move, changes } = moving();
    move(90, 'key');
    store.getState().follow((history) => ({ ...history }));
    move(95, 'sameKey');
    expect(changes()).toEqual(['hemMoved', 'hemMoved']);
  });
});
