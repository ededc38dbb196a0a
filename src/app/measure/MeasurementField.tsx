// One measurement: how to take it, what was read, what it was last time, and what is to be expected of it.

import { memo, useEffect, useRef, useState } from 'react';
import {
  type Client,
  changeClient,
  type Expected,
  estimatedSentence,
  expectedOf,
  formatLength,
  MEASURE,
  MEASUREMENT_WORDS,
  measurementIssueSentence,
  needsThird,
  offeredLength,
  offeredSentence,
  openClient,
  setMeasurement,
  setReading,
  takeEstimate,
  unusualSentence,
} from '../../document';
import { MEASUREMENTS, type MeasurementName } from '../../engine';
import { LengthField } from '../components/fields/LengthField';
import { useClientNumber } from '../components/fields/useNumberEdit';
import { formatDay } from '../components/formatDay';
import { seen } from '../store/store';
import { useDraft, useOpen, useStore } from '../store/storeContext';
import { FigureHere, type TapeShown } from './FigureHere';

const NEEDED = new Set<MeasurementName>(MEASUREMENTS.filter((each) => each.needed).map((each) => each.name));
const GIRTHS = new Set<MeasurementName>(
  MEASUREMENTS.filter((each) => each.kind === 'girth').map((each) => each.name),
);

interface MeasurementFieldProps {
  readonly name: MeasurementName;
  /** What was to be expected, where the number is unusual. */
  readonly odd: Expected | null;
  readonly onFocus: (shown: TapeShown) => void;
}

export const MeasurementField = memo(function MeasurementField(props: MeasurementFieldProps) {
  const { name, odd, onFocus } = props;
  const { client } = useOpen();
  const { issues } = useDraft();
  const edit = useClientNumber();
  const { label, how } = MEASUREMENT_WORDS[name];
  const { unit } = client;
  // The number being typed is always the latest; all that is said about it may come a moment later.
  const value = useStore((state) => openClient(seen(state)).measurements[name]);
  // A number that is not there yet is no fault: its label says that it is needed.
  const own = issues.filter((issue) => issue.at.field === name && issue.code !== 'measurementMissing');
  const said = (notes: boolean): string[] =>
    own
      .filter((issue) => (issue.severity === 'note') === notes)
      .flatMap((issue) => measurementIssueSentence(issue, client.unit) ?? []);
  const remarks = said(false);
  return (
    <div className="measurement">
      <LengthField
        label={label}
        value={value}
        unit={unit}
        optional={true}
        remember={`${client.id} ${name}`}
        needed={NEEDED.has(name)}
        hint={how}
        remarks={remarks}
        refused={own.some(({ severity }) => severity === 'error')}
        onFocus={() => onFocus({ field: name, measurement: name, how })}
        {...edit({ code: 'measurementSet', measurement: name }, (open, mm) => setMeasurement(open, name, mm))}
      />
      <FigureHere field={name} />
      {value === null ? <p className="hint">{said(true).join(' ')}</p> : null}
      <p className="unusual" aria-live="polite">
        {odd && remarks.length === 0 ? unusualSentence(odd, unit) : ''}
      </p>
      <Since client={client} name={name} />
      <Estimate client={client} name={name} />
      {GIRTHS.has(name) && value !== null ? <Readings key={client.id} client={client} name={name} /> : null}
    </div>
  );
});

interface PartProps {
  readonly client: Client;
  readonly name: MeasurementName;
}

/** What changed since the set before. */
function Since({ client, name }: PartProps) {
  const last = client.earlier.at(-1);
  const [before, now] = [last?.measurements[name] ?? null, client.measurements[name]];
  if (!last || before === null) return null;
  const write = (mm: number, signed = false): string =>
    formatLength(mm, client.unit, { withUnit: true, signed });
  const day = last.on === null ? null : formatDay(last.on);
  const same = now !== null && Math.abs(now - before) < 0.5;
  return (
    <p className={same ? 'since' : 'since changed'}>
      {same
        ? MEASURE.since.same({ day })
        : now === null
          ? MEASURE.since.before({ length: write(before), day })
          : MEASURE.since.changed({ length: write(before), day, difference: write(now - before, true) })}
    </p>
  );
}

