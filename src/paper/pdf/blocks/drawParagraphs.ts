// Paragraphs below each other on a page, as far as there is room.

import { shortened, textWidth, wrapped } from '../../text/textWidth';
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
 * Writes paragraphs below each other until one would pass `lowest`, and says so if one would; gives back where the last line
 * stands.
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
        text: 'The rest is told on the screen.',
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

/** Room that {@link drawHead} takes. mm */
export const HEAD_MM = 20;

/** Whose pattern it is: the client large, the draft below, facts on the right, a rule under all. */
export function drawHead(
  canvas: PdfCanvas,
  {
    client,
    draft,
    facts,
  }: { readonly client: string; readonly draft: string; readonly facts: readonly string[] },
  { left, right, top }: { readonly left: number; readonly right: number; readonly top: number },
): void {
  const factLine = facts
    .map((fact) => settable(fact))
    .filter((fact) => fact !== '')
    .join(' · ');
  const factWidth = textWidth(factLine, 9, false);
  const write = (content: string, x: number, y: number, sizePt: number, bold: boolean): void =>
    canvas.text({ text: content, start: { x, y }, turnRad: 0, sizePt, bold });
  write(shortened(settable(client), 20, true, right - left), left, top + 7, 20, true);
  write(shortened(settable(draft), 12, false, right - left - factWidth - 6), left, top + 14, 12, false);
  write(factLine, right - factWidth, top + 14, 9, false);
  canvas.line('rule', [
    { x: left, y: top + HEAD_MM },
    { x: right, y: top + HEAD_MM },
  ]);
}
