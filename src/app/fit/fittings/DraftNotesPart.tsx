// What a draft is for: cloth, event, heel and the bra worn, in the maker's own words.

import { useState } from 'react';
import { changeDraft, type DraftNotes, FITTINGS, setNote } from '../../../document';
import { useOpen, useStore } from '../../store/storeContext';

const NOTES: readonly (keyof DraftNotes)[] = ['cloth', 'event', 'heel', 'bra'];

export function DraftNotesPart() {
  const { savedDraft } = useOpen();
  const written = NOTES.some((note) => savedDraft.notes[note] !== '');
  return (
    <details className="draft-notes" open={written}>
      <summary>{FITTINGS.notes.title}</summary>
      <div className="alteration-row">
        {NOTES.map((note) => (
          <Note key={`${savedDraft.id} ${note}`} note={note} value={savedDraft.notes[note]} />
        ))}
      </div>
    </details>
  );
}

/** Longest note that is kept. */
const MOST_LETTERS = 200;

function Note({ note, value }: { readonly note: keyof DraftNotes; readonly value: string }) {
  const change = useStore((state) => state.change);
  const [typed, setTyped] = useState<string | null>(null);
  const keep = (): void => {
    if (typed !== null && typed !== value)
      change({ code: 'draftNoted', note }, (book) => changeDraft(book, (open) => setNote(open, note, typed)));
    setTyped(null);
  };
  return (
    <label className="note-field">
      <span>{FITTINGS.notes[note]}</span>
      <input
        type="text"
        autoComplete="off"
        maxLength={MOST_LETTERS}
        value={typed ?? value}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={keep}
        onKeyDown={({ key }) => {
          if (key === 'Enter') keep();
        }}
      />
    </label>
  );
}