/** Where nothing was measured, what may stand in for it; where it does, that it does. */
function Estimate({ client, name }: PartProps) {
  const change = useStore((state) => state.change);
  const marked = client.estimated.includes(name);
  if (client.measurements[name] !== null && !marked) return null;
  // The draft stands in for this one by itself, and says with what.
  if (name === 'overBust' && !marked) return null;
  const expected = expectedOf(name, client.measurements, client.estimated);
  if (!expected || client.measurements.bust === null) return null;
  if (marked) return <p className="estimate marked">{estimatedSentence(expected, client.unit)}</p>;
  const measurement = MEASUREMENT_WORDS[name].name;
  return (
    <p className="estimate">
      {offeredSentence(expected, client.unit)}{' '}
      <button
        type="button"
        className="quiet"
        aria-label={MEASURE.estimate.offerOf({ measurement })}
        onClick={() =>
          change({ code: 'estimateTaken', measurement: name }, (book) =>
            changeClient(book, (open) => takeEstimate(open, name, offeredLength(expected, client.unit))),
          )
        }
      >
        {MEASURE.estimate.use}
      </button>
    </p>
  );
}

/** The tape laid again: a second reading, and a third where two differ. */
function Readings({ client, name }: PartProps) {
  const [asked, setAsked] = useState(false);
  const fields = useRef<HTMLDivElement>(null);
  // The button that asked has given way to the field.
  useEffect(() => {
    if (asked) fields.current?.querySelector('input')?.focus();
  }, [asked]);
  const readings = client.readings[name] ?? [];
  const measurement = MEASUREMENT_WORDS[name].name;
  if (!asked && readings.length < 2)
    return (
      <button
        type="button"
        className="quiet read-again"
        aria-label={MEASURE.readings.secondOf({ measurement })}
        onClick={() => setAsked(true)}
      >
        {MEASURE.readings.second}
      </button>
    );
  return (
    <div ref={fields} className="readings">
      {readings.length >= 2 ? (
        <p className="hint">
          {MEASURE.readings.first({
            length: formatLength(readings[0] ?? 0, client.unit, { withUnit: true }),
          })}
        </p>
      ) : null}
      <Reading
        client={client}
        name={name}
        which={1}
        label={MEASURE.readings.second}
        fullLabel={MEASURE.readings.secondOf({ measurement })}
      />
      {needsThird(readings) || readings.length > 2 ? (
        <>
          {needsThird(readings) ? (
            <p className="unusual" role="status">
              {MEASURE.readings.differ({ most: client.unit === 'in' ? '⅜ in' : '1 cm' })}
            </p>
          ) : null}
          <Reading
            client={client}
            name={name}
            which={2}
            label={MEASURE.readings.third}
            fullLabel={MEASURE.readings.thirdOf({ measurement })}
          />
        </>
      ) : null}
    </div>
  );
}

interface ReadingProps extends PartProps {
  readonly which: 1 | 2;
  readonly label: string;
  /** The label with the measurement in it. */
  readonly fullLabel: string;
}

function Reading({ client, name, which, label, fullLabel }: ReadingProps) {
  const edit = useClientNumber();
  return (
    <div className="reading">
      <span aria-hidden="true">{label}</span>
      <LengthField
        compact={true}
        optional={true}
        label={fullLabel}
        remember={`${client.id} ${name} reading ${which}`}
        value={client.readings[name]?.[which] ?? null}
        unit={client.unit}
        {...edit({ code: 'readingSet', measurement: name, which }, (open, mm) =>
          setReading(open, name, which, mm),
        )}
      />
    </div>
  );
}
