// What another tab kept, in the history of this one; and the marks on a client that follow from a change.

import { describe, expect, it } from 'vitest';
import {
  addClient,
  type Book,
  changeClient,
  demoBook,
  followed,
  isOwn,
  openClient,
  openClientOf,
  record,
  setMeasurement,
  startHistory,
  withStamps,
} from '../../../src/document';

const NOW = '2026-11-25T09:41:00.000Z';
const named = (book: Book, name: string): Book => changeClient(book, (client) => ({ ...client, name }));

describe('following another tab', () => {
  const start = named(demoBook('a'), 'Ada');
  const added = addClient(start, 'b', 'Bea');
  const history = record(startHistory(start), added, { code: 'clientAdded' });

  it('leaves out the steps in which somebody was open who is gone', () => {
    const renamed = record(history, named(added, 'Beatrix'), { code: 'clientRenamed' });
    const { past, present } = followed(renamed, [{ kind: 'client', id: 'a', now: null }]);
    expect(present.clients.map(({ name }) => name)).toEqual(['Beatrix']);
    expect(past.map(({ state }) => state.clients.map(({ name }) => name))).toEqual([['Bea']]);
  });

  it('leaves out a step that comes to nothing by it', () => {
    const [, bea] = added.clients;
    if (!bea) throw new Error('she was not added');
    const renamed = record(startHistory(added), named(added, 'Beatrix'), { code: 'clientRenamed' });
    const unopened = {
      id: 'b',
      name: 'Bee',
      archived: false,
      lastUsed: null,
      draftNames: [],
      record: '',
    };
    const now = { client: { ...bea, name: 'Bee' }, unopened };
    const { past, present } = followed(renamed, [{ kind: 'client', id: 'b', now }]);
    expect(openClient(present).name).toBe('Bee');
    expect(past).toEqual([]);
  });
});

describe('the marks of a change', () => {
  const book = demoBook('a');
  const stamped = (after: Book) => openClient(withStamps(book, after, NOW));

  it('are her own name and the time', () => {
    expect(stamped(named(book, 'Ada'))).toMatchObject({ name: 'Ada', changed: NOW });
    expect(stamped(named(book, 'Ada'))).not.toHaveProperty('invented');
  });

  it('make somebody of one’s own of the invented client who is measured, under her name', () => {
    const measured = stamped(changeClient(book, (client) => setMeasurement(client, 'waist', 700)));
    expect(measured).toMatchObject({ invented: true, changed: NOW });
    expect([openClient(book), measured].map(isOwn)).toEqual([false, true]);
  });

  it('are none where she was only opened', () => {
    const opened = openClientOf(book, 'a', NOW);
    expect(openClient(opened).lastUsed).toBe(NOW);
    expect(stamped(opened)).not.toHaveProperty('changed');
  });
});
