// Sets lines of text in outlines: letters in the shapes they take beside each other, by the rules of their fonts.

import { deviceLetters } from './deviceLetters';
import type { Glyphs } from './glyphs';
import { lineRuns } from './lineRuns';
import type { OutlineStep, SetLine } from './outline';
import { FACE_PER_EM } from './pageFaceFiles';

export interface Shaper {
  /** @param sizePt at which letters are drawn that the fonts lack and the device has */
  readonly set: (line: string, bold: boolean, sizePt: number) => SetLine;
}

/** Opens the fonts with HarfBuzz. */
export async function openShaper({ regular, bold, others }: Glyphs): Promise<Shaper> {
  const hb: typeof import('harfbuzzjs') & { readonly ready?: Promise<unknown> } = await import('harfbuzzjs');
  // In a build the package does not wait for its WebAssembly by itself.
  await hb.ready;
  const open = (file: Uint8Array, perEm?: number) => {
    const font = new hb.Font(new hb.Face(new hb.Blob(file)));
    const units = perEm ?? new DataView(file.buffer, file.byteOffset).getUint16(headOf(file) + 18);
    return { font, scale: 1000 / units };
  };
  const rest = others.map((file) => open(file));
  const [plain, heavy] = [open(regular, FACE_PER_EM), open(bold, FACE_PER_EM)];

  const set = (line: string, isBold: boolean, sizePt: number): SetLine => {
    const fonts = [...(isBold ? [heavy] : []), plain, ...rest];
    const fontOf = (letter: string): number | null => {
      const seen = [...letter].filter((each) => !/^(?:\p{Cf}|\p{Variation_Selector})$/u.test(each));
      const found = fonts.findIndex(({ font }) =>
        seen.every((each) => font.nominalGlyph(each.codePointAt(0) ?? 0) !== undefined),
      );
      return found < 0 ? null : found;
    };
    const outline: OutlineStep[] = [];
    let advance = 0;
    const add = (steps: readonly OutlineStep[], scale: number, dx: number, dy: number): void => {
      for (const { type, values } of steps)
        outline.push({
          type,
          values: values.map((value, i) =>
            i % 2 === 0 ? advance + (value + dx) * scale : (value + dy) * scale,
          ),
        });
    };
    for (const { text, rightToLeft, font: index } of lineRuns(line, fontOf)) {
      const drawn = index === null ? deviceLetters(text, isBold, rightToLeft, sizePt) : null;
      if (drawn) {
        add(drawn.outline, 1, 0, 0);
        advance += drawn.advance;
        continue;
      }
      // A letter that nothing has is the face's own empty box.
      const { font, scale } = fonts[index ?? 0] ?? plain;
      const buffer = new hb.Buffer();
      buffer.addText(text);
      buffer.setDirection(rightToLeft ? hb.Direction.RTL : hb.Direction.LTR);
      buffer.guessSegmentProperties();
      hb.shape(font, buffer);
      for (const {
        codepoint,
        xAdvance = 0,
        xOffset = 0,
        yOffset = 0,
      } of buffer.getGlyphInfosAndPositions()) {
        add(font.glyphToJson(codepoint) as OutlineStep[], scale, xOffset, yOffset);
        advance += xAdvance * scale;
      }
    }
    return { outline, advance };
  };
  return { set };
}

/** Where the table `head` of a TrueType file begins. */
function headOf(file: Uint8Array): number {
  const view = new DataView(file.buffer, file.byteOffset);
  for (let at = 12; at < 12 + 16 * view.getUint16(4); at += 16)
    if (view.getUint32(at) === HEAD) return view.getUint32(at + 8);
  throw new Error('the font has no head');
}

const HEAD = 0x68656164;
