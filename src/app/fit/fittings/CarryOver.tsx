// Brings the fittings of another of the client's drafts into the open one.

import { useState } from 'react';
import { carryOver, changeDraft, FITTINGS, type SavedDraft } from '../../../document';
import { draftOnce, useOpen, useStore } from '../../store/storeContext';
import { ChoiceOf } from './forms/ChoiceOf';

const TEXTS = FITTINGS.carry;

/** Nothing where the client has no other draft with fittings. */
export function CarryOver() {
  const { client, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const others = client.drafts.filter(({ id, fittings }) => id !== savedDraft.id && fittings.length > 0);
  const [chosen, setChosen] = useState('');
  const from = others.find(({ id }) => id === chosen) ?? others[0];
  if (!from) return null;
  const carry = (): void => {
    const standing = ({ style }: SavedDraft) => ({ draft: draftOnce(client, { style }), style });
    const carried = carryOver(from.fittings, standing(from), standing(savedDraft));
    change({ code: 'fittingsCarriedOver' }, (book) =>
      changeDraft(book, (open: SavedDraft) => ({ ...open, fittings: [...open.fittings, ...carried] })),
    );
  };
  return (
    <details className="carry-over">
      <summary>{TEXTS.title}</summary>
      <ChoiceOf
        label={TEXTS.from}
        choices={others.map(({ id, name, fittings }) => ({
          value: id,
          label: TEXTS.draft({ name, count: fittings.length }),
        }))}
        value={from.id}
        onChoose={setChosen}
      />
      <p className="hint">{TEXTS.hint}</p>
      <button type="button" onClick={carry}>
        {TEXTS.take}
      </button>
    </details>
  );
}
