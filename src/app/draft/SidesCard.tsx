// Left and right: whether the right half has wedges of its own.

import { changeStyle, setRightWedges } from '../../document';
import { Tick } from '../components/Checkbox';
import { useOpen, useTable } from '../store/storeContext';
import { draftedApart } from './draftedApart';

export function SidesCard() {
  const { client, sheet } = useOpen();
  const change = useTable((table) => table.change);
  const own = sheet.style.rightWedges !== undefined;
  return (
    <section className="card sides-card" aria-label="Left and right">
      <h3>Left and right</h3>
      <Tick
        small={true}
        on={own}
        onSet={(wanted) =>
          change(wanted ? 'wedges of the right’s own' : 'the same wedges left and right', (book) =>
            changeStyle(book, (style) => setRightWedges(style, wanted)),
          )
        }
      >
        The right half has wedges of its own
      </Tick>
      <p className="hint">
        {draftedApart(client, sheet.style)
          ? 'Left and right are drafted apart and cut once each. Choose above which half lies on the table.'
          : 'Both sides are alike. A body that differs left to right is written down under its measurements.'}
      </p>
    </section>
  );
}
