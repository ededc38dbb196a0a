// The many ways one length is spelled, brought to one: plain digits, '/', '-', quotes and single blanks.

/** The fractions that are single characters, with what they stand for. */
export const FRACTION_GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
  '↉': '0/3',
};

/** Raised and lowered digits in order of their value, for fractions that have no character of their own. */
export const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
export const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/**
 * Any spelling as plain lower-case ASCII where it has one. A fraction or a raised digit that follows a digit gets a blank before
 * it, so that "34½" is not read as 341/2; so does what follows a character that has no width, and a plain digit behind a raised or
 * lowered one. Numerals that belong to no length
 * (a lowered digit that is no denominator, ①, Ⅳ) come out as "?".
 */
export function plainSpelling(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅐⅑⅒↉]/gu, (glyph) => ` ${FRACTION_GLYPHS[glyph] ?? glyph} `)
    .replace(/⅟/gu, ' 1/')
    .replace(/(?<=[⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉])(?=[\d.,])/gu, ' ')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]+/gu, (run) => ` ${fromScript(run, RAISED)}`)
    .replace(/[\u2044\u2215]/gu, '/')
    .replace(/(?<=\/\s?)[₀₁₂₃₄₅₆₇₈₉]+/gu, (run) => fromScript(run, LOWERED))
    .replace(/[\p{No}\p{Nl}]/gu, '?')
    .replace(/[\u00b4`\u2018\u2019\u2032]/gu, "'")
    .replace(/[\u201c\u201d\u2033]/gu, '"')
    .replace(/\p{Cf}/gu, ' ')
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/gu, '-')
    .replace(/''/g, '"')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}

const fromScript = (run: string, digits: string): string =>
  [...run].map((digit) => String([...digits].indexOf(digit))).join('');
