// The first page: whose pattern it is, how to print it, two squares to check the scale by, and the map of the sheets.

import type { Layout, PatternInput } from '../layOut';
import { shortened, textWidth, wrapped } from '../text/textWidth';
import { writable } from '../text/writable';
import { drawMap } from './assemblyMap';
import { drawSquare, INCH_SQUARE_MM, METRIC_SQUARE_MM } from './calibration';
import { DO_NOT_CUT, firstPageWords, hasFaults, type Paragraph } from './firstPageWords';
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
  alarm: { sizePt: 12, bold: true, lineMm: 5, beforeMm: 2 },
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

  const left = margin + INCH_SQUARE_MM + GUTTER_MM;
  const words = firstPageWords(input, layout.sheets.length);
  const end = writeDown(pen, words, left, top, right - left, bottom - LEAST_MAP_MM);
  if (layout.sheets.length === 0) return;
  const heading = end + 8;
  pen.text({
    text: 'How the sheets lie',
    start: { x: left, y: heading },
    turnRad: 0,
    sizePt: 10,
    bold: true,
  });
  drawMap(pen, layout, { left, top: heading + 3, right, bottom });
}

function drawHead(pen: Pen, input: PatternInput, left: number, right: number): void {
  const { client, sheet, date, paper } = input;
  const facts = [writable(date).text, writable(paper.name).text].filter((fact) => fact !== '').join('  ·  ');
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
  if (hasFaults(input)) {
    const width = textWidth(DO_NOT_CUT, 9, true);
    put(DO_NOT_CUT, right - width, top + 18.4, 9, true);
  }
  pen.line('rule', [
    { x: left, y: top + HEAD_MM },
    { x: right, y: top + HEAD_MM },
  ]);
}

/** Writes paragraphs below each other until one would pass `lowest`; gives back where the last line stands. */
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
    if (y + lines.length * lineMm > lowest) break;
    if (i > 0) y += beforeMm;
    for (const line of lines) {
      y += lineMm;
      pen.text({ text: line, start: { x: left, y }, turnRad: 0, sizePt, bold });
    }
  }
  return y;
}
