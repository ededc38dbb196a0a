// The schema of stored data that follows from the fields of a style. It says the shape alone: the spans of the numbers are
// checked where a style is drafted.

import * as z from 'zod/mini';
import { LEVEL_NAMES } from '../terms/names';
import type { Field, Fields } from './fields';
import { STYLE, type Style } from './style';

// Each schema takes time to be made, and a start of the page waits for it: what is alike is made once.
const number = z.number();
const flag = z.boolean();
const text = z.string();
const absent = z.never();

const levelNumbers = z.object(
  Object.fromEntries(LEVEL_NAMES.map((level) => [level, number])) as Record<
    (typeof LEVEL_NAMES)[number],
    typeof number
  >,
);
const someLevelNumbers = z.exactPartial(levelNumbers);

const made = new Map<Field, z.ZodMiniType>();

function schemaOf(field: Field): z.ZodMiniType {
  const schema = made.get(field) ?? makeSchema(field);
  made.set(field, schema);
  return schema;
}

const groupSchema = (fields: Fields) => z.object(shapeOf(fields));

const shapeOf = (fields: Fields): Record<string, z.ZodMiniType> =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => {
      const schema = schemaOf(field);
      return [name, field.optional ? z.exactOptional(schema) : schema];
    }),
  );

function makeSchema(field: Field): z.ZodMiniType {
  switch (field.kind) {
    case 'number':
      return number;
    case 'choice':
      return z.enum(field.words as readonly [string, ...string[]]);
    case 'flag':
      return flag;
    case 'text':
      return text;
    case 'levels':
      return field.usual === null ? someLevelNumbers : levelNumbers;
    case 'absent':
      return absent;
    case 'group':
      return groupSchema(field.fields);
    case 'list':
      return z.array(
        z.union(
          Object.entries(field.kinds).map(([kind, { fields }]) =>
            z.object({ ...shapeOf(fields), kind: z.literal(kind) }),
          ),
        ),
      );
  }
}

/** Reads a style of unknown origin; names that no field has are left out. */
export const styleSchema = groupSchema(STYLE.fields) as unknown as z.ZodMiniType<Style>;
