// Turns any text into letters that the page's face has. No letter is ever replaced by a wrong one.

import { spelledFractions, textRuns } from './fractions';

/** The characters from 0x80 to 0x9F of the page's encoding, WinAnsiEncoding: ISO 32000-1, Annex D.2. */
const BEYOND_LATIN_1 = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** Letters that Unicode does not decompose into a letter and a mark. */
const STROKED: Readonly<Record<string, string>> = {
  ł: 'l',
  Ł: 'L',
  đ: 'd',
  Đ: 'D',
  ħ: 'h',
  Ħ: 'H',
  ı: 'i',
  '−': '–',
};

const MISSING = '?';

export interface Writable {
  readonly text: string;
  /** True where letters were replaced by question marks. */
  readonly lost: boolean;
}

/**
 * A text on one line: control characters and line ends become blanks, marks that change the direction of reading are removed.
 * Zero-width joiners stay, because they change letters in several scripts.
 */
export const cleaned = (text: string): string => (PLAIN.test(text) ? text.trim() : cleanedOf(text));

/** Signs of ASCII with single blanks, which stay as they are. */
const PLAIN = /^(?:[!-~]| (?! ))*$/;

const cleanedOf = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[^\P{Cf}\u200c\u200d]/gu, '')
    .replace(/[^\P{C}\u200c\u200d]+|\p{Z}+/gu, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();

/** A text as it is set on a page: cleaned, with en dashes for minus signs. */
export const settable = (text: string): string => cleaned(text).replaceAll('−', '–');

/** Whether the page's face has every letter of a text; fractions are built of its figures. */
export const isExact = (text: string): boolean =>
  textRuns(settable(text)).every((run) => run.kind === 'fraction' || [...run.text].every(isWritable));

/**
 * A text on one line in the letters of WinAnsiEncoding. Control characters become blanks, letters lose the marks that the encoding
 * lacks, fractions are spelled, and any other letter that is missing becomes a question mark.
 */
export function writable(text: string): Writable {
  const { text: line, lost } = writablePart(text);
  return { text: line.trim(), lost };
}

/** The same for a part of a text, with the blanks at its ends kept. */
export function writablePart(text: string): Writable {
  if (PLAIN.test(text)) return { text, lost: false };
  let lost = false;
  const line = text
    .normalize('NFC')
    .replace(/\p{Cf}/gu, '')
    .replace(/[\p{C}\p{Z}]+/gu, ' ');
  let out = '';
  for (const character of spelledFractions(line)) {
    const plain = isWritable(character) ? character : withoutMarks(character);
    if ([...plain].every(isWritable)) out += plain;
    else {
      out += MISSING;
      lost = true;
    }
  }
  return { text: out, lost };
}

/** Every letter of WinAnsiEncoding: blank to tilde, ¡ to ÿ, then those beyond Latin-1. */
export const WRITABLE: readonly string[] = [
  ...Array.from({ length: 95 }, (_, i) => String.fromCharCode(0x20 + i)),
  ...Array.from({ length: 95 }, (_, i) => String.fromCharCode(0xa1 + i)),
  ...BEYOND_LATIN_1,
];

const WRITABLE_ONES: ReadonlySet<string> = new Set(WRITABLE);

/** Whether the page's encoding has a character. */
export const isWritable = (character: string): boolean => WRITABLE_ONES.has(character);

const withoutMarks = (character: string): string =>
  STROKED[character] ??
  character
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/./gsu, (each) => STROKED[each] ?? each);
