// Measure: the client's name and the tape's numbers, each with how to take it and what the draft makes of it.

import { memo, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { addClient, changeClient, DEMO_CLIENT, MEASURE, SHELL, unusualOnes } from '../../document';
import { MEASUREMENTS, type MeasurementGroup } from '../../engine';
import { nameFocus } from '../components/awaitedFocus';
import { TextField } from '../components/fields/TextField';
import { SeenContext, useOpen, useStore } from '../store/storeContext';
import { BodyFigure, isBehind } from './BodyFigure';
import { TapeContext, type TapeShown } from './FigureHere';
import { MeasurementField } from './MeasurementField';
import { SidesFields } from './SidesFields';
import { TapeDay } from './TapeDay';

/** The groups of the form, in order; a measurement says itself which it belongs to. */
const GROUPS: readonly MeasurementGroup[] = ['round', 'down', 'across', 'fit'];

export function MeasureStep() {
  const { book, client } = useOpen();
  const [shown, setShown] = useState<TapeShown | null>(null);
  const later = useDeferredValue(book);
  const change = useStore((state) => state.change);
  const card = useRef<HTMLElement>(null);
  useEffect(() => nameFocus.arrive(card.current?.querySelector('input') ?? null));
  return (
    <div className="measure-step">
      <section ref={card} className="client-card" aria-label={MEASURE.client}>
        <TextField
          label={MEASURE.client}
          value={client.name}
          onKeep={(name) =>
            change({ code: 'clientRenamed' }, (book) => changeClient(book, (open) => ({ ...open, name })))
          }
        />
        {client.id === DEMO_CLIENT.id && book.clients.length === 1 ? <Invented /> : null}
        <TapeDay />
        <BodyFigure measurement={shown?.measurement ?? null} />
        <p className="hint figure-hint">
          {shown && isBehind(shown.measurement) ? `${MEASURE.figure.behind} ` : ''}
          {shown?.how ?? MEASURE.figure.none}
        </p>
      </section>
      {/* A number is drawn as it is typed; what all the others say to it follows as soon as there is time. */}
      <SeenContext value={later}>
        <TapeContext value={shown}>
          <TapeForm onFocus={setShown} />
        </TapeContext>
      </SeenContext>
    </div>
  );
}

const TapeForm = memo(function TapeForm({ onFocus }: { onFocus: (shown: TapeShown) => void }) {
  const { client } = useOpen();
  const odd = useMemo(
    () => unusualOnes(client.measurements, client.estimated),
    [client.measurements, client.estimated],
  );
  return (
    <form className="tape-form" onSubmit={(event) => event.preventDefault()}>
      {GROUPS.map((group) => (
        <fieldset key={group}>
          <legend>
            <h2>{MEASURE.groups[group].title}</h2>
          </legend>
          <p className="intro">{MEASURE.groups[group].intro}</p>
          {MEASUREMENTS.filter((each) => each.group === group).map(({ name }) => (
            <MeasurementField
              key={`${client.id} ${name}`}
              name={name}
              odd={odd.get(name) ?? null}
              onFocus={onFocus}
            />
          ))}
        </fieldset>
      ))}
      <SidesFields onFocus={onFocus} />
    </form>
  );
});

/** On a first visit there is somebody to try things out on, and a way to one's own work. */
function Invented() {
  const change = useStore((state) => state.change);
  return (
    <div className="invented">
      <p>{MEASURE.demo.invented}</p>
      <button
        type="button"
        onClick={() => {
          nameFocus.request();
          change({ code: 'clientAdded' }, (book) =>
            addClient(book, crypto.randomUUID(), SHELL.clientBar.newClient({ number: 2 })),
          );
        }}
      >
        {MEASURE.demo.beginOwn}
      </button>
    </div>
  );
}
