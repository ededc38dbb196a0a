// Reads a table of people: a row each, a column for the name and one for each measurement.

import { MEASUREMENTS, type MeasurementName } from '../../engine';
import type { LengthUnit } from '../units/lengthUnit';
import { parseLength } from '../units/parseLength';
import { type CsvRow, csvRows } from './csvRows';
import { type ChosenUses, type TableColumn, tableColumns, unitNamed } from './tableColumns';

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

/** A column with the first of its cells that are not empty. */
export interface ReadColumn extends TableColumn {
  readonly firstCells: readonly string[];
}

export interface ReadPeople {
  /** None where no column is a measurement. */
  readonly people: readonly Person[];
  readonly faults: readonly CellFault[];
  /** All columns in their order, but for those in which nothing stands. */
  readonly columns: readonly ReadColumn[];
}

/** So many cells are kept of a column to tell it by. */
const FIRST_CELLS = 3;

/**
 * The people of a table. The first row names the columns by the names of the measurements, with a unit behind them if one is meant
 * ("Waist (cm)"); `chosen` says what other columns are, see {@link tableColumns}. A number may name its unit; one that does not is in
 * that of its column, else in `unit`. A second row that has units alone gives them to its columns.
 */
export function readPeople(text: string, unit: LengthUnit, chosen: ChosenUses = new Map()): ReadPeople {
  const [head, ...below] = csvRows(text);
  const headed = tableColumns(head?.cells ?? [], unit, chosen);
  const units = unitRow(below[0], headed);
  const columns = units ?? headed;
  const rows = units ? below.slice(1) : below;
  const shown = columns
    .map((column, i): ReadColumn => ({ ...column, firstCells: firstCells(rows, i) }))
    .filter(({ heading, firstCells: cells }) => heading !== '' || cells.length > 0);
  const faults: CellFault[] = [];
  if (!columns.some(isMeasured)) return { people: [], faults, columns: shown };
  const nameAt = columns.findIndex(({ use }) => use === 'name');
  const people = rows.map(({ line, cells }): Person => {
    const measured: Partial<Record<MeasurementName, number>> = {};
    for (const [i, column] of columns.entries()) {
      const cell = cells[i] ?? '';
      if (!isMeasured(column) || cell === '') continue;
      const parsed = parseLength(cell, column.unit);
      if (parsed.ok) measured[column.use] = parsed.mm;
      else faults.push({ row: line, column: column.heading, text: cell });
    }
    return { row: line, name: cells[nameAt] ?? '', measured };
  });
  return { people, faults, columns: shown };
}

/** True where a column is a measurement. */
export const hasMeasurement = ({ columns }: { readonly columns: readonly TableColumn[] }): boolean =>
  columns.some(isMeasured);

const NAMES: readonly string[] = MEASUREMENTS.map(({ name }) => name);
const isMeasured = (column: TableColumn): column is TableColumn & { readonly use: MeasurementName } =>
  column.use !== null && NAMES.includes(column.use);

const firstCells = (rows: readonly CsvRow[], at: number): string[] => {
  const found: string[] = [];
  for (const { cells } of rows) {
    const cell = cells[at] ?? '';
    if (cell !== '') found.push(cell);
    if (found.length === FIRST_CELLS) break;
  }
  return found;
};

/** The columns in the units of a row that has nothing but units under its measurements; null for any other row. */
function unitRow(row: CsvRow | undefined, columns: readonly TableColumn[]): TableColumn[] | null {
  const words = columns.map((column, i) => (isMeasured(column) ? (row?.cells[i] ?? '') : ''));
  const given = words.filter((word) => word !== '');
  if (given.length === 0 || !given.every((word) => UNIT_WORD.test(word))) return null;
  return columns.map((column, i) => {
    const [, word] = UNIT_WORD.exec(words[i] ?? '') ?? [];
    return word === undefined ? column : { ...column, unit: unitNamed(word) };
  });
}

/** A unit alone in a cell, in brackets or without. */
const UNIT_WORD = /^[([]?(in|ins|inch|inches|cm|mm)\.?[)\]]?$/iu;
