// Reads the fields of a fitting one by one; faults are collected.

import { LEVEL_NAMES, type LengthBound, MOST_FROM_WAIST_MM } from '../../engine';
import { FILES } from '../messages/book/files';
import { isObject, type JsonObject } from '../model/isObject';
import { MM_PER } from '../units/lengthUnit';
import type { Fault } from './fault';
import { kindOf } from './json';
import { PartReader } from './partReader';
import type { FileUnit } from './readLength';

const BOUNDS: readonly LengthBound[] = ['top', ...LEVEL_NAMES, 'hem'];

export class FittingReader extends PartReader {
  constructor(
    private readonly lengthUnit: FileUnit,
    faults: Fault[],
  ) {
    super(lengthUnit, faults);
  }

  /** A list of objects with at least so many; what is no object is a fault. */
  list(data: JsonObject, field: string, prefix: string, least = 0): JsonObject[] {
    const given = data[field];
    if (!Array.isArray(given)) {
      this.refuse(`${prefix}${field}`, FILES.fittings.notList({ kind: kindOf(given) }));
      return [];
    }
    if (given.length < least) this.refuse(`${prefix}${field}`, FILES.fittings.tooFew({ least }));
    return given.map((each: unknown, i) => {
      if (isObject(each)) return each;
      this.refuse(`${prefix}${field}.${i}`, FILES.field.notObject({ kind: kindOf(each) }));
      return {};
    });
  }

  text(data: JsonObject, field: string, prefix: string): string {
    const given = data[field] ?? '';
    if (typeof given === 'string') return given;
    this.refuse(`${prefix}${field}`, FILES.fittings.notText({ kind: kindOf(given) }));
    return '';
  }

  /** An ISO day. */
  date(data: JsonObject, prefix: string): string {
    const { date } = data;
    if (typeof date === 'string' && isDay(date)) return date;
    this.refuse(`${prefix}date`, FILES.fittings.notDate);
    return '';
  }

  /** One of some words that must be there; null after a fault. */
  needed<Word extends string>(
    data: JsonObject,
    field: string,
    prefix: string,
    words: readonly Word[],
  ): Word | null {
    const word = words.find((each) => each === data[field]);
    if (word === undefined) this.refuse(`${prefix}${field}`, FILES.field.notOneOf({ names: words }));
    return word ?? null;
  }

  named<T>(
    data: JsonObject,
    field: string,
    prefix: string,
    read: (given: unknown) => T | null,
    message: string,
  ): T | null {
    const named = read(data[field]);
    if (named === null) this.refuse(`${prefix}${field}`, message);
    return named;
  }

  /** A length in the file's unit, no larger than `most` mm either way; a fault where it is left out without a `base`. */
  amount(data: JsonObject, field: string, prefix: string, most: number, base?: number): number {
    if (data[field] === undefined && base === undefined) {
      this.refuse(`${prefix}${field}`, FILES.fittings.missing);
      return 0;
    }
    const mm = this.number(data, field, prefix, base ?? 0, 'length');
    if (Math.abs(mm) > most)
      this.refuse(
        `${prefix}${field}`,
        FILES.fittings.outOfSpan({ most: Math.floor(most / MM_PER[this.lengthUnit]), unit: this.lengthUnit }),
      );
    return mm;
  }

  height = (data: JsonObject, prefix: string): number =>
    this.amount(data, 'belowWaist', prefix, MOST_FROM_WAIST_MM);

  /** Two bounds from the top down. */
  between(data: JsonObject, prefix: string): readonly [LengthBound, LengthBound] {
    const given: unknown = data.between;
    const [upper, lower] = Array.isArray(given)
      ? given.map((name: unknown) => BOUNDS.find((each) => each === name))
      : [];
    if (
      Array.isArray(given) &&
      given.length === 2 &&
      upper &&
      lower &&
      BOUNDS.indexOf(upper) < BOUNDS.indexOf(lower)
    )
      return [upper, lower];
    this.refuse(`${prefix}between`, FILES.fittings.betweenUnknown({ names: BOUNDS }));
    return ['top', 'hem'];
  }
}

/** "2026-11-26", and a day that there is. */
function isDay(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text;
}
