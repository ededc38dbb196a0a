// What a maker does with the tape's numbers: writes one down, reads it again, estimates one, begins another day's set.

import { inches, type MeasurementName } from '../../../engine';
import type { Client } from '../../model/book';

/** Two readings that differ by more than this ask for a third. mm */
const READINGS_APART_MM = 10;

/** Two readings that differ by more than this are not of the same thing: one of them is a slip. mm */
const READINGS_FAR_MM = inches(2);

/** Writes a measurement down, mm; null takes it off. What was read or estimated for it before is gone. */
export function setMeasurement(client: Client, name: MeasurementName, mm: number | null): Client {
  const { [name]: _gone, ...readings } = client.readings;
  return {
    ...client,
    measurements: { ...client.measurements, [name]: mm },
    readings,
    estimated: client.estimated.filter((each) => each !== name),
  };
}

/** Puts an estimate where nothing was measured, mm, and marks it as one. */
export function takeEstimate(client: Client, name: MeasurementName, mm: number): Client {
  const written = setMeasurement(client, name, mm);
  return { ...written, estimated: [...written.estimated, name] };
}

/**
 * Writes down what was read the second (`which` 1) or third (2) time, mm; null takes it and those after it off. The
 * first reading is what stood there before, and the measurement becomes what the readings settle on.
 */
export function setReading(client: Client, name: MeasurementName, which: 1 | 2, mm: number | null): Client {
  const first = client.measurements[name];
  if (first === null) return client;
  const before = client.readings[name] ?? [first];
  const readings =
    mm === null ? before.slice(0, which) : [...before.slice(0, which), mm, ...before.slice(which + 1)];
  const [only] = readings;
  if (readings.length === 1 && only !== undefined) return setMeasurement(client, name, only);
  const written = setMeasurement(client, name, agreedReading(readings));
  return { ...written, readings: { ...written.readings, [name]: readings } };
}

/** A third reading is asked for: there are two, and they differ by more than {@link READINGS_APART_MM}. */
export function needsThird(readings: readonly number[]): boolean {
  const [a, b] = readings;
  return a !== undefined && b !== undefined && readings.length === 2 && Math.abs(a - b) > READINGS_APART_MM;
}

/** Which reading is meant has to be asked: there are two, and they differ by more than {@link READINGS_FAR_MM}. */
export function asksWhich(readings: readonly number[]): boolean {
  const [a, b] = readings;
  return a !== undefined && b !== undefined && readings.length === 2 && Math.abs(a - b) > READINGS_FAR_MM;
}

/** What readings come to, mm: the middle one of three, the mean of two, the first of two while it is asked which is meant. */
function agreedReading(readings: readonly number[]): number {
  if (asksWhich(readings)) return readings[0] ?? 0;
  const sorted = [...readings].sort((a, b) => a - b);
  const [low, middle] = [sorted[0] ?? 0, sorted[1] ?? 0];
  return sorted.length === 3 ? middle : (low + middle) / 2;
}

/** Begins the set of another day, `on` (ISO): what is in use goes to the earlier ones, and stays as what to begin from. */
export function beginSet(client: Client, on: string): Client {
  return {
    ...client,
    earlier: [...client.earlier, { on: client.takenOn, measurements: client.measurements }],
    takenOn: on,
    readings: {},
  };
}
