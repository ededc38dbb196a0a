// @vitest-environment jsdom
import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { ClientBar } from '../../../src/app/shell/ClientBar';
import { onTable } from '../onTable';

describe('the client bar', () => {
  it('names client, draft and unit', () => {
    onTable(<ClientBar />);
    expect(screen.getByRole('combobox', { name: 'Client' })).toHaveDisplayValue('Wren Abernathy');
    expect(screen.getByRole('textbox', { name: 'Draft' })).toHaveValue('Winter ball bodice');
    expect(screen.getByRole('radio', { name: 'in' })).toBeChecked();
  });

  it('changes the unit of the client in view only', async () => {
    const { user, client } = onTable(<ClientBar />);
    await user.click(screen.getByRole('radio', { name: 'cm' }));
    expect(client().unit).toBe('cm');
  });

  it('renames the draft, but not to nothing', async () => {
    const { user, client, changes } = onTable(<ClientBar />);
    const name = screen.getByRole('textbox', { name: 'Draft' });
    await user.clear(name);
    await user.tab();
    expect(name).toHaveValue('Winter ball bodice');
    await user.clear(name);
    await user.type(name, '  Ferry gala {Enter}');
    expect(client().sheets[0]?.name).toBe('Ferry gala');
    expect(changes()).toEqual(['draft’s name']);
  });
});
