// Which half lies on the table, where left and right are drafted apart.

import { HANDS, type Hand } from '../../engine';
import { useOpen } from '../store/storeContext';
import { draftedApart } from './draftedApart';

export interface HandChoiceProps {
  readonly hand: Hand;
  readonly onHand: (hand: Hand) => void;
}

const WORDS: Readonly<Record<Hand, string>> = { left: 'Left', right: 'Right' };

export function HandChoice({ hand, onHand }: HandChoiceProps) {
  const { client, sheet } = useOpen();
  if (!draftedApart(client, sheet.style)) return null;
  return (
    <fieldset className="held hand-choice">
      <legend>Side shown</legend>
      {HANDS.map((each) => (
        <label key={each}>
          <input type="radio" name="hand" checked={hand === each} onChange={() => onHand(each)} />
          <span>{WORDS[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}
