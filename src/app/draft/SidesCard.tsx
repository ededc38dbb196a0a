// Left and right: whether the right half has wedges of its own.

import { changeStyle, DRAFT, setRightWedges } from '../../document';
import { Checkbox } from '../components/fields/Checkbox';
import { useOpen, useStore } from '../store/storeContext';
import { draftedApart } from './draftedApart';

export function SidesCard() {
  const { client, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const own = savedDraft.style.rightWedges !== undefined;
  return (
    <section className="sides-card" aria-label={DRAFT.sides.title}>
      <h3>{DRAFT.sides.title}</h3>
      <Checkbox
        small={true}
        on={own}
        onSet={(isOn) =>
          change({ code: 'rightWedgesSet', own: isOn }, (book) =>
            changeStyle(book, (style) => setRightWedges(style, isOn)),
          )
        }
      >
        {DRAFT.sides.ownWedges}
      </Checkbox>
      <p className="hint">{draftedApart(client, savedDraft.style) ? DRAFT.sides.apart : DRAFT.sides.alike}</p>
    </section>
  );
}
