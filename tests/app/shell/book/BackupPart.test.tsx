import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { BackupPart } from '../../../../src/app/shell/book/BackupPart';
import { ClientBar } from '../../../../src/app/shell/ClientBar';
import {
  addClient,
  BOOK_VERSION,
  changeClient,
  DEMO_CLIENT,
  demoBook,
  keepStyle,
  openDraftOf,
  setMeasurement,
  writeBackup,
} from '../../../../src/document';
import { onTable } from '../../withStore';

const OWN = demoBook('wren');
const BACKUP = writeBackup(addClient(OWN, 'bea', 'Bea'), '2026-11-20');
const file = (text: string): File => new File([text], 'staywright.json', { type: 'application/json' });
const now = changeClient(OWN, (client) => setMeasurement(client, 'waist', 700));
const input = (): HTMLElement => screen.getByLabelText('Restore from a backup');

describe('a backup', () => {
  it('is looked at before anything changes, and brings back whom one ticks', async () => {
    const { user, store, changes } = onTable(<BackupPart />, now);
    await user.upload(input(), file(BACKUP));
    expect(await screen.findByText(/^A backup of .*2026 with 2 clients/)).toBeVisible();
    expect(
      screen.getByRole('checkbox', { name: 'Bea is not in the book and would be added.' }),
    ).toBeChecked();
    expect(screen.getByText(/is in the book with other measurements\./)).toBeVisible();
    const wren = screen.getByRole('combobox', { name: 'What becomes of Wren Abernathy' });
    expect(wren).toHaveValue('leave');
    expect(changes()).toEqual([]);
    await user.selectOptions(wren, 'instead');
    await user.click(screen.getByRole('button', { name: 'Bring back 2 clients' }));
    const back = store.getState().history.present.clients.map(({ changed: _, ...client }) => client);
    expect(back).toEqual(addClient(OWN, 'bea', 'Bea').clients);
    store.getState().undo();
    expect(store.getState().history.present).toBe(now);
  });

  it('brings back the maker’s own styles as well', async () => {
    const { style } = openDraftOf(DEMO_CLIENT);
    const there = keepStyle(keepStyle(OWN, 'a', 'Ferry', style, '2026-11-20'), 'b', 'Gala', style, '');
    const { user, store } = onTable(<BackupPart />, keepStyle(OWN, 'b', 'Revel', style, ''));
    await user.upload(input(), file(writeBackup(there, '2026-11-20')));
    expect(await screen.findByText(/with one client and 2 styles/)).toBeVisible();
    expect(screen.getByText(/is the style called Revel in the book\./)).toBeVisible();
    await user.selectOptions(screen.getByRole('combobox', { name: 'What becomes of Gala' }), 'instead');
    await user.click(screen.getByRole('button', { name: 'Bring back 2 styles' }));
    expect(store.getState().history.present.styles.map(({ name }) => name)).toEqual(['Gala', 'Ferry']);
  });

  it('is looked at when the device opens it with the page', async () => {
    const consumers: ((launch: { files: unknown[] }) => void)[] = [];
    const launchQueue = { setConsumer: (consume: (typeof consumers)[number]) => consumers.push(consume) };
    Object.assign(window, { launchQueue });
    try {
      onTable(<ClientBar />, now);
      for (const consume of consumers) consume({ files: [{ getFile: async () => file(BACKUP) }] });
      expect(await screen.findByText(/^A backup of .*2026 with 2 clients/)).toBeInTheDocument();
    } finally {
      Reflect.deleteProperty(window, 'launchQueue');
    }
  });

  it('may be left alone', async () => {
    const { user, changes } = onTable(<BackupPart />, now);
    await user.upload(input(), file(BACKUP));
    await user.click(await screen.findByRole('button', { name: 'Leave the book as it is' }));
    expect(screen.queryByRole('checkbox')).toBeNull();
    expect(changes()).toEqual([]);
  });

  it('has nothing to bring back where all is the same', async () => {
    const { user } = onTable(<BackupPart />);
    await user.upload(input(), file(writeBackup(OWN, '2026-11-20')));
    expect(
      await screen.findByRole('checkbox', { name: 'Wren Abernathy is in the book just so.' }),
    ).toBeDisabled();
    expect(screen.getByRole('button', { name: 'Bring back nothing' })).toBeDisabled();
  });

  it('says what is wrong with a file that is none', async () => {
    const { user, changes } = onTable(<BackupPart />);
    await user.upload(input(), file('{"version":1'));
    expect(await screen.findByText(/not a backup written by Staywright/)).toBeVisible();
    await user.upload(input(), file(BACKUP.replace(`"version": ${BOOK_VERSION}`, '"version": 99')));
    expect(await screen.findByText(/written by a later version of this page \(99\)/)).toBeVisible();
    expect(changes()).toEqual([]);
  });
});
