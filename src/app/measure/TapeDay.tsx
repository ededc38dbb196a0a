// On which day the tape was laid, the sets before, and beginning another.

import { beginSet, changeClient } from '../../document';
import { formatDay, today } from '../components/formatDay';
import { useOpen, useStore } from '../store/storeContext';

export function TapeDay() {
  const { client } = useOpen();
  const change = useStore((state) => state.change);
  const { takenOn, earlier } = client;
  return (
    <div className="tape-day">
      <label>
        <span>Measured on</span>
        <input
          type="date"
          value={takenOn ?? ''}
          onChange={(event) => {
            const on = event.target.value || null;
            change({ code: 'measuringDaySet' }, (book) =>
              changeClient(book, (open) => ({ ...open, takenOn: on })),
            );
          }}
        />
      </label>
      <button
        type="button"
        onClick={() =>
          change({ code: 'measurementSetBegun' }, (book) =>
            changeClient(book, (open) => beginSet(open, today())),
          )
        }
      >
        Begin a new set
      </button>
      <p className="hint">
        For measuring her again: the numbers of now are kept under their day, and the new set begins from
        them.
      </p>
      {earlier.length > 0 ? (
        <p className="hint">
          Before:{' '}
          {earlier.map(({ on }) => (on === null ? 'a day not written down' : formatDay(on))).join('; ')}. What
          changed stands beside each number.
        </p>
      ) : null}
    </div>
  );
}
