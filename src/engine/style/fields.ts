// The kinds of field that a style is made of. A field says the shape of its data, and what the shape does not say: the span of a
// number, its unit, and what is usual where a style file leaves it open.

import type { PerLevel } from '../terms/names';

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
}

interface ChoiceField<Word extends string = string> {
  readonly kind: 'choice';
  readonly words: readonly Word[];
  readonly usual: Word;
}

interface FlagField {
  readonly kind: 'flag';
}

interface TextField {
  readonly kind: 'text';
}

/** Numbers by level with one span. `usual` is null where a level may be left out, which then counts as 0. */
interface LevelsField<Usual extends PerLevel | null = PerLevel | null> {
  readonly kind: 'levels';
  readonly unit: NumberUnit;
  readonly span: Span;
  readonly usual: Usual;
}

/** A name that has no value here, as another kind of the same list has. */
interface AbsentField {
  readonly kind: 'absent';
  readonly optional: true;
}

export type Fields = Readonly<Record<string, Field>>;

export interface GroupField<Parts extends Fields = Fields> {
  readonly kind: 'group';
  readonly fields: Parts;
}

/** A list whose items are of several kinds, told apart by their `kind`. */
interface ListField<Groups extends Kinds = Kinds> {
  readonly kind: 'list';
  readonly kinds: Groups;
}

type Kinds = Readonly<Record<string, GroupField>>;

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

type Optional<Of extends Field> = Of & { readonly optional: true };

/** The data a field holds, not to be changed in place. */
export type DataOf<Of> = Of extends { readonly kind: 'number' }
  ? number
  : Of extends ChoiceField<infer Word>
    ? Word
    : Of extends { readonly kind: 'flag' }
      ? boolean
      : Of extends { readonly kind: 'text' }
        ? string
        : Of extends LevelsField<infer Usual>
          ? Usual extends null
            ? Partial<PerLevel>
            : PerLevel
          : Of extends GroupField<infer Parts>
            ? GroupData<Parts>
            : Of extends ListField<infer Groups>
              ? readonly ItemOf<Groups>[]
              : never;

type GroupData<Parts extends Fields> = Flat<
  { readonly [Name in keyof Parts as IsOptional<Parts[Name], never, Name>]: DataOf<Parts[Name]> } & {
    readonly [Name in keyof Parts as IsOptional<Parts[Name], Name, never>]?: DataOf<Parts[Name]>;
  }
>;

type IsOptional<Of, Yes, No> = Of extends { readonly optional: true } ? Yes : No;

/** The items of a list: those of each kind, with the `kind` written in. */
type ItemOf<Groups extends Kinds> = {
  [Kind in keyof Groups]: Flat<{ readonly kind: Kind } & DataOf<Groups[Kind]>>;
}[keyof Groups];

type Flat<Data> = { [Name in keyof Data]: Data[Name] };

const numberOf = (unit: NumberUnit, span: Span, usual: number): NumberField => ({
  kind: 'number',
  unit,
  span,
  usual,
  isMain: false,
});

/** A length, mm. */
export const length = (span: Span, usual: number): NumberField => numberOf('length', span, usual);

/** A fraction or another number without a unit. */
export const share = (span: Span, usual: number): NumberField => numberOf('share', span, usual);

/** The number that its group is about. */
export const main = (number: NumberField): NumberField => ({ ...number, isMain: true });

/** One of a few words; the first is usual where no other is named. */
export const choice = <const Word extends string>(
  words: readonly [Word, ...Word[]],
  usual: NoInfer<Word> = words[0],
): ChoiceField<Word> => ({ kind: 'choice', words, usual });

/** Yes or no; usually no. */
export const flag = (): FlagField => ({ kind: 'flag' });

/** Any text. */
export const text = (): TextField => ({ kind: 'text' });

/** A name that must not be there. */
export const absent = (): AbsentField => ({ kind: 'absent', optional: true });

/** A number at every level. */
export const everyLevel = (unit: NumberUnit, span: Span, usual: PerLevel): LevelsField<PerLevel> => ({
  kind: 'levels',
  unit,
  span,
  usual,
});

/** A number at some of the levels; usually at none. */
export const someLevels = (unit: NumberUnit, span: Span): LevelsField<null> => ({
  kind: 'levels',
  unit,
  span,
  usual: null,
});

/** A part with fields of its own. */
export const group = <const Parts extends Fields>(fields: Parts): GroupField<Parts> => ({
  kind: 'group',
  fields,
});

/** A part that a style may do without. What is usual holds where it is first asked for. */
export const optional = <const Of extends Field>(field: Of): Optional<Of> => ({ ...field, optional: true });

/** A list of parts, each of one of these kinds. */
export const listOf = <const Groups extends Kinds>(kinds: Groups): ListField<Groups> => ({
  kind: 'list',
  kinds,
});

/** What is usual for a group: its numbers and words, empty lists, and none of the parts it may do without. */
export const usualOf = <Of extends { readonly kind: 'group'; readonly fields: Fields }>({
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
