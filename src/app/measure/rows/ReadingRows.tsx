// The tape laid again: rows for a second reading, and for a third where two differ.

import { useEffect, useRef } from 'react';
import {
  asksWhich,
  formatLength,
  MEASURE,
  MEASUREMENT_WORDS,
  needsThird,
  setReading,
} from '../../../document';
import type { MeasurementName } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { useClientNumber } from '../../components/fields/useNumberEdit';
import { useOpen } from '../../store/storeContext';
import { inputOf } from './fieldShown';
import { useRowActions } from './useRowActions';

interface ReadingRowsProps {
  readonly name: MeasurementName;
  readonly isInHand: boolean;
  readonly onFocus: () => void;
}

export function ReadingRows({ name, isInHand, onFocus }: ReadingRowsProps) {
  const { client } = useOpen();
  const rows = useRef<HTMLDivElement>(null);
  // They were asked for: the first of them takes the number.
  useEffect(() => {
    rows.current?.querySelector('input')?.focus();
  }, []);
  const readings = client.readings[name] ?? [];
  const measurement = MEASUREMENT_WORDS[name].name;
  const isAsking = asksWhich(readings);
  return (
    <div ref={rows} className="reading-rows" data-in-hand={isInHand || undefined}>
      <Reading name={name} which={1} label={MEASURE.readings.secondOf({ measurement })} onFocus={onFocus} />
      {isAsking ? <WhichIsMeant name={name} readings={readings} /> : null}
      {!isAsking && needsThird(readings) ? (
        <p className="unusual" role="status">
          {MEASURE.readings.differ({ most: client.unit === 'in' ? '⅜ in' : '1 cm' })}
        </p>
      ) : null}
      {needsThird(readings) || readings.length > 2 ? (
        <Reading name={name} which={2} label={MEASURE.readings.thirdOf({ measurement })} onFocus={onFocus} />
      ) : null}
    </div>
  );
}

/** Asked where two readings are too far apart to be of the same thing; the first one holds until it is answered. */
function WhichIsMeant({ name, readings }: { name: MeasurementName; readings: readonly number[] }) {
  const { client } = useOpen();
  const answers = useRowActions(name, () => undefined).filter(({ kind }) => kind === 'meant');
  const [first = 0, second = 0] = readings;
  const write = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  return (
    <div className="which-meant">
      <p className="unusual" role="status">
        {MEASURE.readings.which({ first: write(first), second: write(second) })}
      </p>
      {answers.map(({ label, run }) => (
        // Out of the order of Tab, as the row's menu has the same.
        <button
          key={label}
          type="button"
          tabIndex={-1}
          onClick={() => {
            inputOf(name)?.focus();
            run();
          }}
        >
          {label}
        </button>
      ))}
    </div>
  );
}

interface ReadingProps {
  readonly name: MeasurementName;
  readonly which: 1 | 2;
  readonly label: string;
  readonly onFocus: () => void;
}

function Reading({ name, which, label, onFocus }: ReadingProps) {
  const { client } = useOpen();
  const edit = useClientNumber();
  return (
    <div className="tape-row reading">
      <LengthField
        optional={true}
        hasFractionKeys={true}
        label={label}
        remember={`${client.id} ${name} reading ${which}`}
        value={client.readings[name]?.[which] ?? null}
        unit={client.unit}
        onFocus={onFocus}
        {...edit({ code: 'readingSet', measurement: name, which }, (open, mm) =>
          setReading(open, name, which, mm),
        )}
      />
    </div>
  );
}
