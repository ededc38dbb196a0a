// Embeds the page's face in a file of jspdf.

import type { jsPDF } from 'jspdf';
import type { PageFace } from '../../glyphs/pageFace';

/** The face's names in the file, with the tags of font subsets: ISO 32000-1, 9.6.4. */
const NAMES = {
  regular: 'PAGEAA+DejaVuSansCondensed',
  bold: 'PAGEAB+DejaVuSansCondensed-Bold',
} as const;

/** Adds the face to a file, before its first text. */
export function embedFace(file: jsPDF, face: PageFace): void {
  for (const weight of ['regular', 'bold'] as const) {
    file.addFileToVFS(NAMES[weight], binary(face[weight]));
    file.addFont(NAMES[weight], NAMES[weight], 'normal');
  }
}

/** Sets the face for the texts that follow. */
export const takeFace = (file: jsPDF, bold: boolean): unknown =>
  file.setFont(NAMES[bold ? 'bold' : 'regular'], 'normal');

/** A character for each byte, as jspdf keeps files. */
export function binary(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
}
