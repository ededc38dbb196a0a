// Makes a PDF file with jspdf: pages of any size, with a canvas for each. Same drawing, same bytes.

import type { jsPDF } from 'jspdf';
import type { Glyphs } from '../../glyphs/glyphs';
import { openShaper } from '../../glyphs/openShaper';
import type { WithFace } from '../../glyphs/pageFace';
import type { OutlineTools } from './drawGlyphs';
import { embedFace } from './embedFace';
import { fileTitle } from './fileTitle';
import type { PageStyle } from './pageStyle';
import { type PdfCanvas, pdfCanvas } from './pdfCanvas';
import { unseenLetters } from './unseenLetters';

/** Greatest width of a title, mm at 10 pt. */
export const TITLE_MM = 200;

export interface PdfFile {
  /**
   * Adds a page of this size, mm, 1 unit = 1/72 in. Everything drawn on it is scaled by `scale` from its top left corner; by 1
   * where none is given.
   */
  page(
    widthMm: number,
    heightMm: number,
    scale?: { readonly x: number; readonly y: number },
    pageStyle?: PageStyle,
  ): PdfCanvas;
  /** The file with the pages added so far. */
  bytes(): Uint8Array;
}

/**
 * Begins a file. `seed` is its content as text: files with different seeds get different ids. `face` is embedded; `glyphs` are the
 * fonts for texts that it cannot set.
 */
export async function pdfFile(
  title: string,
  seed: string,
  { face, glyphs = null }: WithFace & { readonly glyphs?: Glyphs | null },
): Promise<PdfFile> {
  const { jsPDF } = await import('jspdf');
  const shaper = glyphs ? await openShaper(glyphs) : null;
  const named = fileTitle(title);
  let pdf: jsPDF | null = null;
  let outlines: OutlineTools | null = null;
  const begin = (size: number[], orientation: 'portrait' | 'landscape'): jsPDF => {
    const made = new jsPDF({
      unit: 'mm',
      format: size,
      orientation,
      compress: true,
      putOnlyUsedFonts: true,
      floatPrecision: 4,
    });
    made.viewerPreferences({ PrintScaling: 'None', DisplayDocTitle: true });
    made.setCreationDate(NO_CLOCK);
    made.setFileId(fileId(seed));
    made.setDocumentProperties({ title: named.written, creator: 'Staywright' });
    embedFace(made, face);
    if (shaper && glyphs) outlines = { shaper, unseen: unseenLetters(made, glyphs.regular) };
    return made;
  };
  return {
    page(widthMm, heightMm, scale, pageStyle) {
      const size = [widthMm, heightMm];
      const orientation = widthMm > heightMm ? 'landscape' : 'portrait';
      if (pdf) pdf.addPage(size, orientation);
      else pdf = begin(size, orientation);
      if (scale && (scale.x !== 1 || scale.y !== 1)) {
        // The file's y runs up from the foot of the page, the canvas's down from its head.
        const head = heightMm * pdf.internal.scaleFactor * (1 - scale.y);
        pdf.setCurrentTransformationMatrix(pdf.Matrix(scale.x, 0, 0, scale.y, 0, head));
      }
      return pdfCanvas(pdf, pageStyle, outlines);
    },
    bytes: () => named.finish(new Uint8Array(pdf?.output('arraybuffer') ?? new ArrayBuffer(0))),
  };
}

/** A fixed date, because jspdf always writes one into the file; the date of the pattern is printed on the pages. */
const NO_CLOCK = "D:20000101000000+00'00'";

/** 32 hex digits made of the text, instead of the random ones of jspdf: FNV-1a (draft-eastlake-fnv), four times. */
const fileId = (text: string): string =>
  [1, 2, 3, 4]
    .map((seed) => {
      let hash = 0x811c9dc5 ^ seed;
      for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
      return (hash >>> 0).toString(16).padStart(8, '0');
    })
    .join('');
