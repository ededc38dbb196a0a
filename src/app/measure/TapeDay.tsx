// On which day the tape was laid, the sets before, and beginning another.

import { useDeferredValue, useId } from 'react';
import { beginSet, changeClient, MEASURE } from '../../document';
import { formatDay, today } from '../components/files/formatDay';
import { useOpen, useStore } from '../store/storeContext';

export function TapeDay() {
  const { client } = useOpen();
  const id = useId();
  const change = useStore((state) => state.change);
  const { takenOn, earlier, measurements } = client;
  // A browser takes a while over its first field for a day: the numbers are shown before it.
  const areNumbersShown = useDeferredValue(true, false);
  const isTaken = Object.values(measurements).some((mm) => mm !== null);
  return (
    <div className="tape-day">
      <label htmlFor={id}>
        <span>{MEASURE.tapeDay.measuredOn}</span>
        {areNumbersShown ? (
          <input
            id={id}
            type="date"
            value={takenOn ?? ''}
            onChange={(event) => {
              const on = event.target.value || null;
              change({ code: 'measuringDaySet' }, (book) =>
                changeClient(book, (open) => ({ ...open, takenOn: on })),
              );
            }}
          />
        ) : (
          <span className="day-waits" />
        )}
      </label>
      <button
        type="button"
        disabled={!isTaken}
        title={MEASURE.tapeDay.whatBeginning}
        aria-describedby="begin-set"
        onClick={() =>
          change({ code: 'measurementSetBegun' }, (book) =>
            changeClient(book, (open) => beginSet(open, today())),
          )
        }
      >
        {MEASURE.tapeDay.beginSet}
      </button>
      <p id="begin-set" className="unseen">
        {MEASURE.tapeDay.whatBeginning}
      </p>
      {earlier.length > 0 ? (
        <p className="hint">
          {MEASURE.tapeDay.earlier({
            days: earlier.map(({ on }) => (on === null ? MEASURE.tapeDay.unknownDay : formatDay(on))),
          })}
        </p>
      ) : null}
    </div>
  );
}
