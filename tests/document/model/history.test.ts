import { describe, expect, it } from 'vitest';
import { type Change, type History, record, redo, startHistory, undo } from '../../../src/document';

const changes = ({ past }: History<string>): string[] => past.map(({ change }) => change.code);

const pull: Change = { code: 'wedgeMoved', wedge: null };
const hem: Change = { code: 'hemMoved' };
const other: Change = { code: 'unitSet' };

describe('a change that goes on with the last one', () => {
  const one = record(startHistory('a'), 'b', pull);

  it('is one step with it, under its code', () => {
    const two = record(record(one, 'c', pull, true), 'd', other, true);
    expect(two).toEqual({ past: [{ state: 'a', change: pull }], present: 'd', future: [] });
    expect(undo(two).present).toBe('a');
    expect(redo(undo(two))).toEqual(two);
  });

  it('leaves the steps before it alone', () => {
    const two = record(record(one, 'c', hem), 'd', hem, true);
    expect(changes(two)).toEqual(['wedgeMoved', 'hemMoved']);
    expect(undo(two).present).toBe('b');
  });

  it('records nothing where nothing changed', () => {
    expect(record(one, 'b', pull, true)).toBe(one);
  });

  it('is a step of its own where nothing was recorded, or the last change was undone', () => {
    const start = startHistory('a');
    expect(record(start, 'b', pull, true)).toEqual(one);
    const back = undo(record(one, 'c', hem));
    const anew = record(back, 'd', hem, true);
    expect(changes(anew)).toEqual(['wedgeMoved', 'hemMoved']);
    expect(undo(anew).present).toBe('b');
    expect(anew.future).toEqual([]);
  });

  it('never pushes an older step out', () => {
    let history = startHistory(0);
    for (let i = 1; i <= 3; i += 1) history = record(history, i, hem);
    for (let i = 4; i < 500; i += 1) history = record(history, i, pull, true);
    expect(history.past.map(({ state }) => state)).toEqual([0, 1, 2]);
    expect(history.present).toBe(499);
  });
});
