// The drafts of the client in view: named, opened, copied, added and taken off.

import { addSheet, changeClient, removeSheet } from '../../document';
import { TextField } from '../components/TextField';
import { useOpen, useTable } from '../store/storeContext';

export function DraftList({ onOpen }: { onOpen: () => void }) {
  const { client, sheet: current } = useOpen();
  const change = useTable((table) => table.change);
  const add = (from: 'copy' | 'default'): void =>
    change(from === 'copy' ? `copied ${current.name}` : 'new draft', (book) =>
      changeClient(book, (open) => addSheet(open, crypto.randomUUID(), from)),
    );
  return (
    <section className="draft-list" aria-label={`Drafts of ${client.name}`}>
      <div className="list-head">
        <h3>Drafts of {client.name}</h3>
        <button type="button" onClick={() => add('copy')}>
          Copy this draft
        </button>
        <button type="button" onClick={() => add('default')}>
          New draft
        </button>
      </div>
      <ul>
        {client.sheets.map((sheet) => (
          <li key={sheet.id}>
            <TextField
              label={`Name of the draft ${sheet.name}`}
              labelUnseen={true}
              value={sheet.name}
              onKeep={(name) =>
                change('draft’s name', (book) =>
                  changeClient(book, (open) => ({
                    ...open,
                    sheets: open.sheets.map((each) => (each.id === sheet.id ? { ...each, name } : each)),
                  })),
                )
              }
            />
            {sheet.id === current.id ? (
              <span className="met">on the table</span>
            ) : (
              <button
                type="button"
                aria-label={`Open ${sheet.name}`}
                onClick={() => {
                  change(`opened ${sheet.name}`, (book) =>
                    changeClient(book, (open) => ({ ...open, openSheet: sheet.id })),
                  );
                  onOpen();
                }}
              >
                Open
              </button>
            )}
            <button
              type="button"
              className="quiet"
              disabled={client.sheets.length === 1}
              title={client.sheets.length === 1 ? 'A client has at least one draft' : undefined}
              aria-label={`Delete the draft ${sheet.name}`}
              onClick={() =>
                change(`took off ${sheet.name}`, (book) =>
                  changeClient(book, (open) => removeSheet(open, sheet.id)),
                )
              }
            >
              Delete
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
