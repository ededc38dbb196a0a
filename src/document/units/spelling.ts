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
};

/** Raised and lowered digits in order of their value, for fractions that have no character of their own. */
export const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
export const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/**
 * Any spelling as plain lower-case ASCII where it has one. A fraction that follows a digit gets a blank before it,
 * so that "34½" is not read as 341/2.
 */
export function plainSpelling(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/gu, (glyph) => ` ${FRACTION_GLYPHS[glyph] ?? glyph} `)
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]+/gu, (run) => ` ${fromScript(run, RAISED)}`)
    .replace(/[₀₁₂₃₄₅₆₇₈₉]+/gu, (run) => fromScript(run, LOWERED))
    .replace(/[\u00b4`\u2018\u2019\u2032]/gu, "'")
    .replace(/[\u201c\u201d\u2033]/gu, '"')
    .normalize('NFKC')
    .replace(/[\u200b-\u200f\u2060\ufeff]/gu, '')
    .replace(/[\u2010-\u2015\u2212]/gu, '-')
    .replace(/[\u2044\u2215]/gu, '/')
    .replace(/''/g, '"')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}

const fromScript = (run: string, digits: string): string =>
  [...run].map((digit) => String([...digits].indexOf(digit))).join('');
