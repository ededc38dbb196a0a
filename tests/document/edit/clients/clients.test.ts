import { describe, expect, it } from 'vitest';
import {
  addClient,
  addDraft,
  archiveClient,
  type Book,
  byLastUse,
  DEMO_BOOK,
  DEMO_CLIENT,
  duplicateClient,
  openClient,
  openClientOf,
  openDraftOf,
  readBook,
  removeClient,
  removeDraft,
} from '../../../../src/document';

const two = addClient(DEMO_BOOK, 'bea', 'Bea');
const names = (book: Book): string[] => book.clients.map(({ name }) => name);

describe('the list of clients', () => {
  it('gets a new client with nothing measured and one draft, and opens her', () => {
    const bea = openClient(two);
    expect(bea).toMatchObject({ name: 'Bea', unit: 'in', takenOn: null, earlier: [] });
    expect(Object.values(bea.measurements).every((each) => each === null)).toBe(true);
    expect(readBook(JSON.stringify(two))).toEqual({ kind: 'book', book: two });
  });

  it('gets copies under names of their own', () => {
    const copied = duplicateClient(duplicateClient(two, 'demo', 'b'), 'b', 'c');
    expect(names(copied)).toEqual(['Wren Abernathy', 'Bea', 'Wren Abernathy 2', 'Wren Abernathy 3']);
    expect(openClient(copied)).toMatchObject({ id: 'c', measurements: DEMO_CLIENT.measurements });
    expect(duplicateClient(two, 'nobody', 'x')).toBe(two);
  });

  it('is sorted by last use, the archive last', () => {
    const used = openClientOf(
      openClientOf(two, 'demo', '2026-11-25T10:00:00Z'),
      'bea',
      '2026-11-25T11:00:00Z',
    );
    expect([...used.clients].sort(byLastUse).map(({ id }) => id)).toEqual(['bea', 'demo']);
    const archived = archiveClient(used, 'bea', true);
    expect([...archived.clients].sort(byLastUse).map(({ id }) => id)).toEqual(['demo', 'bea']);
    expect(archiveClient(archived, 'bea', false)).toEqual(used);
  });

  it('opens another when the open one goes, and keeps the last', () => {
    const gone = removeClient(two, 'bea');
    expect(names(gone)).toEqual(['Wren Abernathy']);
    expect(openClient(gone).id).toBe('demo');
    expect(removeClient(gone, 'demo')).toBe(gone);
    expect(openClient(removeClient(two, 'demo')).id).toBe('bea');
  });
});

describe('the drafts of a client', () => {
  it('are added as copies or anew, and taken off but for the last', () => {
    const copied = addDraft(DEMO_CLIENT, 's2', 'copy');
    const fresh = addDraft(copied, 's3', 'default');
    expect(fresh.drafts.map(({ name }) => name)).toEqual([
      'Winter ball bodice',
      'Winter ball bodice 2',
      'New draft',
    ]);
    expect(openDraftOf(copied).style).toBe(DEMO_CLIENT.drafts[0]?.style);
    const less = removeDraft(removeDraft(fresh, 's3'), 'demo-ball');
    expect(less.drafts.map(({ id }) => id)).toEqual(['s2']);
    expect(openDraftOf(less).id).toBe('s2');
    expect(removeDraft(less, 's2')).toBe(less);
  });
});
