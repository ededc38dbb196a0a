// In a narrow window one half block is seen at a time, or both: the choice, which follows the wedge in hand.

import { useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import { CANVAS } from '../../../document';
import type { Draft } from '../../../engine';
import type { ShownBlocks } from '../../../table';

const TEXTS = CANVAS.shown;

const CHOICES: readonly ShownBlocks[] = ['front', 'back', 'both'];

/** A window no wider than this has room for one block at a time. */
const NARROW = '(max-width: 820px)';

/** What is shown, how to change it, and whether there is a choice at all; where there is none, both are shown. */
export function useShownBlocks(
  selected: string | null,
  { blocks }: Draft,
): [ShownBlocks, (shown: ShownBlocks) => void, boolean] {
  const isNarrow = useNarrow();
  const [shown, setShown] = useState<ShownBlocks>('front');
  const block = blocks
    ? (['front', 'back'] as const).find((each) => blocks[each].wedges.some(({ id }) => id === selected))
    : undefined;
  // A wedge that is taken in hand comes into view.
  useEffect(() => {
    if (selected !== null && block) setShown((last) => (last === 'both' ? last : block));
  }, [selected, block]);
  return [isNarrow ? shown : 'both', setShown, isNarrow];
}

interface BlocksChoiceProps {
  readonly blocks: ShownBlocks;
  readonly onBlocks: (blocks: ShownBlocks) => void;
}

export function BlocksChoice({ blocks, onBlocks }: BlocksChoiceProps) {
  return (
    <fieldset className="held blocks-choice">
      <legend className="unseen">{TEXTS.legend}</legend>
      {CHOICES.map((each) => (
        <label key={each}>
          <input type="radio" name="blocks" checked={blocks === each} onChange={() => onBlocks(each)} />
          <span>{TEXTS[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}

function useNarrow(): boolean {
  // One query for as long as the table is there: asking a new one makes the browser lay out the page in the middle of a pull.
  const [query] = useState(() => window.matchMedia(NARROW));
  const subscribe = useCallback(
    (refresh: () => void) => {
      query.addEventListener('change', refresh);
      return () => query.removeEventListener('change', refresh);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => query.matches);
}
