// Reads a table of people: a row each, a column for the name and one for each measurement.

import type { MeasurementName } from '../../engine';
import type { LengthUnit } from '../units/lengthUnit';
import { parseLength } from '../units/parseLength';
import { type CsvRow, csvRows } from './csvRows';
import { measurementNamed, plainName } from './measurementNamed';

export interface Person {
  /** Row of the file, from 1. */
  readonly row: number;
  /** Empty where her row has none. */
  readonly name: string;
  /** mm */
  readonly measured: Partial<Readonly<Record<MeasurementName, number>>>;
}

/** A cell that is no length; the others of its row are taken. */
export interface CellFault {
  /** Row of the file, from 1. */
  readonly row: number;
  /** The heading of its column. */
  readonly column: string;
  readonly text: string;
}

export interface ReadPeople {
  readonly people: readonly Person[];
  readonly faults: readonly CellFault[];
  /** Headings that are no measurement; their columns are passed over. */
  readonly unknown: readonly string[];
}

interface Column {
  readonly heading: string;
  readonly name: MeasurementName | null;
  readonly unit: LengthUnit;
}

/**
 * The people of a table. The first row names the columns by the names of the measurements, with a unit behind them if one is meant
 * ("Waist (cm)"); the column "Name" or "Client" has the names, else the first one that is no measurement. A number may name its
 * unit; one that does not is in that of its column, else in `unit`. A second row that has units alone gives them to its columns.
 * Null where no column is a measurement.
 */
export function readPeople(text: string, unit: LengthUnit): ReadPeople | null {
  const [head, ...below] = csvRows(text);
  const headed = (head?.cells ?? []).map((heading) => columnOf(heading, unit));
  if (!headed.some(({ name }) => name !== null)) return null;
  const units = unitRow(below[0], headed);
  const columns = units ?? headed;
  const rows = units ? below.slice(1) : below;
  const names = columns.findIndex(({ heading }) => /^(name|client)$/u.test(plainName(heading)));
  const nameAt = names >= 0 ? names : columns.findIndex(({ name }) => name === null);
  const faults: CellFault[] = [];
  const people = rows.map(({ line, cells }): Person => {
    const measured: Partial<Record<MeasurementName, number>> = {};
    for (const [i, column] of columns.entries()) {
      const cell = cells[i] ?? '';
      if (column.name === null || i === nameAt || cell === '') continue;
      const parsed = parseLength(cell, column.unit);
      if (parsed.ok) measured[column.name] = parsed.mm;
      else faults.push({ row: line, column: column.heading, text: cell });
    }
    return { row: line, name: cells[nameAt] ?? '', measured };
  });
  const unknown = columns.filter(({ name, heading }, i) => name === null && i !== nameAt && heading !== '');
  return { people, faults, unknown: unknown.map(({ heading }) => heading) };
}

function columnOf(heading: string, unit: LengthUnit): Column {
  const [, words = heading, named] =
    /^(.*?)[\s([,]+(in|ins|inch|inches|cm|mm)\s*[)\]]?$/iu.exec(heading) ?? [];
  return { heading, name: measurementNamed(words), unit: named === undefined ? unit : unitNamed(named) };
}

const unitNamed = (word: string): LengthUnit =>
  /^cm/iu.test(word) ? 'cm' : /^mm/iu.test(word) ? 'mm' : 'in';

/** The columns in the units of a row that has nothing but units under its measurements; null for any other row. */
function unitRow(row: CsvRow | undefined, columns: readonly Column[]): Column[] | null {
  const words = columns.map(({ name }, i) => (name === null ? '' : (row?.cells[i] ?? '')));
  const given = words.filter((word) => word !== '');
  if (given.length === 0 || !given.every((word) => UNIT_WORD.test(word))) return null;
  return columns.map((column, i) => {
    const [, word] = UNIT_WORD.exec(words[i] ?? '') ?? [];
    return word === undefined ? column : { ...column, unit: unitNamed(word) };
  });
}

/** A unit alone in a cell, in brackets or without. */
const UNIT_WORD = /^[([]?(in|ins|inch|inches|cm|mm)\.?[)\]]?$/iu;
