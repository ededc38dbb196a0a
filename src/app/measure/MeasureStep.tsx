// Measure: a table of the tape's numbers beside a figure with the tape laid for the field in hand.

import { useCallback, useDeferredValue, useEffect, useState } from 'react';
import { MEASURE } from '../../document';
import type { MeasurementName } from '../../engine';
import { arriveAtMeasurement } from '../components/awaited/awaitedPlace';
import { SeenContext, useOpen } from '../store/storeContext';
import { MeasureHead } from './MeasureHead';
import { MeasurePanel } from './MeasurePanel';
import { NextStep } from './NextStep';
import type { FieldShown } from './rows/fieldShown';
import { MeasurementRows } from './rows/MeasurementRows';
import { type AlsoGroup, alsoGroupOf } from './rows/rowGroups';

/** The measurements whose readings are open, and of which client. */
interface OpenReadings {
  readonly of: string;
  readonly names: readonly MeasurementName[];
}

const NONE: readonly MeasurementName[] = [];

export function MeasureStep() {
  const { book, client } = useOpen();
  const [shown, setShown] = useState<FieldShown | null>(null);
  const [also, setAlso] = useState<ReadonlySet<AlsoGroup>>(new Set());
  const showGroup = useCallback(
    (group: AlsoGroup, isShown: boolean): void =>
      setAlso((before) => {
        if (before.has(group) === isShown) return before;
        const after = new Set(before);
        if (isShown) after.add(group);
        else after.delete(group);
        return after;
      }),
    [],
  );
  const show = useCallback(
    (field: FieldShown): void => {
      setShown(field);
      // So that its rows stay when the last number of the group is taken out.
      const group = alsoGroupOf(field.measurement);
      if (group) showGroup(group, true);
    },
    [showGroup],
  );
  const [readings, setReadings] = useState<OpenReadings | null>(null);
  useEffect(arriveAtMeasurement, []);
  const later = useDeferredValue(book);
  const reading = readings?.of === client.id ? readings.names : NONE;
  const read = useCallback(
    (name: MeasurementName): void =>
      setReadings((before) => {
        const open = before?.of === client.id ? before.names : NONE;
        return { of: client.id, names: [...open.filter((each) => each !== name), name] };
      }),
    [client.id],
  );
  // The field takes the focus first; the tape is laid on the figure as soon as there is time.
  const laid = useDeferredValue(shown);
  return (
    <div className="measure-step">
      <section className="measure-table" aria-label={MEASURE.rows}>
        <MeasureHead also={also} onAlso={showGroup} />
        {/* A number is drawn as it is typed; what all the others say to it follows as soon as there is time. */}
        <SeenContext value={later}>
          <MeasurementRows
            inHand={shown?.field ?? null}
            also={also}
            reading={reading}
            onFocus={show}
            onRead={read}
          />
        </SeenContext>
      </section>
      <SeenContext value={later}>
        <aside className="measure-side" aria-label={MEASURE.figure.label}>
          <MeasurePanel shown={laid} onRead={read} />
          <NextStep />
        </aside>
      </SeenContext>
    </div>
  );
}
