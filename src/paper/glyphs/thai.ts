// Signs of Thai over and under their consonants, and the vowel that is set as two signs.

const SARA_AM = /([\u0e48-\u0e4b]*)\u0e33/gu;

/**
 * Splits the vowel am into its two signs: the ring goes over the consonant, under its tone mark, and the stroke follows (The
 * Unicode Standard, ch. 16.1).
 */
export const withAmParted = (text: string): string => text.replace(SARA_AM, '\u0e4d$1\u0e32');

/** Whether a character is a sign over a Thai consonant. */
export const isOverThai = (character: string): boolean =>
  /^[\u0e31\u0e34-\u0e37\u0e47-\u0e4e]$/u.test(character);

/** Whether a character is a sign over or under a Thai consonant. */
export const isThaiSign = (character: string): boolean =>
  isOverThai(character) || /^[\u0e38-\u0e3a]$/u.test(character);
