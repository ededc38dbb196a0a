// Draws a text as outlines, for letters that the page's face lacks.

import type { jsPDF } from 'jspdf';
import type { Glyphs } from '../../glyphs/glyphs';
import { setLine } from '../../glyphs/setLine';
import type { PlacedText } from '../../panel/strokes';
import { MM_PER_POINT, textWidth } from '../../text/textWidth';

/** Fills the text's outlines in the current colour, narrowed where they are wider than {@link textWidth}. */
export function drawGlyphs(
  page: jsPDF,
  { text, start, turnRad, sizePt, bold }: PlacedText,
  glyphs: Glyphs,
): void {
  const { outlines, advance } = setLine(text, glyphs, bold);
  if (outlines.length === 0) return;
  const down = (sizePt * MM_PER_POINT) / 1000;
  const across = Math.min(down, textWidth(text, sizePt, bold) / advance);
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const at = (x: number, y: number): [number, number] => {
    const [along, below] = [x * across, -y * down];
    return [start.x + along * cos - below * sin, start.y + along * sin + below * cos];
  };
  let [x, y] = [0, 0];
  for (const outline of outlines)
    for (let i = 0; i < outline.length; ) {
      const [kind = 0, a = 0, b = 0, c = 0, d = 0] = outline.slice(i, i + 5);
      if (kind === 2) {
        // A quadratic curve is raised to a cubic.
        const first = at(x + (2 / 3) * (a - x), y + (2 / 3) * (b - y));
        const second = at(c + (2 / 3) * (a - c), d + (2 / 3) * (b - d));
        page.curveTo(...first, ...second, ...at(c, d));
        [x, y] = [c, d];
        i += 5;
      } else {
        if (kind === 0) page.moveTo(...at(a, b));
        else page.lineTo(...at(a, b));
        [x, y] = [a, b];
        i += 3;
      }
    }
  page.fill();
}
