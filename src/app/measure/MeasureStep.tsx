// Measure: the client's name and the tape's numbers, each with how to take it and what the draft makes of it.

import { useMemo, useState } from 'react';
import { changeClient, MEASUREMENT_WORDS, unusualOnes } from '../../document';
import type { MeasurementName } from '../../engine';
import { TextField } from '../parts/TextField';
import { useOpen, useTable } from '../tableContext';
import { BodyFigure } from './BodyFigure';
import { MeasurementField } from './MeasurementField';
import { TapeDay } from './TapeDay';

const GROUPS: readonly { title: string; intro: string; names: readonly MeasurementName[] }[] = [
  {
    title: 'Round the body',
    intro: 'The tape level and snug, never pulled in.',
    names: ['overBust', 'bust', 'underBust', 'waist', 'highHip', 'hip'],
  },
  {
    title: 'Down from the neck',
    intro: 'All from the point where the shoulder line meets the neck.',
    names: ['neckToBust', 'neckToUnderBust', 'neckToWaist', 'neckToHip', 'backNeckToWaist'],
  },
  {
    title: 'Across, and for fit',
    intro: 'How far apart, how high under the arm, how long to sit in.',
    names: ['bustPointWidth', 'acrossShoulder', 'neckWidth', 'underarmToWaist', 'waistToLap'],
  },
];

export function MeasureStep() {
  const { client } = useOpen();
  const [focused, setFocused] = useState<MeasurementName | null>(null);
  const odd = useMemo(
    () => unusualOnes(client.measurements, client.estimated),
    [client.measurements, client.estimated],
  );
  const change = useTable((table) => table.change);
  return (
    <div className="measure-step">
      <section className="client-card" aria-label="Client">
        <TextField
          label="Client"
          value={client.name}
          onKeep={(name) =>
            change('client’s name', (book) => changeClient(book, (open) => ({ ...open, name })))
          }
        />
        <TapeDay />
        <BodyFigure measurement={focused} />
        <p className="hint figure-hint">
          {focused ? MEASUREMENT_WORDS[focused].how : 'Choose a field to see where the tape goes.'}
        </p>
      </section>
      <form className="tape-form" onSubmit={(event) => event.preventDefault()}>
        {GROUPS.map(({ title, intro, names }) => (
          <fieldset key={title}>
            <legend>{title}</legend>
            <p className="intro">{intro}</p>
            {names.map((name) => (
              <MeasurementField
                key={`${client.id} ${name}`}
                name={name}
                odd={odd.get(name) ?? null}
                onFocus={() => setFocused(name)}
              />
            ))}
          </fieldset>
        ))}
      </form>
    </div>
  );
}
