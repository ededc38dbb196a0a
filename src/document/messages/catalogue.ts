// The catalogue of sentences: every text that a person reads on the screen or on paper is an entry of one of its parts. A part
// is a plain object of whole sentences; a sentence with values is a function of named values.

/** True in the test build in accented text, false in every other build (see vite.config.ts), absent where nothing is built. */
declare const __ACCENTED__: boolean | undefined;

/**
 * Makes a part of the catalogue. Returns the entries as they are; in the accented build every text they give is lengthened and
 * written in accented letters, so that a text outside the catalogue can be told from one within. The mark below lets the bundler
 * leave out the parts that a page or a worker does not use.
 */
/* @__NO_SIDE_EFFECTS__ */
export const catalogue = <Entries extends object>(entries: Entries): Entries =>
  typeof __ACCENTED__ !== 'undefined' && __ACCENTED__ ? (accented(entries) as Entries) : entries;

/** The singular or the plural form for a count, in English: `plural(1, { one: '1 note', other: '1 notes' })`. */
export const plural = (count: number, forms: { readonly one: string; readonly other: string }): string =>
  pluralRules().select(count) === 'one' ? forms.one : forms.other;

// Each is made when it is first asked for: the browser reads the data of languages for it, which would keep the page from its start.
let madeRules: Intl.PluralRules | undefined;
const pluralRules = (): Intl.PluralRules => {
  madeRules ??= new Intl.PluralRules('en');
  return madeRules;
};
let madeLists: Intl.ListFormat | undefined;
const lists = (): Intl.ListFormat => {
  madeLists ??= new Intl.ListFormat('en', { type: 'conjunction' });
  return madeLists;
};

/** Names joined as a sentence lists them: `a`, `a and b`, `a, b, and c`. */
export const listed = (names: readonly string[]): string => lists().format(names);

const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const LETTERS = [...'áƀçđéƒğĥíĵķłɱñóþɋŕšţúṽŵẋýžÁƁÇĐÉƑĞĤÍĴĶŁṀÑÓÞɊŔŠŢÚṼŴẊÝŽ'];

/** A value with every text in it accented: a text, what a function gives, the items of a list, the parts of an object. */
function accented(value: unknown): unknown {
  if (typeof value === 'string') return accentedText(value);
  if (typeof value === 'function') return (...values: unknown[]) => accented(value(...values));
  if (Array.isArray(value)) return value.map(accented);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, accented(part)]));
}

/**
 * A text in accented letters, each word longer by about a third, as texts in other languages are. A word without plain
 * letters, an accented one too, stays as it is.
 */
const accentedText = (text: string): string => text.replace(/\S+/gu, accentedWord);

function accentedWord(word: string): string {
  const letters = [...word].map((letter) => LETTERS[PLAIN.indexOf(letter)] ?? letter).join('');
  return letters === word ? word : `${letters}${'·'.repeat(Math.ceil(word.length / 3))}`;
}
