// Reads a table of sizes, or of a cast: a row each, with a name and measurements. A row with a fault is left out and said, and
// stops no other.

import { MEASUREMENTS, type MeasurementName, type Measurements } from '../../engine';
import {
  type CellFault,
  type Person,
  type ReadColumn,
  type ReadPeople,
  readPeople,
} from '../files/readPeople';
import type { ChosenUses } from '../files/tableColumns';
import type { LengthUnit } from '../units/lengthUnit';

/** A body of the table by its name. */
export interface NamedBody {
  readonly name: string;
  /** mm; null where its cell is empty or the table has no such column. */
  readonly measurements: Measurements;
}

/** Why a row is left out. */
export type RowFault =
  | ({ readonly code: 'notALength' } & CellFault)
  | { readonly code: 'nameMissing'; readonly row: number }
  | { readonly code: 'nameTwice'; readonly row: number; readonly name: string };

export interface ReadBodies {
  /** The rows without a fault, in the order of the table. */
  readonly bodies: readonly NamedBody[];
  readonly faults: readonly RowFault[];
  /** What each column was read as. */
  readonly columns: readonly ReadColumn[];
}

/** The sizes of a table, as {@link readPeople} reads it; every row needs a name of its own. */
export const readSizes = (text: string, unit: LengthUnit, chosen?: ChosenUses): ReadBodies =>
  bodiesOf(readPeople(text, unit, chosen), (person) => person.name);

/** The people of a cast: one without a name, or with the name of another, goes by a name that `nameFor` makes of hers. */
export function readCast(
  text: string,
  unit: LengthUnit,
  nameFor: (row: { readonly row: number; readonly name: string }) => string,
  chosen?: ChosenUses,
): ReadBodies {
  const read = readPeople(text, unit, chosen);
  const seen = new Set<string>();
  const name = (person: Person): string => {
    const own = person.name === '' || seen.has(person.name) ? nameFor(person) : person.name;
    seen.add(own);
    return own;
  };
  return bodiesOf(read, name);
}

function bodiesOf(
  { people, faults: cells, columns }: ReadPeople,
  nameOf: (person: Person) => string,
): ReadBodies {
  const faults: RowFault[] = cells.map((cell) => ({ code: 'notALength', ...cell }));
  const bad = new Set(cells.map(({ row }) => row));
  const taken = new Set<string>();
  const bodies = people.flatMap((person): NamedBody[] => {
    const name = nameOf(person);
    if (name === '') faults.push({ code: 'nameMissing', row: person.row });
    else if (taken.has(name)) faults.push({ code: 'nameTwice', row: person.row, name });
    else if (!bad.has(person.row)) {
      taken.add(name);
      return [{ name, measurements: measurementsOf(person) }];
    }
    return [];
  });
  return { bodies, faults: faults.sort((a, b) => a.row - b.row), columns };
}

const measurementsOf = ({ measured }: Person): Measurements =>
  Object.fromEntries(
    MEASUREMENTS.map(({ name }): [MeasurementName, number | null] => [name, measured[name] ?? null]),
  ) as Record<MeasurementName, number | null>;
