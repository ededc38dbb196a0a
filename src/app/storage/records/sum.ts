// Tells whether a text is still the one that was written: two sums over its letters, which is no secret.

/** FNV-1a, and a sum by 31, over all texts in a row. */
export const sumOf = (...texts: readonly string[]): string => sumFrom(0, ...texts);

/**
 * As {@link sumOf}, of the first text only from a letter on. A text of thousands of letters need not be copied for it.
 *
 * @param start the number of letters that are left out, at least 0
 */
export function sumFrom(start: number, ...texts: readonly string[]): string {
  let [a, b, from] = [0x811c9dc5, 17, start];
  for (const text of texts) {
    for (let i = from; i < text.length; i += 1) {
      const letter = text.charCodeAt(i);
      a = Math.imul(a ^ letter, 0x01000193);
      b = (Math.imul(b, 31) + letter) | 0;
    }
    from = 0;
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36);
}
