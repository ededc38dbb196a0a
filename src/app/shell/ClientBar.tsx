// Which client and which draft: chosen, added, named; and the unit she is measured in.

import { addClient, changeClient, changeSheet, removeClient, type Unit } from '../../document';
import { TextField } from '../parts/TextField';
import { useOpen, useTable } from '../tableContext';

const UNITS: readonly { unit: Unit; label: string }[] = [
  { unit: 'in', label: 'Inches' },
  { unit: 'cm', label: 'Centimetres' },
];

export function ClientBar() {
  const { book, client, sheet } = useOpen();
  const change = useTable((table) => table.change);
  return (
    <div className="client-bar">
      <label className="client-choice">
        <span className="unseen">Client</span>
        <select
          value={client.id}
          onChange={(event) => {
            const id = event.target.value;
            change('other client', (before) => ({ ...before, openClient: id }));
          }}
        >
          {book.clients.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <TextField
        label="Draft"
        labelUnseen={true}
        value={sheet.name}
        onKeep={(name) =>
          change('draft’s name', (before) => changeSheet(before, (open) => ({ ...open, name })))
        }
      />
      <button
        type="button"
        onClick={() => {
          change('new client', (before) => addClient(before, crypto.randomUUID(), newName(before.clients)));
          window.location.hash = 'measure';
        }}
      >
        New client
      </button>
      {book.clients.length > 1 ? (
        <button
          type="button"
          className="quiet"
          onClick={() => change(`took out ${client.name}`, removeClient)}
        >
          Take out
        </button>
      ) : null}
      <fieldset className="unit-choice">
        <legend className="unseen">Unit</legend>
        {UNITS.map(({ unit, label }) => (
          <label key={unit} title={label}>
            <input
              type="radio"
              name="unit"
              checked={client.unit === unit}
              onChange={() => change('unit', (before) => changeClient(before, (open) => ({ ...open, unit })))}
            />
            <span>{unit}</span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}

function newName(clients: readonly { name: string }[]): string {
  let number = clients.length + 1;
  while (clients.some(({ name }) => name === `Client ${number}`)) number += 1;
  return `Client ${number}`;
}
