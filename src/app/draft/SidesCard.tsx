// Left and right: whether the right half has wedges of its own.

import { changeStyle, setRightWedges } from '../../document';
import { Checkbox } from '../components/Checkbox';
import { useOpen, useStore } from '../store/storeContext';
import { draftedApart } from './draftedApart';

export function SidesCard() {
  const { client, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const own = savedDraft.style.rightWedges !== undefined;
  return (
    <section className="card sides-card" aria-label="Left and right">
      <h3>Left and right</h3>
      <Checkbox
        small={true}
        on={own}
        onSet={(isOn) =>
          change({ code: 'rightWedgesSet', own: isOn }, (book) =>
            changeStyle(book, (style) => setRightWedges(style, isOn)),
          )
        }
      >
        The right half has wedges of its own
      </Checkbox>
      <p className="hint">
        {draftedApart(client, savedDraft.style)
          ? 'Left and right are drafted apart and cut once each. Choose above which half lies on the table.'
          : 'Both sides are alike. A body that differs left to right is written down under its measurements.'}
      </p>
    </section>
  );
}
