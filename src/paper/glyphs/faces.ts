// The face of the page, and the large faces for names in other scripts, of which only the parts that a name needs are read.

/** Files of the page's face, DejaVu Sans Condensed, in dejavu-fonts-ttf. */
export const FACE_FILES = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' };

/** Units per em as the page's face is set: its own 2048 are 95 % of it, so that a line is as long as in most sans serif faces. */
export const FACE_PER_EM = 2156;

export type Face = 'noto-sans-sc' | 'noto-sans-kr' | 'noto-sans-thai';

/** The face for a character: Hangul and Thai have their own; all others are looked for in the first. */
export const faceOf = (character: string): Face =>
  /^\p{Script=Hangul}$/u.test(character)
    ? 'noto-sans-kr'
    : /^\p{Script=Thai}$/u.test(character)
      ? 'noto-sans-thai'
      : 'noto-sans-sc';

/** File name of a part of a face in its package. */
export const partFile = (face: Face, part: string): string => `${face}-${part}-400-normal.woff`;

/**
 * The parts that have the characters, each with those it has. Characters that no part has are left out.
 *
 * @param parts unicode.json of the face's package: ranges by part, "U+4e00-4e0f,U+4e10"; numbered parts are in brackets
 */
export function partsWith(
  characters: readonly string[],
  parts: Readonly<Record<string, string>>,
): Map<string, string[]> {
  const all = Object.entries(parts);
  // Where parts are numbered, those with names repeat the same characters.
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
