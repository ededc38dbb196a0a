// Reads the parts of a style file one by one. A part that is not given is the default's; faults are collected.

import { LEVEL_NAMES, type LevelName, type NumberUnit } from '../../engine';
import { FILES } from '../messages/book/files';
import { isObject, type JsonObject } from '../model/isObject';
import type { Fault } from './fault';
import { kindOf } from './json';
import { type FileUnit, readLength } from './readLength';

export class PartReader {
  constructor(
    private readonly unit: FileUnit,
    private readonly faults: Fault[],
  ) {}

  refuse(path: string, message: string): void {
    this.faults.push({ path, message });
  }

  /** A field of another name is taken for a typing error and is a fault. */
  knownOnly(data: JsonObject, prefix: string, names: readonly string[]): void {
    for (const name of Object.keys(data))
      if (!names.includes(name)) this.refuse(`${prefix}${name}`, FILES.field.unknown({ names }));
  }

  /** The object under a field; an empty one where it is not given. */
  group(data: JsonObject, field: string, names: readonly string[], prefix = ''): JsonObject {
    const given = data[field];
    if (given === undefined) return {};
    if (!isObject(given)) {
      this.refuse(`${prefix}${field}`, FILES.field.notObject({ kind: kindOf(given) }));
      return {};
    }
    this.knownOnly(given, `${prefix}${field}.`, names);
    return given;
  }

  number(data: JsonObject, field: string, prefix: string, base: number, kind: NumberUnit): number {
    const given = data[field];
    const path = `${prefix}${field}`;
    if (given === undefined) return base;
    if (kind === 'length') return readLength(given, this.unit, path, this.faults) ?? base;
    if (typeof given === 'number' && Number.isFinite(given)) return given;
    this.refuse(path, FILES.field.notNumber({ kind: kindOf(given) }));
    return base;
  }

  /** Numbers at those levels that are given. */
  someLevels(
    data: JsonObject,
    field: string,
    prefix: string,
    kind: NumberUnit,
  ): Partial<Record<LevelName, number>> {
    const given = this.group(data, field, LEVEL_NAMES, prefix);
    const levels = LEVEL_NAMES.filter((level) => given[level] !== undefined);
    return Object.fromEntries(
      levels.map((level) => [level, this.number(given, level, `${prefix}${field}.`, 0, kind)]),
    );
  }

  word<Word extends string>(
    data: JsonObject,
    field: string,
    prefix: string,
    words: readonly Word[],
    base: Word,
  ): Word {
    const given = data[field];
    if (given === undefined) return base;
    const word = words.find((each) => each === given);
    if (word === undefined) this.refuse(`${prefix}${field}`, FILES.field.notOneOf({ names: words }));
    return word ?? base;
  }

  flag(data: JsonObject, field: string, prefix: string, base: boolean): boolean {
    const given = data[field];
    if (given === undefined) return base;
    if (typeof given !== 'boolean')
      this.refuse(`${prefix}${field}`, FILES.field.notBoolean({ kind: kindOf(given) }));
    return given === true;
  }
}
