// Thai as it is written: signs stand over and under their consonant, and one vowel is two signs.

const SARA_AM = /([\u0e48-\u0e4b]*)\u0e33/gu;

/**
 * The vowel am in the two signs it is set in: the ring goes over the consonant, under its tone mark, and the stroke behind (The
 * Unicode Standard, ch. 16.1).
 */
export const withAmParted = (text: string): string => text.replace(SARA_AM, '\u0e4d$1\u0e32');

/** Signs over a Thai consonant. */
export const isOverThai = (character: string): boolean =>
  /^[\u0e31\u0e34-\u0e37\u0e47-\u0e4e]$/u.test(character);

/** Signs over and under one. */
export const isThaiSign = (character: string): boolean =>
  isOverThai(character) || /^[\u0e38-\u0e3a]$/u.test(character);
