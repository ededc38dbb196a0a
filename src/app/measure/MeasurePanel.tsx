// Beside the rows: the figure with the tape laid for the field in hand, how it is taken, and what is to be said of its number.

import { memo } from 'react';
import {
  asksWhich,
  estimatedSentence,
  expectedOf,
  formatLength,
  MEASURE,
  measurementIssueSentence,
  offeredSentence,
  type Unit,
  unusualOnes,
  unusualSentence,
  usualRange,
} from '../../document';
import { MEASUREMENTS, type MeasurementName } from '../../engine';
import { LaterSection } from '../components/later/LaterSection';
import { lazyPart } from '../components/later/later';
import { useLaterIssues } from '../store/laterIssues';
import { useOpen } from '../store/storeContext';
import { BodyFigure, isBehind, readingAt } from './figure/BodyFigure';
import { Invented, useIsInvented } from './Invented';
import { type FieldShown, inputOf } from './rows/fieldShown';
import { sinceBefore, usableEstimate } from './rows/rowRemark';
import { useRowActions } from './rows/useRowActions';

/** Shown where nothing is in hand yet; its pictures come after the first load. */
const FirstRun = lazyPart(async () => (await import('../help/FirstRun')).default);

interface MeasurePanelProps {
  readonly shown: FieldShown | null;
  /** Opens the readings of a measurement. */
  readonly onRead: (name: MeasurementName) => void;
}

export const MeasurePanel = memo(function MeasurePanel({ shown, onRead }: MeasurePanelProps) {
  const measurement = shown?.measurement ?? null;
  const isFirstRun = useIsInvented() && shown === null;
  return (
    <>
      <Invented />
      {isFirstRun ? (
        <LaterSection>
          <FirstRun />
        </LaterSection>
      ) : null}
      <div className={shown ? 'field-in-hand' : 'field-in-hand none'} hidden={isFirstRun}>
        <p className="hint seen-from">
          {isBehind(measurement) ? MEASURE.figure.behind : MEASURE.figure.front}
        </p>
        <div className="figure-whole">
          <BodyFigure measurement={measurement} />
        </div>
        <div className="figure-near">
          <BodyFigure measurement={measurement} near={true} />
        </div>
        {shown ? (
          <div className="reading-at" style={{ top: `${100 * readingAt(shown.measurement)}%` }}>
            <Reading shown={shown} onRead={onRead} />
          </div>
        ) : (
          <p className="hint reading-at choose">{MEASURE.figure.none}</p>
        )}
      </div>
    </>
  );
});

interface ReadingProps {
  readonly shown: FieldShown;
  readonly onRead: (name: MeasurementName) => void;
}

function Reading({ shown: { field, measurement, label, how }, onRead }: ReadingProps) {
  const { client } = useOpen();
  const { unit } = client;
  const other: Unit = unit === 'in' ? 'cm' : 'in';
  // A number of how the sides differ has the tape of its level, and not its number.
  const isOwn = field === measurement;
  const value = isOwn ? client.measurements[measurement] : null;
  return (
    <>
      <h2 className="reading-name">{label}</h2>
      {value === null ? null : (
        <p className="reading-number">
          <b>{formatLength(value, unit, { withUnit: true })}</b>{' '}
          <span>{formatLength(value, other, { withUnit: true })}</span>
        </p>
      )}
      <p className="how">{how}</p>
      {isOwn ? <Said name={measurement} /> : null}
      {isOwn ? <Actions name={measurement} onRead={onRead} /> : null}
    </>
  );
}

/** What is usual for her, what changed since the set before, and the notes of the draft. */
function Said({ name }: { name: MeasurementName }) {
  const { client } = useOpen();
  const issues = useLaterIssues();
  const { unit, measurements, estimated } = client;
  const value = measurements[name];
  const notes = issues
    .filter(({ at, severity }) => at.field === name && severity === 'note')
    .flatMap((issue) => measurementIssueSentence(issue, unit) ?? []);
  const since = sinceBefore(client, name);
  return (
    <>
      <p className="hint usual">{usualSaid()}</p>
      {since ? <p className="hint since-before">{since}</p> : null}
      {value === null || estimated.includes(name) ? <p className="hint notes">{notes.join(' ')}</p> : null}
    </>
  );

  function usualSaid(): string {
    const odd = unusualOnes(measurements, estimated).get(name);
    const estimate = usableEstimate(client, name);
    if (estimated.includes(name) && estimate) return estimatedSentence(estimate, unit);
    if (value === null) return estimate ? offeredSentence(estimate, unit) : '';
    if (odd) return unusualSentence(odd, unit);
    const known = MEASUREMENTS.some((each) => each.name !== name && measurements[each.name] !== null);
    const expected = known ? expectedOf(name, measurements, estimated) : null;
    return expected ? MEASURE.usual({ range: usualRange(expected, unit) }) : '';
  }
}

/** The same as in the row's menu, but for taking the number off. */
function Actions({ name, onRead }: { name: MeasurementName; onRead: (name: MeasurementName) => void }) {
  const { client } = useOpen();
  const actions = useRowActions(name, onRead).filter(({ kind }) => kind !== 'takeOff');
  const readings = client.readings[name] ?? [];
  const [first = 0, second = 0] = readings;
  const write = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  if (actions.length === 0) return null;
  return (
    <div className="actions">
      {asksWhich(readings) ? (
        <p className="unusual">{MEASURE.readings.which({ first: write(first), second: write(second) })}</p>
      ) : null}
      {actions.map(({ kind, label, fullLabel, run }) => (
        <button
          key={label}
          type="button"
          aria-label={kind === 'reading' || kind === 'estimate' ? fullLabel : undefined}
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
