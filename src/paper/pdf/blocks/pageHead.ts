// The head of a printed page.

import { HEAD_MM } from '../../sheets/pageMeasures';
import { shortened, textWidth } from '../../text/textWidth';
import { settable } from '../../text/writable';
import type { PdfCanvas } from '../file/pdfCanvas';

/** Draws the head: the client large, the draft below, facts at the right, a rule under all. */
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
