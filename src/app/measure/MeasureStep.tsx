// Measure: the client's name and the tape's numbers, each with how to take it and what the draft makes of it.

import { useState } from 'react';
import { changeClient, issueSentence, MEASUREMENT_WORDS } from '../../document';
import { MEASUREMENTS, type MeasurementName } from '../../engine';
import { LengthField } from '../parts/LengthField';
import { TextField } from '../parts/TextField';
import { useDraft, useOpen, useTable } from '../tableContext';
import { BodyFigure } from './BodyFigure';

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

const NEEDED = new Set(MEASUREMENTS.filter((each) => each.needed).map((each) => each.name));

export function MeasureStep() {
  const { client } = useOpen();
  const [focused, setFocused] = useState<MeasurementName | null>(null);
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
              <MeasurementField key={`${client.id} ${name}`} name={name} onFocus={() => setFocused(name)} />
            ))}
          </fieldset>
        ))}
      </form>
    </div>
  );
}

function MeasurementField({ name, onFocus }: { name: MeasurementName; onFocus: () => void }) {
  const { client, sheet } = useOpen();
  const { issues } = useDraft();
  const show = useTable((table) => table.show);
  const keep = useTable((table) => table.keep);
  const drop = useTable((table) => table.drop);
  const { label, how } = MEASUREMENT_WORDS[name];
  const remarks = issues
    .filter(
      (issue) =>
        issue.at.field === name && !(issue.severity === 'note' && client.measurements[name] !== null),
    )
    .map((issue) => issueSentence(issue, { unit: client.unit, style: sheet.style }));
  return (
    <LengthField
      label={label}
      value={client.measurements[name]}
      unit={client.unit}
      optional={true}
      needed={NEEDED.has(name)}
      hint={how}
      remarks={remarks}
      onFocus={onFocus}
      onShow={(mm) =>
        show((book) =>
          changeClient(book, (open) => ({ ...open, measurements: { ...open.measurements, [name]: mm } })),
        )
      }
      onKeep={() => keep(label.toLowerCase())}
      onDrop={drop}
    />
  );
}
