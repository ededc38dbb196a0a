// Undo and redo, each with the name of what it would do, and the last change said aloud with what came of it.

import { useEffect, useRef, useState } from 'react';
import { useTable } from '../tableContext';
import { consequence } from './consequence';

export function HistoryButtons() {
  const { past, future } = useTable((table) => table.history);
  const undo = useTable((table) => table.undo);
  const redo = useTable((table) => table.redo);
  const [last, next] = [past.at(-1)?.change, future[0]?.change];
  return (
    <div className="history">
      <button type="button" disabled={last === undefined} onClick={undo} title={last && `Undo: ${last}`}>
        Undo{last ? <span className="change">: {last}</span> : null}
      </button>
      <button type="button" disabled={next === undefined} onClick={redo} title={next && `Redo: ${next}`}>
        Redo{next ? <span className="change">: {next}</span> : null}
      </button>
      <Said />
    </div>
  );
}

/** Tells a screen reader what was changed last, and the consequence. */
function Said() {
  const history = useTable((table) => table.history);
  const before = useRef(history);
  const [said, setSaid] = useState('');
  useEffect(() => {
    const { past, future, present } = before.current;
    if (history.present === present) return;
    before.current = history;
    const done = history.past.at(-1)?.change;
    const undone = history.future[0]?.change;
    const name =
      history.future.length > future.length
        ? `Undone: ${undone}`
        : history.future.length < future.length &&
            history.past.length > past.length &&
            history.future.length > 0
          ? `Done again: ${done}`
          : (done ?? '');
    const came = consequence(present, history.present);
    setSaid([name, came].filter((each) => each !== '').join('; '));
  }, [history]);
  return (
    <span className="unseen" role="status">
      {said}
    </span>
  );
}
