// Writes paragraphs below each other on a page.

import { FIRST_PAGE } from '../../../document';
import { wrapped } from '../../text/textWidth';
import { settable } from '../../text/writable';
import type { PdfCanvas } from '../file/pdfCanvas';

export interface Paragraph {
  readonly kind: 'heading' | 'text' | 'small' | 'alarm';
  readonly text: string;
}

interface ParagraphStyle {
  readonly sizePt: number;
  readonly bold: boolean;
  readonly lineMm: number;
  readonly beforeMm: number;
}

const PARAGRAPH_STYLES: Readonly<Record<Paragraph['kind'], ParagraphStyle>> = {
  heading: { sizePt: 10, bold: true, lineMm: 4.4, beforeMm: 3.4 },
  text: { sizePt: 8, bold: false, lineMm: 3.5, beforeMm: 1.1 },
  small: { sizePt: 7, bold: false, lineMm: 3, beforeMm: 0.9 },
  alarm: { sizePt: 10, bold: true, lineMm: 5, beforeMm: 2 },
};

/**
 * Writes paragraphs below each other until one would pass `lowest`; a line then refers to the screen. Returns the baseline of the
 * last line, mm.
 */
export function drawParagraphs(
  canvas: PdfCanvas,
  paragraphs: readonly Paragraph[],
  left: number,
  top: number,
  width: number,
  lowest: number,
): number {
  let y = top;
  for (const [i, { kind, text }] of paragraphs.entries()) {
    const { sizePt, bold, lineMm, beforeMm } = PARAGRAPH_STYLES[kind];
    const lines = wrapped(settable(text), sizePt, bold, width);
    if (y + lines.length * lineMm > lowest) {
      canvas.text({
        text: FIRST_PAGE.cutShort,
        start: { x: left, y: y + 4 },
        turnRad: 0,
        sizePt: 7,
        bold: true,
      });
      return y + 4;
    }
    if (i > 0) y += beforeMm;
    for (const line of lines) {
      y += lineMm;
      canvas.text({ text: line, start: { x: left, y }, turnRad: 0, sizePt, bold });
    }
  }
  return y;
}
