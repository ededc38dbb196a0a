// Undo and redo, each with the name of what it would do, and the last change said aloud with what came of it.

import { useEffect, useRef, useState } from 'react';
import { type Book, type Change, type History, SHELL } from '../../document';
import { useStore } from '../store/storeContext';
import { fetchChangeWords, fetchedChangeWords, useChangeWords } from './laterSentences';

const { history: words } = SHELL;

export function HistoryButtons() {
  const { past, future } = useStore((state) => state.history);
  const undo = useStore((state) => state.undo);
  const redo = useStore((state) => state.redo);
  const [last, next] = [past.at(-1)?.change, future[0]?.change];
  return (
    <div className="history">
      <HistoryButton
        word={words.undo}
        nameOf={words.undoOf}
        change={last}
        sign="M9 4 4 9l5 5M4 9h10a6 6 0 0 1 0 12h-3"
        onPress={undo}
      />
      <HistoryButton
        word={words.redo}
        nameOf={words.redoOf}
        change={next}
        sign="M15 4l5 5-5 5M20 9H10a6 6 0 0 0 0 12h3"
        onPress={redo}
      />
      <LastChange />
    </div>
  );
}

interface HistoryButtonProps {
  readonly word: string;
  readonly nameOf: (what: { change: string }) => string;
  /** What would be undone or done again; undefined where there is nothing. */
  readonly change: Change | undefined;
  /** Path of the arrow. */
  readonly sign: string;
  readonly onPress: () => void;
}

/** An arrow that tells its word and change to who asks: as wide whatever the change is called, so that the next press meets it. */
function HistoryButton({ word, nameOf, change, sign, onPress }: HistoryButtonProps) {
  const changeWords = useChangeWords(change !== undefined);
  const sentence = change && changeWords?.changeSentence(change);
  const name = sentence === undefined ? word : nameOf({ change: sentence });
  return (
    <button type="button" disabled={change === undefined} onClick={onPress} title={name}>
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d={sign} />
      </svg>
      <span className="unseen">{name}</span>
    </button>
  );
}

/** Keys that rest so long are through with a handle for now. ms */
const REST_MS = 1000;

/**
 * Tells a screen reader what was changed last, and the consequence. Of keys pressed in a row only when they rest: each
 * press tells the handle's own number.
 */
function LastChange() {
  const history = useStore((state) => state.history);
  const moved = useStore((state) => state.moved);
  const before = useRef(history);
  /** The book as it was before keys were pressed, while that is not told; and what will tell it. */
  const untold = useRef<{ readonly book: Book; readonly telling: number } | null>(null);
  const [said, setSaid] = useState('');
  useEffect(() => {
    const last = before.current;
    if (history.present === last.present) return;
    before.current = history;
    const how = moved?.history === history ? moved : null;
    const tell = (book: Book): void => {
      untold.current = null;
      const say = ({
        changeSentence,
        consequence,
      }: NonNullable<ReturnType<typeof fetchedChangeWords>>): void => {
        const change = whatWasDone(last, history, changeSentence);
        const value = how?.value ?? '';
        const name = change === '' || value === '' ? change || value : words.movedTo({ change, value });
        const what = consequence(book, history.present);
        setSaid(
          name === '' || what === ''
            ? name || what
            : words.withConsequence({ change: name, consequence: what }),
        );
      };
      const there = fetchedChangeWords();
      if (there) say(there);
      else
        fetchChangeWords().then(
          // By the time it is fetched another change may be the last.
          (fetched) => {
            if (before.current === history) say(fetched);
          },
          () => undefined,
        );
    };
    const from = untold.current?.book ?? last.present;
    window.clearTimeout(untold.current?.telling);
    if (how && how.by !== 'pull')
      untold.current = { book: from, telling: window.setTimeout(() => tell(from), REST_MS) };
    else tell(last.present);
  }, [history, moved]);
  useEffect(() => () => window.clearTimeout(untold.current?.telling), []);
  return (
    <span className="unseen" role="status">
      {said}
    </span>
  );
}

function whatWasDone(
  before: History<Book>,
  { past, future }: History<Book>,
  changeSentence: (change: Change) => string,
): string {
  const [last, next] = [past.at(-1)?.change, future[0]?.change];
  const done = last ? changeSentence(last) : '';
  if (next && future.length > before.future.length) return words.undone({ change: changeSentence(next) });
  const again = future.length < before.future.length && past.length > before.past.length && future.length > 0;
  return again ? words.doneAgain({ change: done }) : done;
}
