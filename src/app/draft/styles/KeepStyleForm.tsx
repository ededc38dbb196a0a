// The style of the draft on the table, kept under a name of the maker's own.

import { useId, useState } from 'react';
import { balanceAll, keepStyle, styleCalled } from '../../../document';
import { Checkbox } from '../../components/Checkbox';
import { today } from '../../components/formatDay';
import { useOpen, useStore } from '../../store/storeContext';

/** As of a draft: it has to fit on a panel. */
const MOST_LETTERS = 120;

export function KeepStyleForm() {
  const { book, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const id = useId();
  const [typed, setTyped] = useState(savedDraft.name);
  const [refit, setRefit] = useState(true);
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
    setSaid(`${name} is kept. It is listed with the ready-made styles, for every client.`);
  };
  return (
    <form
      className="keep-style"
      aria-label="Keep a style"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <h3>Keep the style of this draft</h3>
      <p className="hint">
        Its edges, wedges, ease, closing and allowances, without anyone’s measurements: balanced wedges fit
        themselves to whoever wears it next.
      </p>
      <div className="keep-style-line">
        <div className="text-field">
          <label htmlFor={id}>Name of the style</label>
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
          {there ? 'Write over it' : 'Keep the style'}
        </button>
      </div>
      {locked > 0 ? (
        <Checkbox on={refit} onSet={setRefit}>
          Balance {locked === 1 ? 'the wedge' : `the ${locked} wedges`} sized by hand on each body; else{' '}
          {locked === 1 ? 'it keeps its' : 'they keep their'} intake
        </Checkbox>
      ) : null}
      <p className="hint" role="status">
        {said !== '' ? said : there ? 'The style book has one of this name; it would be written over.' : ''}
      </p>
    </form>
  );
}
