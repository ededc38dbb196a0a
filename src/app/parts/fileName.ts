// A name for a file that every system takes.

/** Letters and digits of the parts, joined by hyphens, at most 80; "pattern" where nothing is left. */
export function fileName(...parts: readonly string[]): string {
  const joined = parts
    .join(' ')
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return [...joined].slice(0, 80).join('') || 'pattern';
}
