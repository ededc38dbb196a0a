// Fractions set as one sign, spelled with a stroke for pages and files that lack the sign.

/** "3¹¹⁄₁₆" as "3 11/16": a whole number before it stays apart. `signs` are the single characters to be spelled. */
export const spelledFractions = (text: string, signs = '⅐-⅞'): string =>
  text.replace(new RegExp(`[⁰¹²³⁴-⁹]+⁄[₀-₉]+|[${signs}]`, 'gu'), (fraction, at: number, whole: string) => {
    const plain = fraction.normalize('NFKD').replace('⁄', '/');
    return /\d$/.test(whole.slice(0, at)) ? ` ${plain}` : plain;
  });
