// Whose work is on the table: client and draft, the way into the client book, and the unit she is measured in.

import { lazy, Suspense, useState } from 'react';
import { changeClient, type Unit } from '../../document';
import { useOpen, useTable } from '../tableContext';

const ClientBook = lazy(() => import('./ClientBook'));

const UNITS: readonly { unit: Unit; label: string }[] = [
  { unit: 'in', label: 'Inches' },
  { unit: 'cm', label: 'Centimetres' },
];

export function ClientBar() {
  const { client, sheet } = useOpen();
  const change = useTable((table) => table.change);
  const [open, setOpen] = useState(false);
  return (
    <div className="client-bar">
      <button
        type="button"
        className="open-book"
        aria-haspopup="dialog"
        aria-label={`${client.name} ${sheet.name}, client book`}
        title={`${client.name}, ${sheet.name}`}
        onClick={() => setOpen(true)}
      >
        <b>{client.name}</b> <span className="draft-name">{sheet.name}</span>
      </button>
      <fieldset className="unit-choice">
        <legend className="unseen">Unit</legend>
        {UNITS.map(({ unit, label }) => (
          <label key={unit} title={label}>
            <input
              type="radio"
              name="unit"
              checked={client.unit === unit}
              onChange={() => change('unit', (before) => changeClient(before, (one) => ({ ...one, unit })))}
            />
            <span>{unit}</span>
          </label>
        ))}
      </fieldset>
      {open ? (
        <Suspense fallback={null}>
          <ClientBook onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </div>
  );
}
