// What the columns of a table of people are: by their headings, or as the user says.

import type { MeasurementName } from '../../engine';
import { COLUMNS } from '../messages/book/columns';
import type { LengthUnit } from '../units/lengthUnit';
import { measurementNamed, plainName } from './measurementNamed';

/** What a column is read as. */
export type ColumnUse = MeasurementName | 'name' | 'leftOut';

/** What the user says of columns, by their keys. */
export type ChosenUses = ReadonlyMap<string, ColumnUse>;

export interface TableColumn {
  /** Its heading; a heading that stands over several columns has its count behind it. No two columns have the same. */
  readonly key: string;
  readonly heading: string;
  /** Its place in the row, from 1. */
  readonly number: number;
  /** Null: it is passed over, as neither its heading nor the user says what it is. */
  readonly use: ColumnUse | null;
  /** Its heading says what it is. */
  readonly isUnderstood: boolean;
  /** It is taken for the names because it is the first one that is no measurement. */
  readonly isPresumedName: boolean;
  /** The unit of numbers without one. */
  readonly unit: LengthUnit;
}

/**
 * The columns under a row of headings. What the user chose goes before what a heading says; of two columns for the same thing the
 * first has it, and the other is passed over. Where no column has the names, the first one that nobody says anything of has them.
 */
export function tableColumns(
  headings: readonly string[],
  unit: LengthUnit,
  chosen: ChosenUses,
): readonly TableColumn[] {
  const read = withKeys(headings).map(({ key, heading }) => ({
    key,
    heading,
    ...headingRead(heading, unit),
  }));
  const taken = new Set<ColumnUse>();
  const claim = (use: ColumnUse | null | undefined): ColumnUse | null => {
    if (use === null || use === undefined || taken.has(use)) return null;
    if (use !== 'leftOut') taken.add(use);
    return use;
  };
  const byUser = read.map(({ key }) => claim(chosen.get(key)));
  const uses = read.map(({ key, own }, i) => byUser[i] ?? (chosen.has(key) ? null : claim(own)));
  const presumed = taken.has('name') ? -1 : uses.indexOf(null);
  return read.map(({ key, heading, own, unit: ofHeading }, i) => ({
    key,
    heading,
    number: i + 1,
    use: i === presumed ? 'name' : (uses[i] ?? null),
    isUnderstood: own !== null || (i === presumed && SIZE_HEADING.test(plainName(heading))),
    isPresumedName: i === presumed,
    unit: ofHeading,
  }));
}

function withKeys(headings: readonly string[]): { readonly key: string; readonly heading: string }[] {
  const keys = new Set<string>();
  return headings.map((heading) => {
    let key = heading;
    for (let count = 2; keys.has(key); count += 1) key = `${heading} (${count})`;
    keys.add(key);
    return { key, heading };
  });
}

function headingRead(
  heading: string,
  unit: LengthUnit,
): { readonly own: ColumnUse | null; readonly unit: LengthUnit } {
  const [, words = heading, named] =
    /^(.*?)[\s([,]+(in|ins|inch|inches|cm|mm)\s*[)\]]?$/iu.exec(heading) ?? [];
  return {
    own: NAME_HEADING.test(plainName(heading)) ? 'name' : measurementNamed(words),
    unit: named === undefined ? unit : unitNamed(named),
  };
}

const NAME_HEADING = /^(name|client)$/u;
/** Headings that fit a column of sizes. */
const SIZE_HEADING = /^(size)?$/u;

export const unitNamed = (word: string): LengthUnit =>
  /^cm/iu.test(word) ? 'cm' : /^mm/iu.test(word) ? 'mm' : 'in';

/** The choices with one more; null takes back what was chosen. Only one column is chosen for the names, and for a measurement. */
export function withUse(chosen: ChosenUses, key: string, use: ColumnUse | null): ChosenUses {
  const others = [...chosen].filter(([each, its]) => each !== key && (its !== use || its === 'leftOut'));
  return new Map(use === null ? others : [...others, [key, use]]);
}

/** How a column is called on the screen: by its heading, or by its place where it has none. */
export const columnLabel = ({ key, heading, number }: TableColumn): string =>
  heading === '' ? COLUMNS.unnamed({ number }) : key;

/** Those that are passed over, by their labels. */
export const passedOver = (columns: readonly TableColumn[]): string[] =>
  columns.filter(({ use }) => use === null).map(columnLabel);
