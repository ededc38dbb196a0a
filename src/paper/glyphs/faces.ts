// The large faces of writing, cut into parts of which only those are read that a name needs.

/** Names of its files in dejavu-fonts-ttf. */
export const FACE_FILES = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' };

/** Units in its size as it is set: 2048 of its own make 95 %, where a line of it is as long as most sans serif faces make it. */
export const FACE_PER_EM = 2156;

export type Face = 'noto-sans-sc' | 'noto-sans-kr' | 'noto-sans-thai';

/** Which face has a script's letters; Chinese and Japanese, and whatever no other has, are looked for in the first. */
export const faceOf = (character: string): Face =>
  /^\p{Script=Hangul}$/u.test(character)
    ? 'noto-sans-kr'
    : /^\p{Script=Thai}$/u.test(character)
      ? 'noto-sans-thai'
      : 'noto-sans-sc';

/** Where a part of a face lies among the files of its package. */
export const partFile = (face: Face, part: string): string => `${face}-${part}-400-normal.woff`;

/**
 * The part that has each character, by part; what none has is left out.
 *
 * @param parts unicode.json of the face's package: characters by part, "U+4e00-4e0f,U+4e10"; parts by number stand in brackets
 */
export function partsWith(
  characters: readonly string[],
  parts: Readonly<Record<string, string>>,
): Map<string, string[]> {
  const all = Object.entries(parts);
  // Where parts are numbered, those by name hold the same letters once more.
  const numbered = all.filter(([name]) => /^\[\d+\]$/.test(name));
  const known = (numbered.length > 0 ? numbered : all).map(([name, ranges]) => ({
    name: name.replace(/^\[|\]$/g, ''),
    ranges: ranges.split(',').map((range) => {
      const [from = '', to = from] = range.replace(/^U\+/i, '').split('-');
      return [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const;
    }),
  }));
  const found = new Map<string, string[]>();
  for (const character of characters) {
    const code = character.codePointAt(0) ?? 0;
    const part = known.find(({ ranges }) => ranges.some(([from, to]) => code >= from && code <= to));
    if (part) found.set(part.name, [...(found.get(part.name) ?? []), character]);
  }
  return found;
}
