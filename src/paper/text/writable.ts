// Any text as the letters that the printed page has. Names are data: no letter may come out as a wrong one.

import { spelledFractions, textRuns } from './fractions';

/** The characters from 0x80 to 0x9F of the page's encoding, WinAnsiEncoding: ISO 32000-1, Annex D.2. */
const BEYOND_LATIN_1 = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** Letters that keep their stroke when marks are taken off. */
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
  /** Letters stand in it as question marks because the page has no sign for them. */
  readonly lost: boolean;
}

/**
 * A text on one line as it was meant: control characters and line ends become blanks, marks that turn the way of reading
 * go; joiners, which tell letters apart in several scripts, stay.
 */
export const cleaned = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[^\P{Cf}\u200c\u200d]/gu, '')
    .replace(/[^\P{C}\u200c\u200d]+|\p{Z}+/gu, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();

/** A text as a page sets it: cleaned, a minus as a dash. */
export const settable = (text: string): string => cleaned(text).replaceAll('−', '–');

/** Whether the page's own font has every letter of a text, or what its fractions are built of. */
export const isExact = (text: string): boolean =>
  textRuns(settable(text)).every((run) => run.kind === 'fraction' || [...run.text].every(isWritable));

/**
 * A text on one line in the letters of WinAnsiEncoding: control characters become blanks, letters with marks the page lacks
 * lose the marks, fractions are spelled out, whatever else is missing becomes a question mark.
 */
export function writable(text: string): Writable {
  const { text: line, lost } = writablePart(text);
  return { text: line.trim(), lost };
}

/** The same with the blanks at its ends: a part of a text. */
export function writablePart(text: string): Writable {
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

/** Every letter of the page's encoding in its order: blank to tilde, ¡ to ÿ, and those that stand beyond Latin-1. */
export const WRITABLE: readonly string[] = [
  ...Array.from({ length: 95 }, (_, i) => String.fromCharCode(0x20 + i)),
  ...Array.from({ length: 95 }, (_, i) => String.fromCharCode(0xa1 + i)),
  ...BEYOND_LATIN_1,
];

const WRITABLE_ONES: ReadonlySet<string> = new Set(WRITABLE);

export const isWritable = (character: string): boolean => WRITABLE_ONES.has(character);

const withoutMarks = (character: string): string =>
  STROKED[character] ??
  character
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/./gsu, (each) => STROKED[each] ?? each);
