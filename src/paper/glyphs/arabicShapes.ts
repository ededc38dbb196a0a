// Replaces Arabic letters by the shapes they take beside their neighbours.

/** Code points of a letter's shapes: isolated, final, initial, medial; only the first two where it joins on one side. */
type Shapes = readonly number[];

/** The presentation forms of Unicode by letter (The Unicode Standard, ch. 9.2). */
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

/** Code points of every shape of a letter, its own first; only its own for letters that are not Arabic. */
export const shapesOf = (letter: string): readonly number[] => [
  letter.codePointAt(0) ?? 0,
  ...(SHAPES.get(letter) ?? []),
];

/** Code points of ligatures of two letters. */
export const JOINED_PAIRS: readonly number[] = [...SHAPES].flatMap(([letters, shapes]) =>
  letters.length > 1 ? shapes : [],
);

const TRANSPARENT = /^[\p{M}\u200b]$/u;
const isDual = (letter: string): boolean =>
  SHAPES.get(letter)?.length === 4 || letter === 'ـ' || letter === '\u200d';
const joinsBefore = (letter: string): boolean => isDual(letter) || SHAPES.get(letter)?.length === 2;

/** Replaces letters that join by the shapes they take, and removes zero-width joiners. */
export function withShapes(text: string): string {
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
    // Lam and alef form a ligature.
    const pair = letter === 'ل' && letters[i + 1] === next ? SHAPES.get(letter + next) : undefined;
    const shapes = pair ?? SHAPES.get(letter);
    if (pair) i += 1;
    const joinsNext = !pair && isDual(letter) && joinsBefore(next);
    const shape = shapes?.[joinsNext ? (joinsPrevious ? 3 : 2) : joinsPrevious ? 1 : 0] ?? shapes?.[0];
    out += shape === undefined ? letter : String.fromCodePoint(shape);
  }
  return out.replace(/[\u200c\u200d]/g, '');
}
