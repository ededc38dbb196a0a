// Puts texts into visual order, from left to right.

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

/** Separates the parts of a line; each part has its own direction, and the parts follow from left to right. */
const BETWEEN_PARTS = ' · ';

/**
 * A line of text in visual order. A short form of the bidirectional algorithm (Unicode Standard Annex 9): letters form runs of
 * one direction; numbers read from left to right in either; neutral characters between two runs of one direction belong to them,
 * others take the direction of the line, which is that of its first letter. It suffices for names: there are no nested levels.
 */
export const visualOrder = (text: string): string =>
  withAmParted(text).split(BETWEEN_PARTS).map(partInVisualOrder).join(BETWEEN_PARTS);

function partInVisualOrder(text: string): string {
  const letters = clusters(withShapes(text));
  let last: 'R' | 'L' | null = null;
  const directions = letters.map((cluster): 'R' | 'L' | 'N' | null => {
    const [first = ''] = cluster;
    // A number joins left-to-right letters before it; in a right-to-left run it is kept in its own order.
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

/** A right-to-left run reversed, with its numbers in their own order. */
function turned(letters: readonly string[], directions: readonly ('R' | 'L' | 'N' | null)[]): string {
  const parts: string[] = [];
  for (const [i, letter] of letters.entries()) {
    const last = parts.length - 1;
    if (directions[i] === 'N' && i > 0 && directions[i - 1] === 'N') parts[last] = `${parts[last]}${letter}`;
    else parts.push(MIRRORED[letter] ?? letter);
  }
  return parts.reverse().join('');
}

/** Splits a text into letters, each with its marks. */
function clusters(text: string): string[] {
  const found: string[] = [];
  for (const character of text)
    if (/^\p{M}$/u.test(character) && found.length > 0) found.push(`${found.pop()}${character}`);
    else found.push(character);
  return found;
}
