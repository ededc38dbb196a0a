import { screen, within } from '@testing-library/react';
import { describe, expect, it, vi } from 'vitest';
import ClientBook from '../../../src/app/shell/book/ClientBook';
import { ClientBar } from '../../../src/app/shell/ClientBar';
import { addClient, type Book, DEMO_BOOK, openClientOf } from '../../../src/document';
import { onTable } from '../withStore';

const button = (name: string | RegExp) => screen.getByRole('button', { name });

describe('the client bar', () => {
  it('names client, draft and unit, and opens the book', async () => {
    const { user } = onTable(<ClientBar />);
    expect(screen.getByRole('radio', { name: 'in' })).toBeChecked();
    await user.click(button('Wren Abernathy Winter ball bodice, client book'));
    const heading = { name: 'Client book', hidden: true };
    expect(await screen.findByRole('heading', heading, { timeout: 10_000 })).toBeInTheDocument();
  });

  it('changes the unit of the client in view only', async () => {
    const { user, client } = onTable(<ClientBar />);
    await user.click(screen.getByRole('radio', { name: 'cm' }));
    expect(client().unit).toBe('cm');
  });
});

/** Three clients; Bea was opened last. */
const THREE: Book = [
  (book: Book) => addClient(book, 'zoe', 'Zoë Marsh'),
  (book: Book) => addClient(book, 'bea', 'Bea Lindqvist'),
  (book: Book) => openClientOf(book, 'demo', '2026-11-20T10:00:00Z'),
  (book: Book) => openClientOf(book, 'bea', '2026-11-21T10:00:00Z'),
].reduce((book, step) => step(book), DEMO_BOOK);

function book(start: Book = THREE) {
  const onClose = vi.fn();
  const shown = onTable(<ClientBook onClose={onClose} />, start);
  const clients = () => within(screen.getByRole('region', { name: 'Clients', hidden: true }));
  const names = (): (string | null | undefined)[] =>
    clients()
      .getAllByRole('listitem', { hidden: true })
      .map((row) => row.querySelector('b')?.textContent);
  const press = (name: string) => shown.user.click(screen.getByRole('button', { name, hidden: true }));
  return { ...shown, onClose, names, press };
}

describe('the client book', () => {
  it('lists the clients, the used last first', () => {
    expect(book().names()).toEqual(['Bea Lindqvist', 'Wren Abernathy', 'Zoë Marsh']);
  });

  it.each([
    ['aber', ['Wren Abernathy']],
    ['zoe', ['Zoë Marsh']],
    ['winter ball', ['Wren Abernathy']],
    ['', ['Bea Lindqvist', 'Wren Abernathy', 'Zoë Marsh']],
  ])('finds by “%s”', async (sought, found) => {
    const { user, names } = book();
    const search = screen.getByRole('textbox', { name: 'Search', hidden: true });
    if (sought !== '') await user.type(search, sought);
    expect(names()).toEqual(found);
  });

  it('says when nobody is found', async () => {
    const { user } = book();
    await user.type(screen.getByRole('textbox', { name: 'Search', hidden: true }), 'xyz');
    expect(screen.getByText(/has “xyz” in it/)).toBeInTheDocument();
  });

  it('opens a client and remembers when', async () => {
    const { user, client, onClose } = book();
    await user.click(screen.getByRole('button', { name: /^Zoë Marsh/, hidden: true }));
    expect(client().name).toBe('Zoë Marsh');
    expect(client().lastUsed).toMatch(/^\d{4}-\d\d-\d\dT/);
    expect(onClose).toHaveBeenCalled();
  });

  it('takes a client out, and brings her back whole', async () => {
    const { press, names, store } = book();
    const before = store.getState().history.present;
    await press('Delete Wren Abernathy');
    expect(names()).toEqual(['Bea Lindqvist', 'Zoë Marsh']);
    await press('Undo');
    expect(store.getState().history.present).toBe(before);
    expect(screen.queryByRole('button', { name: 'Undo', hidden: true })).toBeNull();
  });

  it('does not take out the last one', () => {
    book(DEMO_BOOK);
    expect(screen.getByRole('button', { name: 'Delete Wren Abernathy', hidden: true })).toBeDisabled();
  });

  it('puts a client into the archive and finds her there', async () => {
    const { press, names, user } = book();
    await press('Archive Zoë Marsh');
    expect(names()).toEqual(['Bea Lindqvist', 'Wren Abernathy']);
    await user.click(screen.getByRole('checkbox', { name: 'Show the archive (1)', hidden: true }));
    expect(names()).toEqual(['Bea Lindqvist', 'Wren Abernathy', 'Zoë Marsh']);
    await press('Take from the archive: Zoë Marsh');
    expect(names()).toContain('Zoë Marsh');
  });

  it('copies a client under a name of her own', async () => {
    const { press, client } = book();
    await press('Copy Wren Abernathy');
    expect(client().name).toBe('Wren Abernathy 2');
  });
});

describe('the drafts of a client', () => {
  it('are copied, opened, named and taken off', async () => {
    const { press, client, user, onClose } = book(DEMO_BOOK);
    await press('Copy this draft');
    expect(client().drafts.map(({ name }) => name)).toEqual(['Winter ball bodice', 'Winter ball bodice 2']);
    await press('Open Winter ball bodice');
    expect(client().openDraft).toBe('demo-ball');
    expect(onClose).toHaveBeenCalled();
    const name = screen.getByRole('textbox', { name: 'Name of the draft Winter ball bodice', hidden: true });
    await user.clear(name);
    await user.tab();
    expect(name).toHaveValue('Winter ball bodice');
    await user.clear(name);
    await user.type(name, '  Ferry gala {Enter}');
    expect(client().drafts[0]?.name).toBe('Ferry gala');
    await press('Delete the draft Ferry gala');
    expect(client().drafts.map(({ name: left }) => left)).toEqual(['Winter ball bodice 2']);
    expect(
      screen.getByRole('button', { name: 'Delete the draft Winter ball bodice 2', hidden: true }),
    ).toBeDisabled();
  });

  it('change nothing of another client', async () => {
    const { press, store } = book();
    await press('New draft');
    const others = store.getState().history.present.clients.filter(({ id }) => id !== 'bea');
    expect(others).toEqual(THREE.clients.filter(({ id }) => id !== 'bea'));
  });
});
