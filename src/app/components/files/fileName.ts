// A name for a file that every system takes.

/** Letters and digits of the parts, each at most 40, joined by hyphens; "pattern" where nothing is left. */
export function fileName(...parts: readonly string[]): string {
  const kept = parts
    .map((part) => plain([...plain(part)].slice(0, MOST_LETTERS).join('')))
    .filter((part) => part !== '');
  return kept.join('-') || 'pattern';
}

/** Of each part, so that none pushes another out. */
const MOST_LETTERS = 40;

const plain = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
