// A client from outside: a name, a unit and what the tape gave. Each thing wrong with it is a fault at its field.

import {
  DEMO_CLIENT,
  type Fault,
  type FileUnit,
  isObject,
  kindOf,
  type Read,
  readLength,
  readSides,
  readUnit,
  refuse,
  type Unit,
} from '../document';
import { type BodySides, MEASUREMENTS, type MeasurementName, type Measurements } from '../engine';

export interface FileClient {
  readonly name: string;
  /** The unit of the file, in which its draft is spoken of. */
  readonly unit: FileUnit;
  /** mm */
  readonly measurements: Measurements;
  /** Those of them that nobody measured. */
  readonly estimated: readonly MeasurementName[];
  /** How she differs left to right; null for not at all. */
  readonly sides: BodySides | null;
}

/** What her paper is written in. */
export const tapeOf = ({ unit }: FileClient): Unit => (unit === 'in' ? 'in' : 'cm');

/** The client that is drafted where none is given. */
export const DEMO_FILE_CLIENT: FileClient = {
  name: DEMO_CLIENT.name,
  unit: 'in',
  measurements: DEMO_CLIENT.measurements,
  estimated: DEMO_CLIENT.estimated,
  sides: DEMO_CLIENT.sides ?? null,
};

/**
 * Reads a client. A measurement that is not there counts as not taken; one that has no such name is a fault, so that a
 * slip of the keyboard is not passed over. Fields beside name, unit, measurements, sides and estimated are of no concern here.
 */
export function readClient(data: unknown): Read<FileClient> {
  if (!isObject(data)) return refuse('', `A client must be an object, not ${kindOf(data)}.`);
  const faults: Fault[] = [];
  const { name, measurements } = data;
  if (typeof name !== 'string' || name.trim() === '')
    faults.push({ path: 'name', message: 'The client needs a name: it stands on every sheet.' });
  const unit = readUnit(data.unit);
  if (!unit.ok) faults.push(...unit.faults);
  if (!isObject(measurements))
    faults.push({
      path: 'measurements',
      message:
        measurements === undefined
          ? 'The measurements are missing.'
          : `The measurements must be an object, not ${kindOf(measurements)}.`,
    });
  const taken = isObject(measurements) && unit.ok ? readTaken(measurements, unit.value, faults) : null;
  const estimated = readEstimated(data.estimated, taken, faults);
  const sides = unit.ok ? readSides(data.sides, unit.value, faults) : null;
  if (faults.length > 0 || taken === null || !unit.ok || typeof name !== 'string')
    return { ok: false, faults };
  return { ok: true, value: { name, unit: unit.value, measurements: taken, estimated, sides } };
}

/** The list of a backup: names of measurements that stand in the file and were not taken. */
function readEstimated(given: unknown, taken: Measurements | null, faults: Fault[]): MeasurementName[] {
  if (given === undefined || given === null) return [];
  if (!Array.isArray(given)) {
    faults.push({ path: 'estimated', message: `This must be a list of names, not ${kindOf(given)}.` });
    return [];
  }
  return given.flatMap((name: unknown, i) => {
    const known = MEASUREMENTS.find((each) => each.name === name)?.name;
    if (known === undefined)
      faults.push({
        path: `estimated.${i}`,
        message: `There is no measurement of this name; there are ${MEASUREMENTS.map((each) => each.name).join(', ')}.`,
      });
    else if (taken && taken[known] === null)
      faults.push({ path: `estimated.${i}`, message: `There is no ${known} among the measurements.` });
    return known === undefined ? [] : [known];
  });
}

function readTaken(given: Readonly<Record<string, unknown>>, unit: FileUnit, faults: Fault[]): Measurements {
  const names = new Set<string>(MEASUREMENTS.map(({ name }) => name));
  for (const name of Object.keys(given))
    if (!names.has(name))
      faults.push({
        path: `measurements.${name}`,
        message: `There is no measurement of this name; there are ${[...names].join(', ')}.`,
      });
  const entries = MEASUREMENTS.map(({ name }): [MeasurementName, number | null] => {
    const value = given[name] ?? null;
    return [name, value === null ? null : readLength(value, unit, `measurements.${name}`, faults)];
  });
  return Object.fromEntries(entries) as Record<MeasurementName, number | null>;
}
