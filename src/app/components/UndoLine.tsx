// Says what was just taken away, with the way to have it back, as long as nothing else was done since.

import { type Change, SHELL, sameChange } from '../../document';
import { useStore } from '../store/storeContext';

interface UndoLineProps {
  /** Null while there is none to speak of. */
  readonly change: Change | null;
  /** What it did, as a sentence. */
  readonly children: string;
}

export function UndoLine({ change, children }: UndoLineProps) {
  const undo = useStore((state) => state.undo);
  const last = useStore((state) => state.history.past.at(-1)?.change);
  if (!change || !last || !sameChange(last, change)) return null;
  return (
    <p className="undo-line" role="status">
      {children}{' '}
      <button type="button" onClick={undo}>
        {SHELL.history.undo}
      </button>
    </p>
  );
}
