// Arabic letters in the shapes they take beside their neighbours, and texts in the order they are seen from left to right.

import { withAmParted } from './thai';

/** Shapes of a letter: alone, at the end, at the beginning, in the middle of a joined row; those that there are. */
type Shapes = readonly number[];

/** The presentation forms of Unicode, each letter's in this order (The Unicode Standard, ch. 9.2). */
const SHAPES: ReadonlyMap<string, Shapes> = (() => {
  const found = new Map<string, number[]>();
  for (const [first, last] of [
    [0xfb50, 0xfbb1],
    [0xfbd3, 0xfbe9],
    [0xfbfc, 0xfbff],
    [0xfe80, 0xfefc],
  ] as const)
    for (let code = first; code <= last; code += 1) {
      const base = String.fromCodePoint(code).normalize('NFKC');
      if (!/^\p{Script=Arabic}{1,2}$/u.test(base)) continue;
      const shapes = found.get(base) ?? [];
      if (shapes.length < 4) found.set(base, [...shapes, code]);
    }
  return found;
})();

/** Every shape an Arabic letter can take, itself first; other characters have none but themselves. */
export const shapesOf = (letter: string): readonly number[] => [
  letter.codePointAt(0) ?? 0,
  ...(SHAPES.get(letter) ?? []),
];

/** Letters that two letters make together. */
export const JOINED_PAIRS: readonly number[] = [...SHAPES].flatMap(([letters, shapes]) =>
  letters.length > 1 ? shapes : [],
);

const TRANSPARENT = /^[\p{M}\u200b]$/u;
const isDual = (letter: string): boolean =>
  SHAPES.get(letter)?.length === 4 || letter === 'ـ' || letter === '\u200d';
const joinsBefore = (letter: string): boolean => isDual(letter) || SHAPES.get(letter)?.length === 2;

/** Letters that join replaced by the shape they take; all others as they are. Joiners have done their work and go. */
function withShapes(text: string): string {
  const letters = [...text];
  const neighbour = (from: number, step: 1 | -1): string => {
    for (let i = from + step; i >= 0 && i < letters.length; i += step)
      if (!TRANSPARENT.test(letters[i] as string)) return letters[i] as string;
    return '';
  };
  let out = '';
  for (let i = 0; i < letters.length; i += 1) {
    const letter = letters[i] as string;
    const next = neighbour(i, 1);
    const joinsPrevious = isDual(neighbour(i, -1)) && joinsBefore(letter);
    // Lam and alef make one letter.
    const pair = letter === 'ل' && letters[i + 1] === next ? SHAPES.get(letter + next) : undefined;
    const shapes = pair ?? SHAPES.get(letter);
    if (pair) i += 1;
    const joinsNext = !pair && isDual(letter) && joinsBefore(next);
    const shape = shapes?.[joinsNext ? (joinsPrevious ? 3 : 2) : joinsPrevious ? 1 : 0] ?? shapes?.[0];
    out += shape === undefined ? letter : String.fromCodePoint(shape);
  }
  return out.replace(/[\u200c\u200d]/g, '');
}

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
