// Fractions set as one sign: built of small figures on the page, spelled with a stroke in files that have no such signs.

/** Those of more parts than a single sign has, and the single signs that the page's own font lacks. */
const BUILT = /([⁰¹²³⁴-⁹]+⁄[₀-₉]+|[⅐-⅞])/u;

/** A part of a text: words as they are, or a fraction in plain figures. */
export type TextRun =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'fraction';
      readonly over: string;
      readonly under: string;
      /** Behind a whole number, from which it stands apart: copied or read aloud, 6 and 11 over 16 must not become 611/16. */
      readonly isApart: boolean;
    };

/** A text in its parts, empty ones left out: "3¹¹⁄₁₆ in" is "3", 11 over 16, " in". ½, ¼ and ¾ are words: every font has them. */
export function textRuns(text: string): TextRun[] {
  return text.split(BUILT).flatMap((part, i, parts): TextRun[] => {
    if (part === '') return [];
    if (!BUILT.test(part)) return [{ kind: 'text', text: part }];
    const [over = '', under = ''] = part.normalize('NFKD').split('⁄');
    return [{ kind: 'fraction', over, under, isApart: /\d$/.test(parts[i - 1] ?? '') }];
  });
}

/** "3¹¹⁄₁₆" as "3 11/16": a whole number before it stays apart. `signs` are the single characters to be spelled. */
export const spelledFractions = (text: string, signs = '⅐-⅞'): string =>
  text.replace(new RegExp(`[⁰¹²³⁴-⁹]+⁄[₀-₉]+|[${signs}]`, 'gu'), (fraction, at: number, whole: string) => {
    const plain = fraction.normalize('NFKD').replace('⁄', '/');
    return /\d$/.test(whole.slice(0, at)) ? ` ${plain}` : plain;
  });
