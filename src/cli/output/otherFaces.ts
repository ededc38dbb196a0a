// The large faces for names in other scripts, of which only the parts that a name needs are read.

export type Face = 'noto-sans-sc' | 'noto-sans-kr' | 'noto-sans-thai' | 'noto-sans-devanagari';

/** Scripts with a face of their own. */
const OWN_FACES: readonly (readonly [RegExp, Face])[] = [
  [/^\p{Script=Hangul}$/u, 'noto-sans-kr'],
  [/^\p{Script=Thai}$/u, 'noto-sans-thai'],
  [/^\p{Script=Devanagari}$/u, 'noto-sans-devanagari'],
];

/** The face for a character; those of no script with one are looked for in the first. */
export const faceOf = (character: string): Face =>
  OWN_FACES.find(([script]) => script.test(character))?.[1] ?? 'noto-sans-sc';

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
