// A style to start from: wedges, edges, ease and closing at once; it can be undone like any change.

import { lazy, Suspense, useState } from 'react';
import { changeStyle, NAMED_STYLES } from '../../document';
import type { Style } from '../../engine';
import { useOpen, useTable } from '../tableContext';

const StyleBook = lazy(() => import('./StyleBook'));

export function StyleChoice() {
  const { book } = useOpen();
  const change = useTable((table) => table.change);
  const [open, setOpen] = useState(false);
  const choose = (title: string, style: Style): void =>
    change(`style ${title}`, (before) => changeStyle(before, () => style));
  return (
    <div className="style-choice">
      <label className="choice">
        <span>Start from a style</span>
        <select
          value=""
          onChange={(event) => {
            const [kind, ...key] = event.target.value.split(':');
            const named = NAMED_STYLES.get(key.join(':'));
            const own = book.styles.find(({ id }) => id === key.join(':'));
            if (kind === 'own' && own) choose(own.name, own.style);
            if (kind === 'ready' && named) choose(named.title, named.style);
          }}
        >
          <option value="">Choose…</option>
          {book.styles.length > 0 ? (
            <optgroup label="Your styles">
              {book.styles.map(({ id, name }) => (
                <option key={id} value={`own:${id}`}>
                  {name}
                </option>
              ))}
            </optgroup>
          ) : null}
          <optgroup label="Ready-made">
            {[...NAMED_STYLES].map(([name, { title }]) => (
              <option key={name} value={`ready:${name}`}>
                {title}
              </option>
            ))}
          </optgroup>
        </select>
      </label>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        Style book
      </button>
      {open ? (
        <Suspense fallback={null}>
          <StyleBook onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </div>
  );
}
