// @vitest-environment jsdom
import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { BackupPart } from '../../../src/app/shell/BackupPart';
import { addClient, changeClient, DEMO_BOOK, setMeasurement, writeBackup } from '../../../src/document';
import { onTable } from '../onTable';

const BACKUP = writeBackup(addClient(DEMO_BOOK, 'bea', 'Bea'), '2026-11-20');
const file = (text: string): File => new File([text], 'staywright.json', { type: 'application/json' });
const now = changeClient(DEMO_BOOK, (client) => setMeasurement(client, 'waist', 700));
const input = (): HTMLElement => screen.getByLabelText('Restore from a backup');

describe('a backup', () => {
  it('is looked at before anything changes, and brings back whom one ticks', async () => {
    const { user, table, changes } = onTable(<BackupPart />, now);
    await user.upload(input(), file(BACKUP));
    expect(await screen.findByText(/^A backup of .*2026 with 2 clients/)).toBeVisible();
    expect(
      screen.getByRole('checkbox', { name: 'Bea is not in the book and would be added.' }),
    ).toBeChecked();
    const wren = screen.getByRole('checkbox', {
      name: /^Wren Abernathy is in the book with other measurements/,
    });
    expect(wren).not.toBeChecked();
    expect(changes()).toEqual([]);
    await user.click(wren);
    await user.click(screen.getByRole('button', { name: 'Bring back 2 clients' }));
    expect(table.getState().history.present.clients).toEqual(addClient(DEMO_BOOK, 'bea', 'Bea').clients);
    table.getState().undo();
    expect(table.getState().history.present).toBe(now);
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
    await user.upload(input(), file(writeBackup(DEMO_BOOK, '2026-11-20')));
    expect(
      await screen.findByRole('checkbox', { name: 'Wren Abernathy is in the book just so.' }),
    ).toBeDisabled();
    expect(screen.getByRole('button', { name: 'Bring back 0 clients' })).toBeDisabled();
  });

  it('says what is wrong with a file that is none', async () => {
    const { user, changes } = onTable(<BackupPart />);
    await user.upload(input(), file('{"version":1'));
    expect(await screen.findByText(/not whole, or no backup/)).toBeVisible();
    await user.upload(input(), file(BACKUP.replace('"version": 2', '"version": 99')));
    expect(await screen.findByText(/written by a later version of this page \(99\)/)).toBeVisible();
    expect(changes()).toEqual([]);
  });
});
