// The style of the draft on the table, kept under a name of the maker's own.

import { useId, useState } from 'react';
import { balanceAll, keepStyle, STYLE_BOOK, styleCalled } from '../../../document';
import { Checkbox } from '../../components/fields/Checkbox';
import { today } from '../../components/files/formatDay';
import { useOpen, useStore } from '../../store/storeContext';

const TEXTS = STYLE_BOOK.keep;

/** As of a draft: it has to fit on a panel. */
const MOST_LETTERS = 120;

export function KeepStyleForm() {
  const { book, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const id = useId();
  const [typed, setTyped] = useState(savedDraft.name);
  const [refit, setRefit] = useState(false);
  const [said, setSaid] = useState('');
  const locked = [...savedDraft.style.wedges, ...(savedDraft.style.rightWedges ?? [])].filter(
    (wedge) => wedge.sizing === 'manual',
  ).length;
  const name = typed.trim();
  const there = styleCalled(book, name);
  const keep = (): void => {
    if (name === '') return;
    const style = locked > 0 && refit ? balanceAll(savedDraft.style) : savedDraft.style;
    change({ code: 'styleKept', title: name }, (before) =>
      keepStyle(before, crypto.randomUUID(), name, style, today()),
    );
    setSaid(TEXTS.kept({ name }));
  };
  return (
    <form
      className="keep-style"
      aria-label={TEXTS.label}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <h3>{TEXTS.title}</h3>
      <p className="hint">{TEXTS.hint}</p>
      <div className="keep-style-line">
        <div className="text-field">
          <label htmlFor={id}>{TEXTS.name}</label>
          <input
            id={id}
            type="text"
            autoComplete="off"
            maxLength={MOST_LETTERS}
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
              setSaid('');
            }}
          />
        </div>
        <button type="submit" disabled={name === ''}>
          {there ? TEXTS.writeOver : TEXTS.keep}
        </button>
      </div>
      {locked > 0 ? (
        <Checkbox on={refit} onSet={setRefit}>
          {TEXTS.balance({ count: locked })}
        </Checkbox>
      ) : null}
      <p className="hint" role="status">
        {said !== '' ? said : there ? TEXTS.sameName : ''}
      </p>
    </form>
  );
}
