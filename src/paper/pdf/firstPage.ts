// The first page: head, how to print, two calibration squares, and the map of the sheets.

import { FIRST_PAGE, PATTERN } from '../../document';
import type { Box } from '../geometry/box';
import type { Layout, PatternInput } from '../layout/layOut';
import { HEAD_MM, INCH_SQUARE_MM, METRIC_SQUARE_MM } from '../sheets/pageMeasures';
import { drawMap, mapScale } from './assemblyMap';
import { drawSquare } from './blocks/calibration';
import { drawParagraphs } from './blocks/drawParagraphs';
import { drawHead } from './blocks/pageHead';
import type { PdfCanvas } from './file/pdfCanvas';
import { firstPageParagraphs, sheetsParagraphs } from './firstPageParagraphs';

const GUTTER_MM = 7;
/** Height at the foot of the page that the text leaves to the map. mm */
const LEAST_MAP_MM = 62;

/** Draws the first page, which is always upright. */
export function drawFirstPage(canvas: PdfCanvas, input: PatternInput, layout: Layout): void {
  const { widthMm, heightMm, marginMm: margin } = layout.page;
  const [right, bottom] = [widthMm - margin, heightMm - margin];
  const { client, savedDraft, date, paper } = input;
  drawHead(
    canvas,
    { client: client.name, draft: savedDraft.name, facts: [date, paper.name] },
    { left: margin, right, top: margin },
  );

  const top = margin + HEAD_MM + 5;
  drawSquare(canvas, { x: margin, y: top }, METRIC_SQUARE_MM, PATTERN.squares.metric);
  drawSquare(canvas, { x: margin, y: top + METRIC_SQUARE_MM + 5 }, INCH_SQUARE_MM, PATTERN.squares.inch);
  const squaresEnd = top + METRIC_SQUARE_MM + 5 + INCH_SQUARE_MM;

  const left = margin + INCH_SQUARE_MM + GUTTER_MM;
  const paragraphs = firstPageParagraphs(input, sheetsParagraphs(input, layout));
  const end = drawParagraphs(canvas, paragraphs, left, top, right - left, bottom - LEAST_MAP_MM);
  // The map is beside the squares or below them, wherever it is larger.
  const beside: Box = { left, top: end + 11, right, bottom };
  const below: Box = { left: margin, top: squaresEnd + 11, right, bottom };
  const box = mapScale(layout, below) > mapScale(layout, beside) ? below : beside;
  if (layout.sheets.length === 0) return;
  const start = { x: box.left, y: box.top - 3 };
  canvas.text({ text: FIRST_PAGE.map, start, turnRad: 0, sizePt: 10, bold: true });
  drawMap(canvas, layout, box);
}
