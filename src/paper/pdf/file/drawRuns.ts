// Writes a text in the page's face, with fractions that the face lacks built of small figures.

import type { jsPDF } from 'jspdf';
import type { PlacedText } from '../../panel/strokes';
import { textRuns } from '../../text/fractions';
import { FRACTION_FIGURES, FRACTION_GAP, MM_PER_POINT, runWidth, textWidth } from '../../text/textWidth';
import { writablePart } from '../../text/writable';
import { takeFace } from './embedFace';

/** How far the numerator is raised, as a factor of the size: it ends as high as a figure. */
const RAISED = 0.25;

/** Writes the text at its start in the current colour, as wide as {@link textWidth}. */
export function drawRuns(page: jsPDF, { text, start, turnRad, sizePt, bold }: PlacedText): void {
  const runs = textRuns(text);
  const angle = turnRad === 0 ? {} : { angle: (-turnRad * 180) / Math.PI };
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  let along = 0;
  const write = (content: string, size: number, raisedMm = 0, narrower = 1): void => {
    page.setFontSize(size);
    const [x, y] = [start.x + along * cos + raisedMm * sin, start.y + along * sin - raisedMm * cos];
    page.text(content, x, y, narrower === 1 ? angle : { ...angle, horizontalScale: narrower });
  };
  takeFace(page, bold);
  for (const run of runs) {
    if (run.kind === 'text') {
      const content = writablePart(run.text).text;
      if (content.trim() !== '') write(content, sizePt);
      along += textWidth(content, sizePt, bold);
      continue;
    }
    const small = FRACTION_FIGURES * sizePt;
    const end = along + runWidth(run, sizePt, bold);
    if (run.isApart) along += FRACTION_GAP * sizePt * MM_PER_POINT;
    write(run.over, small, RAISED * sizePt * MM_PER_POINT);
    along += textWidth(run.over, small, bold);
    // The horizontal scale is a state of the page and would apply to the texts after this one.
    page.saveGraphicsState();
    write('/', sizePt, 0, FRACTION_FIGURES);
    page.restoreGraphicsState();
    along = end - textWidth(run.under, small, bold);
    write(run.under, small);
    along = end;
  }
}
