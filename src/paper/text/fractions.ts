// Finds fractions in texts. The page builds them of small figures; files without fraction signs spell them as 11/16.

/** Fractions of superscript and subscript figures, and the single fraction signs that the page's face lacks. */
const BUILT = /([⁰¹²³⁴-⁹]+⁄[₀-₉]+|[⅐-⅞])/u;

/** A part of a text: plain text, or a fraction in plain figures. */
export type TextRun =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'fraction';
      readonly over: string;
      readonly under: string;
      /** It follows a whole number and is set apart from it: copied or read aloud, 6 and 11 over 16 must not become 611/16. */
      readonly isApart: boolean;
    };

/**
 * Splits a text into its non-empty parts: "3¹¹⁄₁₆ in" is "3", 11 over 16, " in". ½, ¼ and ¾ stay in the text: every font has
 * them.
 */
export function textRuns(text: string): TextRun[] {
  if (!BUILT.test(text)) return text === '' ? [] : [{ kind: 'text', text }];
  return text.split(BUILT).flatMap((part, i, parts): TextRun[] => {
    if (part === '') return [];
    if (!BUILT.test(part)) return [{ kind: 'text', text: part }];
    const [over = '', under = ''] = part.normalize('NFKD').split('⁄');
    return [{ kind: 'fraction', over, under, isApart: /\d$/.test(parts[i - 1] ?? '') }];
  });
}

/** Every single fraction sign, for lines in which all fractions are spelled. */
export const FRACTION_SIGNS = '¼-¾⅐-⅞';

/** Spells the fractions of a text: "3¹¹⁄₁₆" becomes "3 11/16". `signs` are the single characters that are spelled. */
export const spelledFractions = (text: string, signs = '⅐-⅞'): string =>
  text.replace(spelledSigns(signs), (fraction, at: number, whole: string) => {
    const plain = fraction.normalize('NFKD').replace('⁄', '/');
    return /\d$/.test(whole.slice(0, at)) ? ` ${plain}` : plain;
  });

/** Spells all fractions of a text where one must be spelled, so that none stands as a sign beside another that is spelled. */
export const fractionsAlike = (text: string): string =>
  spelledFractions(text, BUILT.test(text) ? FRACTION_SIGNS : undefined);

const SPELLED = new Map<string, RegExp>();

function spelledSigns(signs: string): RegExp {
  const made = SPELLED.get(signs) ?? new RegExp(`[⁰¹²³⁴-⁹]+⁄[₀-₉]+|[${signs}]`, 'gu');
  SPELLED.set(signs, made);
  return made;
}
