// Whose work is on the table: client and draft, the way into the client book, and the unit she is measured in.

import { useEffect, useState } from 'react';
import { changeClient, openClient, openDraftOf, SHELL, type Unit } from '../../document';
import { onOpenedFile } from '../components/files/openedFiles';
import { LaterDialog } from '../components/later/LaterDialog';
import { lazyPart } from '../components/later/later';
import { seen } from '../store/store';
import { useStore } from '../store/storeContext';

const ClientBook = lazyPart(async () => (await import('./book/ClientBook')).default);

const UNITS: readonly { unit: Unit; label: string }[] = [
  { unit: 'in', label: SHELL.clientBar.units.in },
  { unit: 'cm', label: SHELL.clientBar.units.cm },
];

export function ClientBar() {
  // Nothing else of the book: what is pulled on the table does not touch this.
  const client = useStore((state) => openClient(seen(state)).name);
  const unit = useStore((state) => openClient(seen(state)).unit);
  const draft = useStore((state) => openDraftOf(openClient(seen(state))).name);
  const change = useStore((state) => state.change);
  const [open, setOpen] = useState(false);
  /** The text of a backup that the device opened with the page. */
  const [handed, setHanded] = useState<string | null>(null);
  useEffect(
    () =>
      onOpenedFile((text) => {
        setHanded(text);
        setOpen(true);
      }),
    [],
  );
  const close = (): void => {
    setHanded(null);
    setOpen(false);
  };
  return (
    <div className="client-bar">
      <button
        type="button"
        className="open-book"
        aria-haspopup="dialog"
        aria-label={SHELL.clientBar.openBook({ client, draft })}
        title={SHELL.clientBar.clientAndDraft({ client, draft })}
        onClick={() => setOpen(true)}
      >
        <b>{client}</b> <span className="draft-name">{draft}</span>
      </button>
      <fieldset className="unit-choice">
        <legend className="unseen">{SHELL.clientBar.unit}</legend>
        {UNITS.map(({ unit: each, label }) => (
          <label key={each} title={label}>
            <input
              type="radio"
              name="unit"
              checked={each === unit}
              onChange={() =>
                change({ code: 'unitSet' }, (before) =>
                  changeClient(before, (one) => ({ ...one, unit: each })),
                )
              }
            />
            <span>{each}</span>
          </label>
        ))}
      </fieldset>
      {open ? (
        <LaterDialog onClose={close}>
          <ClientBook handed={handed} onClose={close} />
        </LaterDialog>
      ) : null}
    </div>
  );
}
