// Which half lies on the table, where left and right are drafted apart.

import { DRAFT } from '../../document';
import { SIDES, type Side } from '../../engine';
import { useOpen } from '../store/storeContext';
import { draftedApart } from './draftedApart';

export interface SideChoiceProps {
  readonly side: Side;
  readonly onSide: (side: Side) => void;
}

export function SideChoice({ side, onSide }: SideChoiceProps) {
  const { client, savedDraft } = useOpen();
  if (!draftedApart(client, savedDraft.style)) return null;
  return (
    <fieldset className="held side-choice">
      <legend>{DRAFT.sideChoice.legend}</legend>
      {SIDES.map((each) => (
        <label key={each}>
          <input type="radio" name="hand" checked={side === each} onChange={() => onSide(each)} />
          <span>{DRAFT.sideChoice[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}
