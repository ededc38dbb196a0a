// The drafts of the client in view: named, opened, copied, added and taken off.

import { addDraft, CLIENT_BOOK, changeClient, removeDraft } from '../../../document';
import { TextField } from '../../components/fields/TextField';
import { useOpen, useStore } from '../../store/storeContext';

const { drafts: words } = CLIENT_BOOK;

export function DraftList({ onOpen }: { onOpen: () => void }) {
  const { client, savedDraft: current } = useOpen();
  const change = useStore((state) => state.change);
  const add = (from: 'copy' | 'default'): void =>
    change(from === 'copy' ? { code: 'draftCopied', name: current.name } : { code: 'draftAdded' }, (book) =>
      changeClient(book, (open) => addDraft(open, crypto.randomUUID(), from)),
    );
  return (
    <section className="draft-list" aria-label={words.title({ client: client.name })}>
      <div className="list-head">
        <h3>{words.title({ client: client.name })}</h3>
        <button type="button" onClick={() => add('copy')}>
          {words.copy}
        </button>
        <button type="button" onClick={() => add('default')}>
          {words.add}
        </button>
      </div>
      <ul>
        {client.drafts.map((savedDraft) => (
          <li key={savedDraft.id}>
            <TextField
              label={words.nameOf(savedDraft)}
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
              <span className="met">{words.isOpen}</span>
            ) : (
              <button
                type="button"
                aria-label={words.openOf(savedDraft)}
                onClick={() => {
                  change({ code: 'draftOpened', name: savedDraft.name }, (book) =>
                    changeClient(book, (open) => ({ ...open, openDraft: savedDraft.id })),
                  );
                  onOpen();
                }}
              >
                {words.open}
              </button>
            )}
            <button
              type="button"
              className="quiet"
              disabled={client.drafts.length === 1}
              title={client.drafts.length === 1 ? words.lastStays : undefined}
              aria-label={words.removeOf(savedDraft)}
              onClick={() =>
                change({ code: 'draftRemoved', name: savedDraft.name }, (book) =>
                  changeClient(book, (open) => removeDraft(open, savedDraft.id)),
                )
              }
            >
              {words.remove}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
