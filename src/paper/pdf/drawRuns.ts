// A text in the page's own font, with the fractions that it lacks built of small figures as its ½ is.

import type { jsPDF } from 'jspdf';
import type { InkText } from '../ink';
import { textRuns } from '../text/fractions';
import { FRACTION_APART, FRACTION_FIGURES, MM_PER_POINT, runWidth, textWidth } from '../text/textWidth';
import { lettered } from '../text/writable';
import { takeFace } from './embedFace';

/** How far the figure over the stroke is raised, in parts of the size: it ends as high as a figure. */
const RAISED = 0.25;

/** Writes the text at its start in the colour in hand; as wide as {@link textWidth} says. */
export function drawRuns(page: jsPDF, { text, start, turnRad, sizePt, bold }: InkText): void {
  const runs = textRuns(text);
  const angle = turnRad === 0 ? {} : { angle: (-turnRad * 180) / Math.PI };
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  let along = 0;
  const put = (words: string, size: number, raisedMm = 0, narrower = 1): void => {
    page.setFontSize(size);
    const [x, y] = [start.x + along * cos + raisedMm * sin, start.y + along * sin - raisedMm * cos];
    page.text(words, x, y, narrower === 1 ? angle : { ...angle, horizontalScale: narrower });
  };
  takeFace(page, bold);
  for (const run of runs) {
    if (run.kind === 'words') {
      const words = lettered(run.text).text;
      if (words.trim() !== '') put(words, sizePt);
      along += textWidth(words, sizePt, bold);
      continue;
    }
    const small = FRACTION_FIGURES * sizePt;
    const end = along + runWidth(run, sizePt, bold);
    if (run.apart) along += FRACTION_APART * sizePt * MM_PER_POINT;
    put(run.over, small, RAISED * sizePt * MM_PER_POINT);
    along += textWidth(run.over, small, bold);
    // The scale across is a state of the page, which would hold for the texts after this one.
    page.saveGraphicsState();
    put('/', sizePt, 0, FRACTION_FIGURES);
    page.restoreGraphicsState();
    along = end - textWidth(run.under, small, bold);
    put(run.under, small);
    along = end;
  }
}
