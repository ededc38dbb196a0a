// Unseen letters that lie under outlines, so that any reader finds, marks and copies what the outlines say.

import type { jsPDF } from 'jspdf';
import type { Point } from '../../../engine';
import { fontTables } from '../../glyphs/fontTables';
import { subsetFont } from '../../glyphs/subsetFont';
import { MM_PER_POINT, textWidth } from '../../text/textWidth';
import { binary } from './embedFace';

export interface UnseenLetters {
  /** Writes letters and marks from left to right as they are seen, over this width. */
  readonly write: (
    letters: readonly string[],
    place: { readonly start: Point; readonly turnRad: number; readonly sizePt: number },
    widthMm: number,
  ) => void;
}

/** The font's name in the file, with the tag of font subsets: ISO 32000-1, 9.6.4. */
const NAME = 'PAGEAC+Unseen';

/** The first code given; among those below are some that jspdf reads as ends of lines. */
const FIRST_CODE = 0x40;

/** The least width of what is no mark and no joiner alone, in thousandths of the size. */
const LEAST_WIDTH = 100;

/** The font's one glyph, which is blank. */
const BLANK = 1;

/** What a reader takes for a letter, its width in thousandths of the size, and what is written for it. */
interface UnseenLetter {
  readonly text: string;
  readonly width: number;
  readonly code: number;
}

/** What jspdf hands to those that write a font. */
interface FontWriting {
  readonly font: { readonly fontName: string; objectNumber: number; isAlreadyPutted: boolean };
  readonly out: (line: string) => void;
  readonly newObject: () => number;
  readonly putStream: (stream: { data: string; addLength1?: boolean; objectId: number }) => void;
}

/** The lines that jspdf is about to write, each before its place. */
interface TextWriting {
  text: readonly (readonly [line: string, ...place: number[]])[];
  readonly mutex: {
    isHex?: boolean;
    readonly activeFontKey: string;
    readonly fonts: Readonly<Record<string, { readonly fontName: string }>>;
  };
}

/**
 * Adds a font to a file in which each code stands for a letter or a mark of any script and is drawn as nothing: a composite
 * font with a map to Unicode (ISO 32000-1, 9.7 and 9.10.3). It is written into the file only where it was taken. `font` is a
 * TrueType file, whose blank it has.
 */
export function unseenLetters(file: jsPDF, font: Uint8Array): UnseenLetters {
  file.addFileToVFS(
    NAME,
    binary(subsetFont(fontTables(font), { characters: [' '], perEm: 1000, name: 'Unseen' })),
  );
  // By an encoding that jspdf does not know, it leaves codes and font to those that ask for them.
  file.addFont(NAME, NAME, 'normal', 'normal', 'unseen' as 'Identity-H');
  const letters = new Map<string, UnseenLetter>();
  const letterOf = (text: string): UnseenLetter => {
    const least = /^(\p{Mn}|\p{Cf}$)/u.test(text) ? 0 : LEAST_WIDTH;
    const width = Math.max(least, Math.round(textWidth(text, 1000 / MM_PER_POINT, false)));
    const letter = letters.get(text) ?? { text, width, code: FIRST_CODE + letters.size };
    letters.set(text, letter);
    return letter;
  };
  file.internal.events.subscribe('postProcessText', (writing: TextWriting) => {
    if (writing.mutex.fonts[writing.mutex.activeFontKey]?.fontName !== NAME) return;
    writing.text = writing.text.map(([line, ...place]) => [hex(line), ...place]);
    writing.mutex.isHex = true;
  });
  file.internal.events.subscribe('putFont', (writing: FontWriting) => {
    if (writing.font.fontName === NAME) writeFont(writing, file.getFileFromVFS(NAME), [...letters.values()]);
  });
  return {
    write: (texts, { start, turnRad, sizePt }, widthMm) => {
      const written = texts.map(letterOf);
      const own = written.reduce((sum, { width }) => sum + width, 0) * (sizePt / 1000) * MM_PER_POINT;
      file.setFont(NAME, 'normal');
      file.setFontSize(sizePt);
      // The horizontal scale is a state of the page and would apply to the texts after this one.
      file.saveGraphicsState();
      file.text(String.fromCharCode(...written.map(({ code }) => code)), start.x, start.y, {
        ...(turnRad === 0 ? {} : { angle: (-turnRad * 180) / Math.PI }),
        renderingMode: 'invisible',
        horizontalScale: widthMm / own,
      });
      file.restoreGraphicsState();
    },
  };
}

function writeFont(
  { font, out, newObject, putStream }: FontWriting,
  program: string,
  letters: readonly UnseenLetter[],
): void {
  const stream = (data: string): number => {
    const objectId = newObject();
    putStream({ data, addLength1: true, objectId });
    out('endobj');
    return objectId;
  };
  const dictionary = (...lines: readonly string[]): number => {
    const objectId = newObject();
    for (const line of ['<<', ...lines, '>>', 'endobj']) out(line);
    return objectId;
  };
  const file = stream(program);
  const glyphs = stream(String.fromCharCode(0, BLANK).repeat(FIRST_CODE + letters.length));
  const toUnicode = stream(unicodeMap(letters));
  const descriptor = dictionary(
    `/Type /FontDescriptor /FontName /${NAME} /FontFile2 ${file} 0 R /Flags 4 /FontBBox [0 -250 1000 950]`,
    '/ItalicAngle 0 /Ascent 950 /Descent -250 /CapHeight 730 /StemV 80',
  );
  const widths = letters.map(({ width }) => width).join(' ');
  const descendant = dictionary(
    `/Type /Font /Subtype /CIDFontType2 /BaseFont /${NAME} /FontDescriptor ${descriptor} 0 R`,
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>',
    `/CIDToGIDMap ${glyphs} 0 R /DW 1000 /W [${FIRST_CODE} [${widths}]]`,
  );
  font.objectNumber = dictionary(
    `/Type /Font /Subtype /Type0 /BaseFont /${NAME} /Encoding /Identity-H`,
    `/DescendantFonts [${descendant} 0 R] /ToUnicode ${toUnicode} 0 R`,
  );
  font.isAlreadyPutted = true;
}

/** The most entries that a part of a map may have: Adobe Technical Note 5411. */
const MOST_ENTRIES = 100;

/** Maps codes to texts in UTF-16, big-endian. */
function unicodeMap(letters: readonly UnseenLetter[]): string {
  const entries = letters.map(({ text, code }) => `<${hex(String.fromCharCode(code))}> <${hex(text)}>`);
  const parts: string[] = [];
  for (let from = 0; from < entries.length; from += MOST_ENTRIES) {
    const part = entries.slice(from, from + MOST_ENTRIES);
    parts.push(`${part.length} beginbfchar`, ...part, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <FFFF>',
    'endcodespacerange',
    ...parts,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}

/** The UTF-16 units of a text, four digits each. */
const hex = (text: string): string =>
  Array.from({ length: text.length }, (_, i) =>
    text.charCodeAt(i).toString(16).padStart(4, '0').toUpperCase(),
  ).join('');
