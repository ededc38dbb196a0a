// Transliterates texts to 7-bit ASCII, for files that hold nothing else. No character is dropped: those without a Latin spelling
// are written by their number.

import { FRACTION_SIGNS, spelledFractions } from './fractions';

const from = (letters: string, latin: string): [string, string][] => {
  const spelled = latin.split(' ');
  return [...letters].map((letter, i) => [letter, spelled[i] ?? '']);
};

/**
 * Latin spellings of lower-case letters: Cyrillic and Greek as in passports (ICAO Doc 9303-3, ISO 843; simplified, from memory).
 */
const LATIN: ReadonlyMap<string, string> = new Map([
  ...from('абвгдежзийклмнопрстуфхцч', 'a b v g d e zh z i i k l m n o p r s t u f kh ts ch'),
  ...from('шщыэюяёєіїґўђјљњћџѓќѕ', 'sh shch y e iu ia e ie i i g u dj j lj nj c dz g k dz'),
  ['ъ', ''],
  ['ь', ''],
  ...from('αβγδεζηθικλμνξοπρσςτυφχψω', 'a v g d e z i th i k l m n x o p r s s t y f ch ps o'),
  ...from('łđħıŧøæœßþðŋəɓɗɛƙɔŋ', 'l d h i t o ae oe ss th d ng e b d e k o ng'),
  ...from('½¼¾×·–—−‘’“”„…°', '1/2 1/4 3/4 x - - - - \' \' " " " ... deg'),
]);

/**
 * A text on one line in the characters from blank to tilde. Marks are taken off, Cyrillic and Greek are spelled in Latin letters,
 * and any other character is written as \U+ and its number in hexadecimal, as DXF has it.
 */
export function ascii(text: string): string {
  let out = '';
  const line = text
    .normalize('NFC')
    .replace(/\p{Cf}/gu, '')
    .replace(/(?<=[οΟ])[υύΥΎ]/gu, 'u');
  for (const character of spelledFractions(line, FRACTION_SIGNS))
    out += /[\p{C}\p{Z}]/u.test(character) ? ' ' : spelled(character);
  return out.replace(/ {2,}/g, ' ').trim();
}

/**
 * A name on one line in the characters from blank to tilde, with its marks: letters with marks, marks and joiners are written by their
 * numbers as DXF has them, Zo\U+00EB, so that a reader shows the name as it is. The rest is as {@link ascii} has it.
 */
export const asciiName = (name: string): string =>
  name
    .normalize('NFC')
    .split(/(\p{M}|[\u200c\u200d]|(?![ -~])\p{Script=Latin})/u)
    .map((part, i) => (i % 2 === 1 ? [...numbers(part)].join('') : spelledKeepingBlanks(part)))
    .join('')
    .replace(/ {2,}/g, ' ')
    .trim();

/** The blanks at the ends of a part of a line stand beside the next part. */
const spelledKeepingBlanks = (part: string): string => {
  const [before, after] = [/^[\p{C}\p{Z}]/u, /[\p{C}\p{Z}]$/u].map((blank) => (blank.test(part) ? ' ' : ''));
  return `${before}${ascii(part)}${after}`;
};

function spelled(character: string): string {
  if (/^[ -~]$/.test(character)) return character;
  const found = latinOf(character);
  if (found !== undefined) return found;
  const plain = character.normalize('NFKD').replace(/\p{M}/gu, '').replace('⁄', '/');
  const letters = [...plain].map((each) => (/^[ -~]$/.test(each) ? each : latinOf(each)));
  if (letters.every((each) => each !== undefined)) return letters.join('');
  return [...numbers(character)].join('');
}

/** The Latin spelling of a letter; that of a capital begins with a capital. */
function latinOf(character: string): string | undefined {
  const exact = LATIN.get(character);
  if (exact !== undefined) return exact;
  const lower = LATIN.get(character.toLowerCase());
  return lower === undefined ? undefined : lower.charAt(0).toUpperCase() + lower.slice(1);
}

function* numbers(character: string): Generator<string> {
  for (let i = 0; i < character.length; i += 1)
    yield `\\U+${character.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0')}`;
}
