import { fireEvent, screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import { PeoplePart } from '../../../../src/app/shell/book/PeoplePart';
import { onTable } from '../../withStore';

const file = (text: string) => new File([text], 'people.csv', { type: 'text/csv' });

it('makes clients of a chosen or dropped table, says a bad cell, and undoes them as one', async () => {
  const { user, store } = onTable(<PeoplePart />);
  const clients = () => store.getState().history.present.clients;
  await user.upload(
    screen.getByLabelText('Choose a table'),
    file('Name;Bust (cm);Waist\nAda;93,98;29 1/2\n;90;thin\n'),
  );
  await screen.findByText('2 clients were added.');
  expect(screen.getByText('Row 3, Waist: “thin” is no length, and was left out.')).toBeVisible();
  expect(clients().map(({ name }) => name)).toEqual(['Wren Abernathy', 'Ada', 'Client 3']);
  expect(clients()[1]?.measurements.waist).toBeCloseTo(749.3, 6);
  await user.click(screen.getByRole('button', { name: 'Undo' }));
  expect(clients()).toHaveLength(1);
  const place = screen.getByRole('region', { name: 'Clients from a table' });
  fireEvent.drop(place, { dataTransfer: { files: [file('Name,Shoe\nAda,8')] } });
  await screen.findByRole('alert');
  expect(clients()).toHaveLength(1);
});

it('asks what columns are that it does not understand, and adds nobody before', async () => {
  const { user, store } = onTable(<PeoplePart />);
  const clients = () => store.getState().history.present.clients;
  await user.upload(screen.getByLabelText('Choose a table'), file('Who,Chest (cm),Mail\nAda,93.98,a@b\n'));
  expect(await screen.findByRole('alert')).toHaveTextContent(
    'They are called “Who”, “Chest (cm)”, and “Mail”',
  );
  await user.selectOptions(screen.getByRole('combobox', { name: '“Chest (cm)” is read as' }), 'Bust girth');
  expect(screen.getByRole('alert')).toHaveTextContent('Not understood, and passed over: “Mail”.');
  expect(clients()).toHaveLength(1);
  await user.click(screen.getByRole('button', { name: 'Add 1 client' }));
  expect(clients().map(({ name }) => name)).toEqual(['Wren Abernathy', 'Ada']);
  expect(clients()[1]?.measurements.bust).toBeCloseTo(939.8, 6);
  await user.upload(screen.getByLabelText('Choose a table'), file('Name,Bust,Mail\nMaud,37,m@b\n'));
  await user.click(await screen.findByRole('button', { name: 'Do not add them' }));
  expect(screen.queryByRole('alert')).toBeNull();
  expect(clients()).toHaveLength(2);
});
