import { act, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { KeepingNotices } from '../../../src/app/shell/KeepingNotices';
import { BOOK_KEY, createBookStorage } from '../../../src/app/storage/bookStorage';
import { type Book, DEMO_BOOK, DEMO_CLIENT } from '../../../src/document';
import { FakeStorage } from '../storage/fakeStorage';
import { onTable } from '../withStore';

const bookOf = (name: string): Book => ({ ...DEMO_BOOK, clients: [{ ...DEMO_CLIENT, name }] });

async function keep(fake: FakeStorage | null) {
  const storage = createBookStorage({ storage: fake, now: () => new Date('2026-11-25T09:41:00Z') });
  const { book, said } = await storage.load();
  const shown = onTable(<KeepingNotices keeping={{ storage, said }} />, book);
  const save = (name: string): void =>
    act(() => {
      storage.save(bookOf(name));
      storage.flush();
    });
  return { ...shown, storage, save };
}

describe('what keeping says', () => {
  it('is nothing while all is well', async () => {
    const { save, container } = await keep(new FakeStorage());
    save('Ada');
    expect(container).toBeEmptyDOMElement();
  });

  it('says that nothing is kept where there is no storage', async () => {
    await keep(null);
    expect(screen.getByRole('status')).toHaveTextContent('This browser keeps nothing for this page');
  });

  it('says when there is no room, and stops saying it when there is', async () => {
    const fake = new FakeStorage();
    const { save } = await keep(fake);
    fake.room = 10;
    save('Ada');
    expect(screen.getByRole('status')).toHaveTextContent('no room left to keep the book');
    expect(screen.getByRole('button', { name: 'Download a backup' })).toBeVisible();
    expect(screen.getByRole('status')).not.toHaveTextContent('put aside');
    fake.room = Number.POSITIVE_INFINITY;
    save('Bea');
    expect(screen.queryByText(/no room left/)).toBeNull();
  });

  it('names what was put aside as room to be had, where there is any', async () => {
    const fake = new FakeStorage({ [BOOK_KEY]: '{"version":1' });
    const { save } = await keep(fake);
    fake.room = 10;
    save('Ada');
    expect(screen.getByText(/no room left/)).toHaveTextContent('What was put aside takes up room too');
  });

  it('offers what was put aside, and lets it go on the second press only', async () => {
    const fake = new FakeStorage({ [BOOK_KEY]: '{"version":1' });
    const { user, storage } = await keep(fake);
    expect(screen.getByRole('status')).toHaveTextContent('It was put aside whole');
    await user.click(screen.getByRole('button', { name: 'Discard' }));
    expect(storage.quarantined()).toHaveLength(1);
    await user.click(screen.getByRole('button', { name: 'Discard it for good' }));
    expect(storage.quarantined()).toEqual([]);
    expect(screen.queryByRole('button', { name: 'Download it' })).toBeNull();
  });

  it('lets the maker choose between two tabs, and puts the other book aside', async () => {
    const fake = new FakeStorage();
    const { user, save, storage, store } = await keep(fake);
    save('Ada');
    fake.kept.set(BOOK_KEY, JSON.stringify(bookOf('Theirs')));
    save('Ours');
    expect(JSON.parse(fake.kept.get(BOOK_KEY) ?? '').clients[0].name).toBe('Theirs');
    await user.click(screen.getByRole('button', { name: 'Go on with the other’s' }));
    expect(store.getState().history.present.clients[0]?.name).toBe('Theirs');
    expect(storage.quarantined().map(({ text }) => JSON.parse(text).clients[0].name)).toEqual(['Ours']);
    expect(screen.queryByRole('button', { name: 'Go on with this tab’s' })).toBeNull();
  });
});
