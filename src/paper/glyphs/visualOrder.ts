// Arabic letters in the shapes they take beside their neighbours, and texts in the order they are seen from left to right.

import { withShapes } from './arabicShapes';
import { withAmParted } from './thai';

const RIGHT_TO_LEFT =
  /^[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]$/u;
const STRONG = /^\p{L}$/u;
const DIGIT = /^\p{Nd}$/u;
const MIRRORED: Readonly<Record<string, string>> = {
  '(': ')',
  ')': '(',
  '[': ']',
  ']': '[',
  '«': '»',
  '»': '«',
  '<': '>',
  '>': '<',
};

/** Stands between the parts of a row; each part is read in its own direction, and the parts from left to right. */
const BETWEEN_PARTS = ' · ';

/**
 * A line of text as it is seen from left to right. A short form of the bidirectional algorithm (Unicode Standard Annex 9):
 * runs in one direction, numbers from left to right in either, whatever stands between two runs of one direction with them, the
 * rest with the line, whose direction is its first letter's. Enough for names; there are no levels within levels.
 */
export const visualOrder = (text: string): string =>
  withAmParted(text).split(BETWEEN_PARTS).map(partInVisualOrder).join(BETWEEN_PARTS);

function partInVisualOrder(text: string): string {
  const letters = clusters(withShapes(text));
  let last: 'R' | 'L' | null = null;
  const directions = letters.map((cluster): 'R' | 'L' | 'N' | null => {
    const [first = ''] = cluster;
    // A number goes with letters from left to right before it; with others it is turned as one.
    if (DIGIT.test(first)) return last === 'L' ? 'L' : 'N';
    const direction = RIGHT_TO_LEFT.test(first) ? 'R' : STRONG.test(first) ? 'L' : null;
    last = direction ?? last;
    return direction;
  });
  if (!directions.includes('R')) return letters.join('');
  const line = directions.find((direction) => direction === 'R' || direction === 'L') ?? 'L';
  const known = directions.map((direction, i) => {
    if (direction === 'R' || direction === 'L') return direction;
    const before = directions.slice(0, i).findLast(isStrong) ?? line;
    const after = directions.slice(i + 1).find(isStrong) ?? line;
    return before === after ? before : line;
  });
  const runs: { direction: 'R' | 'L'; from: number; to: number }[] = [];
  for (const [i, direction] of known.entries()) {
    const run = runs.at(-1);
    if (run?.direction === direction) run.to = i + 1;
    else runs.push({ direction, from: i, to: i + 1 });
  }
  const shown = runs.map(({ direction, from, to }) => {
    const part = letters.slice(from, to);
    return direction === 'L' ? part.join('') : turned(part, directions.slice(from, to));
  });
  return (line === 'R' ? shown.reverse() : shown).join('');
}

const isStrong = (direction: 'R' | 'L' | 'N' | null): direction is 'R' | 'L' =>
  direction === 'R' || direction === 'L';

/** A run from right to left: turned round, but its numbers kept. */
function turned(letters: readonly string[], directions: readonly ('R' | 'L' | 'N' | null)[]): string {
  const parts: string[] = [];
  for (const [i, letter] of letters.entries()) {
    const last = parts.length - 1;
    if (directions[i] === 'N' && i > 0 && directions[i - 1] === 'N') parts[last] = `${parts[last]}${letter}`;
    else parts.push(MIRRORED[letter] ?? letter);
  }
  return parts.reverse().join('');
}

/** A letter with the marks on it. */
function clusters(text: string): string[] {
  const found: string[] = [];
  for (const character of text)
    if (/^\p{M}$/u.test(character) && found.length > 0) found.push(`${found.pop()}${character}`);
    else found.push(character);
  return found;
}
