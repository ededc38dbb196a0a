// Draws a text as outlines, for letters that the page's encoding lacks, so that it can still be found and copied.

import type { jsPDF } from 'jspdf';
import { lineRuns } from '../../glyphs/lineRuns';
import type { Shaper } from '../../glyphs/openShaper';
import type { PlacedText } from '../../panel/strokes';
import { MM_PER_POINT, textWidth } from '../../text/textWidth';
import type { UnseenLetters } from './unseenLetters';

/** What texts in outlines are drawn with. */
export interface OutlineTools {
  readonly shaper: Shaper;
  readonly unseen: UnseenLetters;
}

/** Fills the text's outlines in the current colour, narrowed where they are wider than {@link textWidth}. */
export function drawGlyphs(
  page: jsPDF,
  { text, start, turnRad, sizePt, bold }: PlacedText,
  { shaper, unseen }: OutlineTools,
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
  unseen.write(lettersToFind(text), { start, turnRad, sizePt }, advance * across);
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

/** A mark alone, because readers take its width for none; any other character with the joiners before it, which some skip alone. */
const FOUND_AS_ONE = /\p{Mn}|\p{Cf}*[^\p{Mn}\p{Cf}]/gu;

/**
 * Stands before a mark at the left end of what is read from right to left: poppler's readers leave such a mark where it is seen unless a
 * character of that direction is before it. No reader shows it, and pdf.js leaves it out.
 */
const RIGHT_TO_LEFT_MARK = '\u200f';

/** The letters and marks of a text from left to right as they are seen: readers turn round what is read otherwise. */
const lettersToFind = (text: string): string[] =>
  lineRuns(text, () => 0).flatMap(({ text: run, rightToLeft }) => {
    const letters = (rightToLeft ? [...run].reverse().join('') : run).match(FOUND_AS_ONE) ?? [];
    return rightToLeft && /^\p{Mn}/u.test(letters[0] ?? '') ? [RIGHT_TO_LEFT_MARK, ...letters] : letters;
  });
