import { readFileSync } from 'node:fs';
import { act, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { KeepingNotices } from '../../../../src/app/shell/notices/KeepingNotices';
import { quarantinedIn } from '../../../../src/app/storage/asides';
import { BOOK_KEY, clientRecord, recordKey } from '../../../../src/app/storage/records/record';
import { addClient, entriesOf, openClient } from '../../../../src/document';
import { FakeStorage } from '../../storage/fakeStorage';
import { clientsIn, newId, openTab, present } from '../../storage/keeper';
import { keptOnTable } from '../keptOnTable';

async function keep(fake: FakeStorage | null) {
  const shown = await keptOnTable(<KeepingNotices />, fake);
  const { tab } = shown;
  const save = (name: string): void =>
    act(() => {
      tab.rename(name);
      tab.books.flush();
    });
  return { ...shown, save };
}

const BAD = (): string => {
  const book = JSON.parse(readFileSync('tests/document/model/fixtures/book-v6.json', 'utf8'));
  book.clients[0].measurements.waist = 'narrow';
  return JSON.stringify(book);
};

describe('what keeping says', () => {
  it('is nothing while all is well', async () => {
    const { save, container } = await keep(new FakeStorage());
    save('Ada');
    expect(container).toBeEmptyDOMElement();
  });

  it('says that nothing is kept where there is no storage', async () => {
    const { save } = await keep(null);
    save('Ada');
    expect(screen.getAllByText(/This browser keeps nothing for this page/)).toHaveLength(1);
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
    const { user, tab } = await keep(fake);
    expect(screen.getByRole('status')).toHaveTextContent('It is left as it was');
    await user.click(screen.getByRole('button', { name: 'Discard' }));
    expect(quarantinedIn(tab.books)).toHaveLength(1);
    await user.click(screen.getByRole('button', { name: 'Discard it for good' }));
    expect(quarantinedIn(tab.books)).toEqual([]);
    expect(screen.queryByRole('button', { name: 'Download it' })).toBeNull();
  });

  it('looks inside what was put aside, names what is bad and brings back the rest', async () => {
    const fake = new FakeStorage({ [BOOK_KEY]: BAD() });
    const { user, tab } = await keep(fake);
    await act(() => new Promise((go) => setTimeout(go, 50)));
    act(() => tab.books.flush());
    expect(screen.getByText(/^Orla Fenwick could not be opened and was set aside/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Look inside' }));
    const row = screen.getByRole('checkbox', { name: /^Orla Fenwick is not in the book/, hidden: true });
    expect(row).toHaveAccessibleName(/without what cannot be read: waist girth\./);
    expect(row).not.toBeChecked();
    await user.click(row);
    await user.click(screen.getByRole('button', { name: 'Bring back one client', hidden: true }));
    act(() => tab.books.flush());
    expect(clientsIn(fake).get('Orla Fenwick')?.measurements.waist).toBeNull();
    expect(clientsIn(fake).get('Orla Fenwick')?.measurements.bust).toBeCloseTo(939.8, 9);
    await user.click(screen.getByRole('button', { name: 'Discard it for good' }));
    expect(quarantinedIn(tab.books)).toEqual([]);
  });

  it('brings a damaged record back under an id of her own, beside the record that stays', async () => {
    const fake = new FakeStorage();
    const first = await openTab(fake);
    first.rename('Ada');
    first.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, newId(), 'Bea'));
    first.books.flush();
    const ada = clientsIn(fake).get('Ada');
    const key = recordKey('client', ada?.id ?? '');
    const measurements = { ...ada?.measurements, waist: 'narrow' };
    const bad = clientRecord(Object.assign({ ...ada }, { measurements }) as never, null);
    fake.kept.set(key, bad);
    fake.kept.set('staywright.open', JSON.stringify({ layout: 2, open: ada?.id }));
    const { user, tab } = await keep(fake);
    expect(openClient(present(tab)).name).toBe('Bea');
    await user.click(screen.getByRole('button', { name: 'Look inside' }));
    await user.click(screen.getByRole('checkbox', { name: /^Ada/, hidden: true }));
    await user.click(screen.getByRole('button', { name: 'Bring back one client', hidden: true }));
    act(() => tab.books.flush());
    expect(tab.books.status()).toEqual({ kind: 'saved' });
    expect(fake.kept.get(key)).toBe(bad);
    expect(
      entriesOf(present(tab))
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['Ada', 'Bea']);
  });

  it('lets the user choose between two tabs, client by client', async () => {
    const fake = new FakeStorage();
    const { user, save, tab } = await keep(fake);
    save('Ada');
    const theirs = { ...openClient(present(tab)), name: 'Theirs' };
    fake.kept.set(recordKey('client', theirs.id), clientRecord(theirs, null));
    save('Ours');
    expect([...clientsIn(fake).keys()]).toEqual(['Theirs']);
    expect(screen.getByText(/^Ours was changed in this tab and in another/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Keep both of Ours' }));
    act(() => tab.books.flush());
    expect([...clientsIn(fake).keys()].sort()).toEqual(['Ours', 'Theirs']);
    expect(quarantinedIn(tab.books)).toEqual([]);
    expect(screen.queryByRole('button', { name: /^Keep both/ })).toBeNull();
  });

  it('offers to keep the book again where it was cleared', async () => {
    const fake = new FakeStorage();
    const { user, save } = await keep(fake);
    save('Ada');
    fake.kept.clear();
    save('Bea');
    expect(screen.getByText(/was deleted, by another tab or in the browser’s settings/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Keep it again' }));
    expect([...clientsIn(fake).keys()]).toEqual(['Bea']);
    expect(screen.queryByText(/was deleted/)).toBeNull();
  });
});
