// The fonts that texts are set in whose letters the PDF's own encoding lacks.

import { cleaned, isExact } from '../text/writable';
import { fontTables, glyphIndex } from './fontTables';
import { FACE_FILES } from './pageFaceFiles';

/** Font files, and what none of them has. Plain data, so that a worker can be given it. */
export interface Glyphs {
  /** The page's face, whole. */
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  /** TrueType files for letters that the page's face lacks; they have one weight, which also stands for bold. */
  readonly others: readonly Uint8Array[];
  /** Characters of the texts that can be written by none; they stand as empty boxes. */
  readonly missing: readonly string[];
}

/** Access to fonts, in the browser or on disk. */
export interface FontFiles {
  /** Reads a file of the page's face. */
  readonly read: (name: string) => Promise<Uint8Array>;
  /** TrueType files for characters that the page's face lacks; none for those that no file has. */
  readonly others: (characters: readonly string[]) => Promise<readonly Uint8Array[]>;
  /** Whether the device draws a character with fonts of its own where the print is made. */
  readonly isDrawn: (character: string) => boolean;
}

/** The texts of an input that a user typed, and its date. */
interface Named {
  readonly client: { readonly name: string };
  readonly savedDraft: { readonly name: string };
  readonly date: string;
}

/** Adds the fonts that the names and the date of an input need. What `files` throws is passed on. */
export async function withGlyphs<T extends Named>(
  input: T,
  files: FontFiles,
): Promise<T & { readonly glyphs?: Glyphs }> {
  const glyphs = await glyphsFor([input.client.name, input.savedDraft.name, input.date], files);
  return glyphs ? { ...input, glyphs } : input;
}

/** The fonts for texts; null, and nothing is read, where the PDF's own encoding has all of their letters. */
export async function glyphsFor(texts: readonly string[], files: FontFiles): Promise<Glyphs | null> {
  const lines = texts.map(cleaned);
  if (lines.every(isExact)) return null;
  const [regular, bold] = await Promise.all([files.read(FACE_FILES.regular), files.read(FACE_FILES.bold)]);
  const lacking = lackingIn([...new Set(lines.flatMap((line) => [...line]))], regular);
  const others = lacking.length > 0 ? await files.others(lacking) : [];
  const missing = others.reduce(lackingIn, lacking).filter((each) => !files.isDrawn(each));
  return { regular, bold, others, missing };
}

const UNSEEN = /^(?:[\p{Cc}\p{Cf}\p{Z}]|\p{Variation_Selector})$/u;

/** The characters that a font lacks and that are seen: joiners, blanks and variation selectors are not. */
function lackingIn(characters: readonly string[], font: Uint8Array): string[] {
  const indexOf = glyphIndex(fontTables(font));
  return characters.filter((each) => !UNSEEN.test(each) && indexOf(each.codePointAt(0) ?? 0) === 0);
}
