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
      <HistoryButton word="Undo" change={last} sign="M9 4 4 9l5 5M4 9h10a6 6 0 0 1 0 12h-3" onPress={undo} />
      <HistoryButton word="Redo" change={next} sign="M15 4l5 5-5 5M20 9H10a6 6 0 0 0 0 12h3" onPress={redo} />
      <Said />
    </div>
  );
}

interface HistoryButtonProps {
  readonly word: 'Undo' | 'Redo';
  /** What would be undone or done again; undefined where there is nothing. */
  readonly change: string | undefined;
  /** Path of the arrow that stands for the word where there is no room for it. */
  readonly sign: string;
  readonly onPress: () => void;
}

/** As wide whatever its change is called, so that the next press meets the same button. */
function HistoryButton({ word, change, sign, onPress }: HistoryButtonProps) {
  const name = change === undefined ? word : `${word}: ${change}`;
  return (
    <button type="button" disabled={change === undefined} onClick={onPress} aria-label={name} title={name}>
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d={sign} />
      </svg>
      <span className="word">
        {word}
        {change === undefined ? null : <span className="change">: {change}</span>}
      </span>
    </button>
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
