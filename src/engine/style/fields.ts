// The kinds of field that a style is made of. A field holds its zod schema, which says the shape, and what a schema of
// plain data does not say: the span of a number, its unit, and what is usual where a style file leaves it open.

import * as z from 'zod/mini';
import { LEVEL_NAMES, type PerLevel } from '../terms/names';

export type Span = readonly [least: number, most: number];

/** A length is in mm inside and in the file's unit in a style file; a share is the same number in every unit. */
export type NumberUnit = 'length' | 'share';

interface NumberField {
  readonly kind: 'number';
  readonly unit: NumberUnit;
  readonly span: Span;
  readonly usual: number;
  /** The number stands for its whole group: an issue names the group's path instead of the number's. */
  readonly isMain: boolean;
  readonly schema: z.ZodMiniType<number>;
}

interface ChoiceField<Word extends string = string> {
  readonly kind: 'choice';
  readonly words: readonly Word[];
  readonly usual: Word;
  readonly schema: z.ZodMiniType<Word>;
}

interface FlagField {
  readonly kind: 'flag';
  readonly schema: z.ZodMiniType<boolean>;
}

interface TextField {
  readonly kind: 'text';
  readonly schema: z.ZodMiniType<string>;
}

/** Numbers by level with one span. `usual` is null where a level may be left out, which then counts as 0. */
interface LevelsField<Usual extends PerLevel | null = PerLevel | null> {
  readonly kind: 'levels';
  readonly unit: NumberUnit;
  readonly span: Span;
  readonly usual: Usual;
  readonly schema: z.ZodMiniType<Usual extends null ? Partial<PerLevel> : PerLevel>;
}

/** A name that has no value here, as another kind of the same list has. */
interface AbsentField {
  readonly kind: 'absent';
  readonly optional: true;
  readonly schema: z.ZodMiniExactOptional<z.ZodMiniNever>;
}

export type Fields = Readonly<Record<string, Field>>;

export interface GroupField<Parts extends Fields = Fields, Schema extends z.ZodMiniType = z.ZodMiniType> {
  readonly kind: 'group';
  readonly fields: Parts;
  readonly schema: Schema;
}

/** A list whose items are of several kinds, told apart by their `kind`. */
interface ListField<Kind extends string = string> {
  readonly kind: 'list';
  readonly kinds: Readonly<Record<Kind, GroupField>>;
  readonly schema: z.ZodMiniType;
}

export type Field = { readonly optional?: true } & (
  | NumberField
  | ChoiceField
  | FlagField
  | TextField
  | LevelsField
  | AbsentField
  | GroupField
  | ListField
);

type Optional<Of extends Field> = Omit<Of, 'schema'> & {
  readonly optional: true;
  readonly schema: z.ZodMiniExactOptional<Of['schema']>;
};

type SchemaOf<Parts extends Fields> = z.ZodMiniObject<{
  -readonly [Name in keyof Parts]: Parts[Name]['schema'];
}>;

/** The data a field holds, not to be changed in place. */
export type DataOf<Of extends { readonly schema: z.ZodMiniType }> = Kept<z.output<Of['schema']>>;

type Kept<Data> = Data extends readonly (infer Item)[]
  ? readonly Kept<Item>[]
  : Data extends object
    ? { readonly [Name in keyof Data]: Kept<Data[Name]> }
    : Data;

const numberOf = (unit: NumberUnit, span: Span, usual: number): NumberField => ({
  kind: 'number',
  unit,
  span,
  usual,
  isMain: false,
  schema: z.number(),
});

/** A length, mm. */
export const length = (span: Span, usual: number): NumberField => numberOf('length', span, usual);

export const share = (span: Span, usual: number): NumberField => numberOf('share', span, usual);

/** The number that its group is about. */
export const main = (number: NumberField): NumberField => ({ ...number, isMain: true });

/** One of a few words; the first is usual where no other is named. */
export const choice = <const Word extends string>(
  words: readonly [Word, ...Word[]],
  usual: NoInfer<Word> = words[0],
): ChoiceField<Word> => ({ kind: 'choice', words, usual, schema: z.enum(words) as z.ZodMiniType<Word> });

/** Yes or no; usually no. */
export const flag = (): FlagField => ({ kind: 'flag', schema: z.boolean() });

export const text = (): TextField => ({ kind: 'text', schema: z.string() });

export const absent = (): AbsentField => ({
  kind: 'absent',
  optional: true,
  schema: z.exactOptional(z.never()),
});

const levelNumbers = z.object(
  Object.fromEntries(LEVEL_NAMES.map((level) => [level, z.number()])) as Record<
    keyof PerLevel,
    z.ZodMiniNumber<number>
  >,
);

/** A number at every level. */
export const everyLevel = (unit: NumberUnit, span: Span, usual: PerLevel): LevelsField<PerLevel> => ({
  kind: 'levels',
  unit,
  span,
  usual,
  schema: levelNumbers,
});

/** A number at some of the levels; usually at none. */
export const someLevels = (unit: NumberUnit, span: Span): LevelsField<null> => ({
  kind: 'levels',
  unit,
  span,
  usual: null,
  schema: z.exactPartial(levelNumbers),
});

export const group = <const Parts extends Fields>(fields: Parts): GroupField<Parts, SchemaOf<Parts>> => ({
  kind: 'group',
  fields,
  schema: z.object(shapeOf(fields)) as SchemaOf<Parts>,
});

const shapeOf = (fields: Fields): Record<string, z.ZodMiniType> =>
  Object.fromEntries(Object.entries(fields).map(([name, { schema }]) => [name, schema]));

/** A part that a style may do without. What is usual holds where it is first asked for. */
export const optional = <const Of extends Field>(field: Of): Optional<Of> => ({
  ...field,
  optional: true,
  schema: z.exactOptional(field.schema) as z.ZodMiniExactOptional<Of['schema']>,
});

type Kinds = Readonly<Record<string, GroupField>>;

/** The items of a list: those of each kind, with the `kind` written in. */
type ItemOf<Groups extends Kinds> = {
  [Kind in keyof Groups]: { kind: Kind } & z.output<Groups[Kind]['schema']>;
}[keyof Groups];

export const listOf = <const Groups extends Kinds>(
  kinds: Groups,
): { readonly kind: 'list'; readonly kinds: Groups; readonly schema: z.ZodMiniType<ItemOf<Groups>[]> } => {
  const options = Object.entries(kinds).map(([kind, { fields }]) =>
    z.object({ ...shapeOf(fields), kind: z.literal(kind) }),
  );
  return {
    kind: 'list',
    kinds,
    schema: z.array(z.union(options)) as unknown as z.ZodMiniType<ItemOf<Groups>[]>,
  };
};

/** What is usual for a group: its numbers and words, empty lists, and none of the parts it may do without. */
export const usualOf = <Of extends { readonly fields: Fields; readonly schema: z.ZodMiniType }>({
  fields,
}: Of): DataOf<Of> =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => (field.optional ? [] : [[name, usual(field)]])),
  ) as DataOf<Of>;

/** What is usual for one field; text has nothing that is. */
function usual(field: Field): unknown {
  switch (field.kind) {
    case 'group':
      return usualOf(field);
    case 'levels':
      return field.usual ?? {};
    case 'flag':
      return false;
    case 'list':
      return [];
    case 'number':
    case 'choice':
      return field.usual;
    default:
      return undefined;
  }
}
