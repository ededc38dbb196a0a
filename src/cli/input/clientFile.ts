// Reads a client from outside: name, unit and measurements. Every fault stands at its field.

import {
  DEMO_CLIENT,
  type Fault,
  FILES,
  type FileUnit,
  isObject,
  kindOf,
  type Read,
  readLength,
  readSides,
  readUnit,
  refuse,
  type Unit,
} from '../../document';
import { type BodySides, MEASUREMENTS, type MeasurementName, type Measurements } from '../../engine';

export interface FileClient {
  readonly name: string;
  /** The unit of the file; messages about its draft give lengths in it. */
  readonly unit: FileUnit;
  /** Lengths in mm; null where not taken. */
  readonly measurements: Measurements;
  /** Measurements that were estimated and not taken. */
  readonly estimated: readonly MeasurementName[];
  /** How the body differs left to right; null where it does not. */
  readonly sides: BodySides | null;
}

/** The unit of lengths on paper: inches, or cm for a file in mm. */
export const paperUnit = ({ unit }: FileClient): Unit => (unit === 'in' ? 'in' : 'cm');

/** The client that is drafted where the command names none. */
export const DEMO_FILE_CLIENT: FileClient = {
  name: DEMO_CLIENT.name,
  unit: 'in',
  measurements: DEMO_CLIENT.measurements,
  estimated: DEMO_CLIENT.estimated,
  sides: DEMO_CLIENT.sides ?? null,
};

/**
 * Reads a client. A measurement that is left out counts as not taken; an unknown name is a fault, since it may be a typing
 * error. Fields other than name, unit, measurements, sides and estimated are ignored.
 */
export function readClient(data: unknown): Read<FileClient> {
  if (!isObject(data)) return refuse('', FILES.client.notObject({ kind: kindOf(data) }));
  const faults: Fault[] = [];
  const { name, measurements } = data;
  if (typeof name !== 'string' || name.trim() === '')
    faults.push({ path: 'name', message: FILES.client.nameMissing });
  const unit = readUnit(data.unit);
  if (!unit.ok) faults.push(...unit.faults);
  if (!isObject(measurements))
    faults.push({
      path: 'measurements',
      message:
        measurements === undefined
          ? FILES.client.measurementsMissing
          : FILES.client.measurementsNotObject({ kind: kindOf(measurements) }),
    });
  const taken = isObject(measurements) && unit.ok ? readTaken(measurements, unit.value, faults) : null;
  const estimated = readEstimated(data.estimated, taken, faults);
  const sides = unit.ok ? readSides(data.sides, unit.value, faults) : null;
  if (faults.length > 0 || taken === null || !unit.ok || typeof name !== 'string')
    return { ok: false, faults };
  return { ok: true, value: { name, unit: unit.value, measurements: taken, estimated, sides } };
}

/** The list of estimated measurements, as in a backup; each must be among the measurements of the file. */
function readEstimated(given: unknown, taken: Measurements | null, faults: Fault[]): MeasurementName[] {
  if (given === undefined || given === null) return [];
  if (!Array.isArray(given)) {
    faults.push({ path: 'estimated', message: FILES.client.estimatedNotList({ kind: kindOf(given) }) });
    return [];
  }
  return given.flatMap((name: unknown, i) => {
    const known = MEASUREMENTS.find((each) => each.name === name)?.name;
    if (known === undefined)
      faults.push({
        path: `estimated.${i}`,
        message: FILES.client.measurementUnknown({ names: MEASUREMENTS.map((each) => each.name) }),
      });
    else if (taken && taken[known] === null)
      faults.push({ path: `estimated.${i}`, message: FILES.client.estimatedNotGiven({ name: known }) });
    return known === undefined ? [] : [known];
  });
}

function readTaken(given: Readonly<Record<string, unknown>>, unit: FileUnit, faults: Fault[]): Measurements {
  const names = new Set<string>(MEASUREMENTS.map(({ name }) => name));
  for (const name of Object.keys(given))
    if (!names.has(name))
      faults.push({
        path: `measurements.${name}`,
        message: FILES.client.measurementUnknown({ names: [...names] }),
      });
  const entries = MEASUREMENTS.map(({ name }): [MeasurementName, number | null] => {
    const value = given[name] ?? null;
    return [name, value === null ? null : readLength(value, unit, `measurements.${name}`, faults)];
  });
  return Object.fromEntries(entries) as Record<MeasurementName, number | null>;
}
