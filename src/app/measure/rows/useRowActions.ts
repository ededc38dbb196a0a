// What can be done with one measurement besides writing it down: in the menu of its row, and beside the figure.

import {
  asksWhich,
  type Change,
  type Client,
  changeClient,
  formatLength,
  MEASURE,
  MEASUREMENT_WORDS,
  offeredLength,
  openClient,
  setMeasurement,
  takeEstimate,
} from '../../../document';
import { MEASUREMENTS, type MeasurementName } from '../../../engine';
import { seen } from '../../store/store';
import { useOpen, useStore } from '../../store/storeContext';
import { usableEstimate } from './rowRemark';

export interface RowAction {
  readonly kind: 'meant' | 'reading' | 'estimate' | 'takeOff';
  readonly label: string;
  /** The label with the measurement in it, for those who do not see where it stands. */
  readonly fullLabel: string;
  readonly run: () => void;
}

const GIRTHS = new Set<MeasurementName>(
  MEASUREMENTS.filter((each) => each.kind === 'girth').map((each) => each.name),
);

/** @param onRead opens the readings of a measurement */
export function useRowActions(
  name: MeasurementName,
  onRead: (name: MeasurementName) => void,
): readonly RowAction[] {
  const { client } = useOpen();
  const change = useStore((state) => state.change);
  const value = useStore((state) => openClient(seen(state)).measurements[name]);
  const measurement = MEASUREMENT_WORDS[name].name;
  const readings = client.readings[name] ?? [];
  const write = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  const make = (what: Change, edit: (open: Client) => Client): void =>
    change(what, (book) => changeClient(book, edit));
  const set = (mm: number | null): void =>
    make({ code: 'measurementSet', measurement: name }, (open) => setMeasurement(open, name, mm));
  const actions: RowAction[] = [];
  if (asksWhich(readings))
    for (const mm of readings) {
      const label = MEASURE.readings.meant({ length: write(mm) });
      actions.push({ kind: 'meant', label, fullLabel: label, run: () => set(mm) });
    }
  if (GIRTHS.has(name) && value !== null)
    actions.push({
      kind: 'reading',
      label: readings.length > 1 ? MEASURE.readings.open : MEASURE.readings.second,
      fullLabel: MEASURE.readings.secondOf({ measurement }),
      run: () => onRead(name),
    });
  const expected = value === null ? usableEstimate(client, name) : null;
  if (expected) {
    const mm = offeredLength(expected, client.unit);
    actions.push({
      kind: 'estimate',
      label: MEASURE.estimate.offer({ length: write(mm) }),
      fullLabel: MEASURE.estimate.offerOf({ measurement }),
      run: () => make({ code: 'estimateTaken', measurement: name }, (open) => takeEstimate(open, name, mm)),
    });
  }
  if (value !== null)
    actions.push({
      kind: 'takeOff',
      label: MEASURE.row.takeOff,
      fullLabel: MEASURE.row.takeOff,
      run: () => set(null),
    });
  return actions;
}
