// The first page: whose pattern it is, how to print it, two squares to check the scale by, and the map of the sheets.

import type { Box } from '../ink';
import type { Layout, PatternInput } from '../layOut';
import { shortened, textWidth, wrapped } from '../text/textWidth';
import { writable } from '../text/writable';
import { drawMap, mapScale } from './assemblyMap';
import { drawSquare, INCH_SQUARE_MM, METRIC_SQUARE_MM } from './calibration';
import { firstPageWords, type Paragraph } from './firstPageWords';
import type { Pen } from './pen';

const HEAD_MM = 20;
const GUTTER_MM = 7;
/** The map is not pushed below this height by words. mm */
const LEAST_MAP_MM = 62;

interface Look {
  readonly sizePt: number;
  readonly bold: boolean;
  readonly lineMm: number;
  readonly beforeMm: number;
}

const LOOKS: Readonly<Record<Paragraph['kind'], Look>> = {
  heading: { sizePt: 10, bold: true, lineMm: 4.4, beforeMm: 3.4 },
  text: { sizePt: 8, bold: false, lineMm: 3.5, beforeMm: 1.1 },
  small: { sizePt: 7, bold: false, lineMm: 3, beforeMm: 0.9 },
  alarm: { sizePt: 10, bold: true, lineMm: 5, beforeMm: 2 },
};

/** Draws the first page, always upright, on the page in hand. */
export function drawFirstPage(pen: Pen, input: PatternInput, layout: Layout): void {
  const { paper } = input;
  const margin = paper.marginMm;
  const right = Math.min(paper.widthMm, paper.heightMm) - margin;
  const bottom = Math.max(paper.widthMm, paper.heightMm) - margin;
  drawHead(pen, input, margin, right);

  const top = margin + HEAD_MM + 5;
  drawSquare(pen, { x: margin, y: top }, METRIC_SQUARE_MM, '100 mm');
  drawSquare(pen, { x: margin, y: top + METRIC_SQUARE_MM + 5 }, INCH_SQUARE_MM, '4 in');
  const squaresEnd = top + METRIC_SQUARE_MM + 5 + INCH_SQUARE_MM;

  const left = margin + INCH_SQUARE_MM + GUTTER_MM;
  const words = firstPageWords(input, layout.sheets.length);
  const end = writeDown(pen, words, left, top, right - left, bottom - LEAST_MAP_MM);
  // Beside the squares or below them, wherever the map comes out larger.
  const beside: Box = { left, top: end + 11, right, bottom };
  const below: Box = { left: margin, top: squaresEnd + 11, right, bottom };
  const box = mapScale(layout, below) > mapScale(layout, beside) ? below : beside;
  if (layout.sheets.length === 0) return;
  const start = { x: box.left, y: box.top - 3 };
  pen.text({ text: 'How the sheets lie', start, turnRad: 0, sizePt: 10, bold: true });
  drawMap(pen, layout, box);
}

function drawHead(pen: Pen, input: PatternInput, left: number, right: number): void {
  const { client, sheet, date, paper } = input;
  const facts = [writable(date).text, writable(paper.name).text].filter((fact) => fact !== '').join(' · ');
  const factsWidth = textWidth(facts, 9, false);
  const put = (words: string, x: number, y: number, sizePt: number, bold: boolean): void =>
    pen.text({ text: words, start: { x, y }, turnRad: 0, sizePt, bold });
  const top = left;
  put(shortened(writable(client.name).text, 20, true, right - left), left, top + 7, 20, true);
  put(
    shortened(writable(sheet.name).text, 12, false, right - left - factsWidth - 6),
    left,
    top + 14,
    12,
    false,
  );
  put(facts, right - factsWidth, top + 14, 9, false);
  pen.line('rule', [
    { x: left, y: top + HEAD_MM },
    { x: right, y: top + HEAD_MM },
  ]);
}

/** Writes paragraphs below each other until one would pass `lowest`, and says so if one would; gives back where the last line stands. */
function writeDown(
  pen: Pen,
  paragraphs: readonly Paragraph[],
  left: number,
  top: number,
  width: number,
  lowest: number,
): number {
  let y = top;
  for (const [i, { kind, text }] of paragraphs.entries()) {
    const { sizePt, bold, lineMm, beforeMm } = LOOKS[kind];
    const lines = wrapped(writable(text).text, sizePt, bold, width);
    if (y + lines.length * lineMm > lowest) {
      pen.text({
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
      pen.text({ text: line, start: { x: left, y }, turnRad: 0, sizePt, bold });
    }
  }
  return y;
}
