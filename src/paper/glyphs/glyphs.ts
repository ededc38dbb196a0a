// Reads the glyphs that names need and the page's face lacks from fonts that are shipped with the program.

import { cleaned, isExact } from '../text/writable';
import { JOINED_PAIRS, shapesOf } from './arabicShapes';
import { FACE_FILES, FACE_PER_EM, type Face, faceOf, partFile, partsWith } from './faces';
import { type Glyph, lengthOf, readTypeface, type Typeface } from './typeface';
import { visualOrder } from './visualOrder';

/** Glyphs by character. Plain data. */
export interface Glyphs {
  readonly regular: Readonly<Record<string, Glyph>>;
  readonly bold: Readonly<Record<string, Glyph>>;
  /** Characters of the texts that no font has; they are drawn as empty boxes. */
  readonly missing: readonly string[];
}

/** Access to the font files, in the browser or on disk. */
export interface FontFiles {
  /** Reads a file: {@link FACE_FILES} of dejavu-fonts-ttf, or `<face>-<part>-400-normal.woff` of @fontsource/<face>. */
  readonly read: (name: string) => Promise<Uint8Array>;
  /** Reads unicode.json of @fontsource/<face>: ranges of characters by part. */
  readonly parts: (face: Face) => Promise<Readonly<Record<string, string>>>;
}

/** Glyphs of the page's face are drawn at the size at which the face is set. */
const FACE_SCALE = 2048 / FACE_PER_EM;

/** Characters that are always read, because names stand in one line with the program's own words. */
const ALWAYS = Array.from({ length: 95 }, (_, i) => i + 32)
  .map((code) => String.fromCharCode(code))
  .concat([...'·…–—½¼¾×°’“”']);

/** The texts of an input that a user typed, and its date. */
interface Named {
  readonly client: { readonly name: string };
  readonly savedDraft: { readonly name: string };
  readonly date: string;
}

/** Adds the glyphs that the names and the date of an input need. What `files` throws is passed on. */
export async function withGlyphs<T extends Named>(
  input: T,
  files: FontFiles,
): Promise<T & { readonly glyphs?: Glyphs }> {
  const glyphs = await glyphsFor([input.client.name, input.savedDraft.name, input.date], files);
  return glyphs ? { ...input, glyphs } : input;
}

/**
 * The glyphs for texts; null, and nothing is read, where the page's face has all of them. The large faces have one weight, which
 * also stands for bold.
 */
export async function glyphsFor(texts: readonly string[], files: FontFiles): Promise<Glyphs | null> {
  const lines = texts.map(cleaned);
  if (lines.every(isExact)) return null;
  const needed = [
    ...new Set([
      ...ALWAYS,
      ...lines
        .flatMap((line) => [...visualOrder(line), ...line])
        .flatMap((each) => shapesOf(each).map(character)),
      ...JOINED_PAIRS.map(character),
    ]),
  ];
  const [regular, bold] = await Promise.all(
    [FACE_FILES.regular, FACE_FILES.bold].map(async (name) => {
      const typeface = await readTypeface(await files.read(name));
      return glyphsOf(typeface, needed, FACE_SCALE);
    }),
  );
  const rest = needed.filter((each) => !regular?.[each] && !/^[\p{C}\p{Z}]$/u.test(each));
  const others = rest.length > 0 ? await fromParts(rest, files) : {};
  return {
    regular: { ...regular, ...others },
    bold: { ...others, ...regular, ...bold },
    missing: [...new Set(lines.flatMap((line) => [...line]))].filter(
      (each) => rest.includes(each) && !others[each],
    ),
  };
}

const character = (code: number): string => String.fromCodePoint(code);

function glyphsOf(typeface: Typeface, needed: readonly string[], scale: number): Record<string, Glyph> {
  const found: Record<string, Glyph> = {};
  for (const each of needed) {
    const glyph = typeface.glyph(each.codePointAt(0) ?? 0);
    if (glyph) found[each] = scaled(glyph, scale);
  }
  return found;
}

/** Reads glyphs from the large faces, only from the parts that have one of the characters. */
async function fromParts(needed: readonly string[], files: FontFiles): Promise<Record<string, Glyph>> {
  const byFace = new Map<Face, string[]>();
  for (const each of needed) byFace.set(faceOf(each), [...(byFace.get(faceOf(each)) ?? []), each]);
  const found = await Promise.all(
    [...byFace].map(async ([face, characters]) => {
      const parts = partsWith(characters, await files.parts(face));
      const glyphs = await Promise.all(
        [...parts].map(async ([part, each]) =>
          glyphsOf(await readTypeface(await files.read(partFile(face, part))), each, 1),
        ),
      );
      return Object.assign({}, ...glyphs) as Record<string, Glyph>;
    }),
  );
  return Object.assign({}, ...found);
}

function scaled({ advance, outline }: Glyph, scale: number): Glyph {
  if (scale === 1) return { advance, outline };
  const steps = [...outline];
  for (let i = 0; i < steps.length; i += lengthOf(steps[i]))
    for (let j = i + 1; j < i + lengthOf(steps[i]); j += 1)
      steps[j] = Math.round((steps[j] ?? 0) * scale * 10) / 10;
  return { advance: advance * scale, outline: steps };
}
