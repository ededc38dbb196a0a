// Draws a text as outlines, for letters that the page's encoding lacks, so that it can still be found and copied.

import type { jsPDF } from 'jspdf';
import { lineRuns } from '../../glyphs/lineRuns';
import type { Shaper } from '../../glyphs/openShaper';
import type { PlacedText } from '../../panel/strokes';
import { MM_PER_POINT, textWidth } from '../../text/textWidth';
import { takeFace } from './embedFace';

/** Fills the text's outlines in the current colour, narrowed where they are wider than {@link textWidth}. */
export function drawGlyphs(
  page: jsPDF,
  { text, start, turnRad, sizePt, bold }: PlacedText,
  shaper: Shaper,
): void {
  const { outline, advance } = shaper.set(text, bold, sizePt);
  if (outline.length === 0) return;
  const down = (sizePt * MM_PER_POINT) / 1000;
  const across = Math.min(down, textWidth(text, sizePt, bold) / advance);
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const at = (x = 0, y = 0): [number, number] => {
    const [along, below] = [x * across, -y * down];
    return [start.x + along * cos - below * sin, start.y + along * sin + below * cos];
  };
  takeFace(page, bold);
  page.setFontSize(sizePt);
  const angle = turnRad === 0 ? {} : { angle: (-turnRad * 180) / Math.PI };
  const parts = partsToFind(text);
  const share = (advance * across) / parts.reduce((sum, part) => sum + textWidth(part, sizePt, bold), 0);
  let along = 0;
  for (const part of parts) {
    const width = share * textWidth(part, sizePt, bold);
    // The horizontal scale is a state of the page and would apply to the texts after this one.
    page.saveGraphicsState();
    standingFor(page, part, () =>
      page.text(UNSEEN, start.x + along * cos, start.y + along * sin, {
        ...angle,
        renderingMode: 'invisible',
        horizontalScale: width / textWidth(UNSEEN, sizePt, bold),
      }),
    );
    page.restoreGraphicsState();
    along += width;
  }
  let [x, y] = [0, 0];
  for (const { type, values } of outline) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = values;
    if (type === 'M') page.moveTo(...at(a, b));
    else if (type === 'L') page.lineTo(...at(a, b));
    // A quadratic curve is raised to a cubic.
    else if (type === 'Q')
      page.curveTo(
        ...at(x + (2 / 3) * (a - x), y + (2 / 3) * (b - y)),
        ...at(c + (2 / 3) * (a - c), d + (2 / 3) * (b - d)),
        ...at(c, d),
      );
    else if (type === 'C') page.curveTo(...at(a, b), ...at(c, d), ...at(e, f));
    if (values.length > 1) [x, y] = values.slice(-2) as [number, number];
  }
  page.fill();
}

/** An unseen letter in the page's face, for which readers take the text: they take none for outlines alone. */
const UNSEEN = 'x';

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * The parts of a text from left to right as they are seen. Letters that are read from right to left are parts of their own, because
 * readers turn round by themselves what they find in that order.
 */
const partsToFind = (text: string): string[] => {
  const runs = lineRuns(text, () => 0);
  if (runs.every(({ rightToLeft }) => !rightToLeft)) return [text];
  return runs.flatMap(({ text: run, rightToLeft }) =>
    rightToLeft ? [...letters.segment(run)].map(({ segment }) => segment).reverse() : [run],
  );
};

/** Marks what is drawn as standing for a text: ActualText, ISO 32000-1, 14.9.4. */
function standingFor(page: jsPDF, text: string, draw: () => void): void {
  const { write } = page.internal as unknown as { readonly write: (operators: string) => void };
  const digits = Array.from({ length: text.length }, (_, i) =>
    text.charCodeAt(i).toString(16).padStart(4, '0').toUpperCase(),
  );
  write(`/Span <</ActualText <FEFF${digits.join('')}>>> BDC`);
  draw();
  write('EMC');
}
