// A group of a style's fields as a file gives it: a field that is left out is the usual one, and a part that a style may do
// without is there only where the file has it.

import type { Field, Fields } from '../../engine';
import type { JsonObject } from '../model/isObject';
import type { PartReader } from './partReader';

/** The fields of a group laid over what is usual. Lists are left to the caller. */
export function readFields(
  fields: Fields,
  given: JsonObject,
  prefix: string,
  read: PartReader,
): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) =>
      field.kind === 'list' || (field.optional && given[name] === undefined)
        ? []
        : [[name, readField(field, given, name, prefix, read)]],
    ),
  );
}

function readField(field: Field, data: JsonObject, name: string, prefix: string, read: PartReader): unknown {
  switch (field.kind) {
    case 'number':
      return read.number(data, name, prefix, field.usual, field.unit);
    case 'choice':
      return read.word(data, name, prefix, field.words, field.usual);
    case 'flag':
      return read.flag(data, name, prefix, false);
    case 'levels':
      return { ...field.usual, ...read.someLevels(data, name, prefix, field.unit) };
    case 'group': {
      const given = read.group(data, name, Object.keys(field.fields), prefix);
      return readFields(field.fields, given, `${prefix}${name}.`, read);
    }
    default:
      return data[name];
  }
}
