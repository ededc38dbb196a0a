// The drafts of the client in view: named, opened, copied, added and taken off.

import { addDraft, changeClient, removeDraft } from '../../document';
import { TextField } from '../components/TextField';
import { useOpen, useStore } from '../store/storeContext';

export function DraftList({ onOpen }: { onOpen: () => void }) {
  const { client, savedDraft: current } = useOpen();
  const change = useStore((state) => state.change);
  const add = (from: 'copy' | 'default'): void =>
    change(from === 'copy' ? { code: 'draftCopied', name: current.name } : { code: 'draftAdded' }, (book) =>
      changeClient(book, (open) => addDraft(open, crypto.randomUUID(), from)),
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
        {client.drafts.map((savedDraft) => (
          <li key={savedDraft.id}>
            <TextField
              label={`Name of the draft ${savedDraft.name}`}
              labelUnseen={true}
              value={savedDraft.name}
              onKeep={(name) =>
                change({ code: 'draftRenamed' }, (book) =>
                  changeClient(book, (open) => ({
                    ...open,
                    drafts: open.drafts.map((each) => (each.id === savedDraft.id ? { ...each, name } : each)),
                  })),
                )
              }
            />
            {savedDraft.id === current.id ? (
              <span className="met">on the table</span>
            ) : (
              <button
                type="button"
                aria-label={`Open ${savedDraft.name}`}
                onClick={() => {
                  change({ code: 'draftOpened', name: savedDraft.name }, (book) =>
                    changeClient(book, (open) => ({ ...open, openDraft: savedDraft.id })),
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
              disabled={client.drafts.length === 1}
              title={client.drafts.length === 1 ? 'A client has at least one draft' : undefined}
              aria-label={`Delete the draft ${savedDraft.name}`}
              onClick={() =>
                change({ code: 'draftRemoved', name: savedDraft.name }, (book) =>
                  changeClient(book, (open) => removeDraft(open, savedDraft.id)),
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
