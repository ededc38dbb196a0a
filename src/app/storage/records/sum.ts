// Tells whether a text is still the one that was written: two sums over its letters, which is no secret.

/** FNV-1a, and a sum by 31, over all texts in a row. */
export function sumOf(...texts: readonly string[]): string {
  let [a, b] = [0x811c9dc5, 17];
  for (const text of texts)
    for (let i = 0; i < text.length; i += 1) {
      const letter = text.charCodeAt(i);
      a = Math.imul(a ^ letter, 0x01000193);
      b = (Math.imul(b, 31) + letter) | 0;
    }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36);
}
